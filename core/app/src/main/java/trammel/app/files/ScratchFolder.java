package trammel.app.files;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import trammel.app.commandline.CommandFailure;

/**
 * A folder among the system's temporary files, for files that are read once and wanted no longer:
 * closing it takes them away.
 */
public final class ScratchFolder implements Closeable {
  private final Path folder;

  /**
   * Makes it.
   *
   * @param what what it is for, as a part of its name
   * @throws CommandFailure if it cannot be made
   */
  public ScratchFolder(String what) {
    try {
      folder = Files.createTempDirectory("trammel-" + what);
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(Path.of("trammel-" + what), refused);
    }
  }

  /** Where it is. */
  public Path path() {
    return folder;
  }

  /**
   * Writes a file into it.
   *
   * @return the file
   * @throws CommandFailure if it cannot be written
   */
  public Path write(String name, String text) {
    Path file = folder.resolve(name);
    try {
      return Files.writeString(file, text);
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(file, refused);
    }
  }

  @Override
  public void close() {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        Files.deleteIfExists(file);
      }
      Files.deleteIfExists(folder);
    } catch (IOException left) {
      // The system clears the folder of temporary files by itself.
      return;
    }
  }
}
