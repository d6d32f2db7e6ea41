package trammel.app.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import trammel.app.commandline.CommandFailure;

/**
 * Writes a file so that at every moment, a crash or a power cut included, it is either the old one
 * or the new one in full: the text goes to a file beside it, is forced to the disk, and then takes
 * its place in one move.
 */
public final class SafeFile {
  private static final String PART = ".part";

  private SafeFile() {}

  /**
   * Writes a text in UTF-8 in place of whatever the file held.
   *
   * @throws CommandFailure if it cannot be written; the file is then as it was
   */
  public static void write(Path file, String text) {
    write(file, text.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * Writes bytes in place of whatever the file held.
   *
   * @throws CommandFailure if it cannot be written; the file is then as it was
   */
  public static void write(Path file, byte[] content) {
    Path part = part(file);
    forgetDead(file);
    try {
      force(part, content);
      keepPermissions(file, part);
      move(part, file);
    } catch (IOException refused) {
      forget(part);
      throw CommandFailure.couldNotWrite(file, refused);
    }
  }

  /** The file beside it that is written first; each process has its own. */
  static Path part(Path file) {
    return file.resolveSibling(
        "." + file.getFileName() + "." + ProcessHandle.current().pid() + PART);
  }

  static void force(Path file, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING,
            StandardOpenOption.WRITE)) {
      ByteBuffer buffer = ByteBuffer.wrap(content);
      while (buffer.hasRemaining()) {
        channel.write(buffer);
      }
      channel.force(true);
    }
  }

  private static void keepPermissions(Path file, Path part) throws IOException {
    if (Files.exists(file)
        && file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      Files.setPosixFilePermissions(part, Files.getPosixFilePermissions(file));
    }
  }

  static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException unsupported) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
    forceFolder(to.toAbsolutePath().getParent());
  }

  /** A moved file's name is on the disk when its folder is; some systems refuse to force that. */
  private static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOnThisSystem) {
      // The content is on the disk all the same; a power cut may bring back the old file, whole.
      return;
    }
  }

  /** Parts that a killed command left beside the file. */
  private static void forgetDead(Path file) {
    String start = "." + file.getFileName() + ".";
    try (DirectoryStream<Path> parts =
        Files.newDirectoryStream(file.toAbsolutePath().getParent(), start + "*" + PART)) {
      for (Path part : parts) {
        String name = part.getFileName().toString();
        if (!isAlive(name.substring(start.length(), name.length() - PART.length()))) {
          forget(part);
        }
      }
    } catch (IOException | InvalidPathException unread) {
      // They harm nothing; writing the file itself will say what is wrong with the folder.
      return;
    }
  }

  private static boolean isAlive(String pid) {
    try {
      return ProcessHandle.of(Long.parseLong(pid)).map(ProcessHandle::isAlive).orElse(false);
    } catch (NumberFormatException other) {
      return true;
    }
  }

  static void forget(Path part) {
    try {
      Files.deleteIfExists(part);
    } catch (IOException left) {
      // It is named as a part and harms nothing.
      return;
    }
  }
}
