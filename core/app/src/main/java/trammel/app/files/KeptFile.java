package trammel.app.files;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;

/**
 * A file of the user's that is read and then rewritten as a whole: a rack of stock, a shop's
 * history. While it is open no other run of Trammel has it, and a rewrite replaces it in one step,
 * so that a crash at any moment leaves the old content or the new one and never a part of either.
 *
 * <p>The lock is on a file beside it, named {@code .NAME.lock}; the system gives it free when the
 * process ends, however it ends. That file stays, empty: were it deleted, two runs could each hold
 * a lock on a file of that name.
 */
public final class KeptFile implements AutoCloseable {
  private static final long PATIENCE_MS = 30_000;
  private static final long PAUSE_MS = 20;

  private final Path file;
  private final FileChannel lockChannel;
  private byte[] asRead;

  private KeptFile(Path file, FileChannel lockChannel, byte[] asRead) {
    this.file = file;
    this.lockChannel = lockChannel;
    this.asRead = asRead;
  }

  /**
   * Locks a file and reads it. Another run that has it is waited for, half a minute at most.
   *
   * @param file the file, which need not be there yet; its folder must be
   * @throws CommandFailure if it is a folder, cannot be read, or stays locked
   */
  public static KeptFile open(Path file) {
    Path target = target(file);
    FileChannel channel = lock(target);
    try {
      return new KeptFile(
          target, channel, Files.exists(target) ? Files.readAllBytes(target) : null);
    } catch (IOException unreadable) {
      close(channel);
      throw CommandFailure.couldNotRead(file, unreadable);
    }
  }

  /** The file, links followed. */
  public Path path() {
    return file;
  }

  /**
   * What the file held when it was opened or last replaced; empty if it was not there.
   *
   * @throws CommandFailure if it is no UTF-8 text
   */
  public Optional<String> text() {
    if (asRead == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(
          StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(asRead)).toString());
    } catch (CharacterCodingException noText) {
      throw CommandFailure.badInput(
          "Cannot read " + file + ": it holds bytes that are no UTF-8 text. Save it as UTF-8.");
    }
  }

  /**
   * Puts new content in the place of the old in one step; when this returns it is on the disk.
   *
   * @throws CommandFailure if it cannot be written, or if something that does not ask for the lock,
   *     such as an editor, changed the file after it was opened; then the file is left as it is
   */
  public void replace(String text) {
    byte[] content = text.getBytes(StandardCharsets.UTF_8);
    try {
      byte[] now = Files.exists(file) ? Files.readAllBytes(file) : null;
      if (!Arrays.equals(now, asRead)) {
        throw CommandFailure.badInput(
            file
                + " was changed by something else while this run worked with it; nothing was"
                + " written to it. Run the command again.");
      }
    } catch (IOException unreadable) {
      throw CommandFailure.couldNotRead(file, unreadable);
    }
    SafeFile.write(file, content);
    asRead = content;
  }

  /** Gives the file free. */
  @Override
  public void close() {
    close(lockChannel);
  }

  /** The file itself, so that a link to it stays a link. */
  private static Path target(Path file) {
    Path absolute = file.toAbsolutePath().normalize();
    if (Files.isDirectory(absolute)) {
      throw CommandFailure.badInput(file + " is a folder; give the name of a file.");
    }
    try {
      return Files.exists(absolute) ? absolute.toRealPath() : absolute;
    } catch (IOException unreadable) {
      throw CommandFailure.couldNotRead(file, unreadable);
    }
  }

  private static FileChannel lock(Path target) {
    Path lockFile = target.resolveSibling("." + target.getFileName() + ".lock");
    FileChannel channel = null;
    try {
      channel = FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      long deadline = System.nanoTime() + PATIENCE_MS * 1_000_000;
      while (!isLocked(channel)) {
        if (System.nanoTime() > deadline) {
          close(channel);
          throw CommandFailure.badInput(
              "Another run of Trammel works with "
                  + target
                  + " and did not end within half a minute. Let it end, then run this again.");
        }
        pause();
      }
      return channel;
    } catch (IOException refused) {
      close(channel);
      throw CommandFailure.couldNotWrite(lockFile, refused);
    }
  }

  private static boolean isLocked(FileChannel channel) throws IOException {
    try {
      FileLock lock = channel.tryLock();
      return lock != null;
    } catch (OverlappingFileLockException heldInThisProcess) {
      return false;
    }
  }

  private static void pause() {
    try {
      Thread.sleep(PAUSE_MS);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while waiting for a locked file", stopped);
    }
  }

  private static void close(FileChannel channel) {
    if (channel != null) {
      try {
        channel.close();
      } catch (IOException ignored) {
        // Nothing is written through it; the lock goes with the process at the latest.
      }
    }
  }
}
