package trammel.app.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;

/**
 * Writes a file so that at every moment, a crash or a power cut included, it is either the old one
 * or the new one in full: the text goes to a file beside it, is forced to the disk, and then takes
 * its place in one move. Where the file is a link, the file that it leads to is written.
 */
public final class SafeFile {
  private static final String PART = ".part";

  /** Clocks of processes and of files tick apart by less than this. */
  private static final Duration CLOCK_STEP = Duration.ofSeconds(3);

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
  public static void write(Path given, byte[] content) {
    Path file = followed(given);
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

  /** The file behind a link; a link that leads nowhere is told and not written over. */
  private static Path followed(Path file) {
    if (!Files.isSymbolicLink(file)) {
      return file;
    }
    try {
      return file.toRealPath();
    } catch (IOException nowhere) {
      throw CommandFailure.badInput(
          file
              + " is a link that leads to no file. Mend the link or take it away, or give another"
              + " name.");
    }
  }

  /**
   * Keeps what stands at a name by moving it aside, to the first name that is free.
   *
   * @return its new name
   * @throws CommandFailure if it cannot be moved
   */
  public static Path moveAside(Path file) {
    return aside(file, copy -> Files.move(file, copy));
  }

  /**
   * Keeps a copy of a file beside it, under the first name that is free; the file stays.
   *
   * @return the copy's name
   * @throws CommandFailure if it cannot be copied
   */
  public static Path copyAside(Path file) {
    return aside(file, copy -> Files.copy(file, copy));
  }

  private interface Keeping {
    void as(Path copy) throws IOException;
  }

  private static Path aside(Path file, Keeping keeping) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String stem = dot > 0 ? name.substring(0, dot) : name;
    String ending = name.substring(stem.length());
    for (int number = 1; ; number++) {
      Path copy = file.resolveSibling(stem + ".kept-" + number + ending);
      try {
        keeping.as(copy);
        return copy;
      } catch (FileAlreadyExistsException taken) {
        continue;
      } catch (IOException refused) {
        throw CommandFailure.couldNotWrite(copy, refused);
      }
    }
  }

  static void move(Path from, Path to) throws IOException {
    rename(from, to);
    forceFolder(to.toAbsolutePath().getParent());
  }

  static void rename(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException unsupported) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A moved file's name is on the disk when its folder is; some systems refuse to force that. */
  static void forceFolder(Path folder) {
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
        if (isLeft(part, name.substring(start.length(), name.length() - PART.length()))) {
          forget(part);
        }
      }
    } catch (IOException | InvalidPathException unread) {
      // They harm nothing; writing the file itself will say what is wrong with the folder.
      return;
    }
  }

  /**
   * True if the process that made a part is gone. Numbers of processes are used again: one that was
   * started after the part was last written did not make it.
   */
  static boolean isLeft(Path part, String pid) throws IOException {
    try {
      Optional<ProcessHandle> maker = ProcessHandle.of(Long.parseLong(pid));
      if (maker.isEmpty() || !maker.get().isAlive()) {
        return true;
      }
      Optional<Instant> started = maker.get().info().startInstant();
      Instant written = Files.getLastModifiedTime(part).toInstant();
      return started.isPresent() && started.get().isAfter(written.plus(CLOCK_STEP));
    } catch (NumberFormatException other) {
      return false;
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
