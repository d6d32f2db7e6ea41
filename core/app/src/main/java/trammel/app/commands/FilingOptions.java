package trammel.app.commands;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Option;
import trammel.app.CommandFailure;

/** The common options of a command that also makes files. */
public final class FilingOptions extends CommonOptions {
  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "Write the files into this folder, made if it is not there; without it, none.")
  private Path folder;

  /**
   * The folder for the files, made if it was not there; empty if no files are wanted.
   *
   * @throws CommandFailure if it cannot be made, or is not a folder
   */
  public Optional<Path> folder() {
    if (folder == null) {
      return Optional.empty();
    }
    if (Files.exists(folder) && !Files.isDirectory(folder)) {
      throw CommandFailure.badInput(
          "--out was given "
              + folder
              + ", which is a file; give a folder, or a name for a new one.");
    }
    try {
      return Optional.of(Files.createDirectories(folder));
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(folder, refused);
    }
  }
}
