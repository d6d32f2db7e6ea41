package trammel.app.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import trammel.app.commandline.CommandFailure;

/**
 * Keeps a file or a folder to one command at a time, from reading it to writing it again, so that
 * of two commands neither undoes what the other wrote. The lock is on a small file that is taken
 * away at the end. It ends with the process, however that ends: the small file of a process that
 * was killed holds nobody up, and the next command takes it away. Where the file system knows no
 * locks, two commands at once are not kept apart.
 */
public final class FileLock implements AutoCloseable {
  private static final int LONGEST_WAIT_MS = 10_000;
  private static final int PAUSE_MS = 20;

  /**
   * Those of this very process. Closing another channel of the same file would end its lock on some
   * systems, so that no second one may be opened.
   */
  private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

  private final Path lock;
  private final FileChannel channel;

  private FileLock(Path lock, FileChannel channel) {
    this.lock = lock;
    this.channel = channel;
  }

  /**
   * Takes the lock of a file or of a folder that is to be made: a small file beside it. Waits up to
   * ten seconds while another command has it.
   *
   * @throws CommandFailure if another command still has it, or it cannot be made
   */
  public static FileLock of(Path file) {
    return take(beside(file), file);
  }

  /** The small file beside what is locked. */
  static Path beside(Path file) {
    return file.toAbsolutePath().resolveSibling("." + file.getFileName() + ".lock");
  }

  /**
   * Takes the lock of a small file.
   *
   * @param lock the small file
   * @param what what is said to be in use
   */
  static FileLock take(Path lock, Path what) {
    long last = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(LONGEST_WAIT_MS);
    Path own = lock.toAbsolutePath().normalize();
    try {
      while (true) {
        if (HELD.add(own)) {
          FileChannel channel = null;
          try {
            channel = tried(own);
          } finally {
            if (channel == null) {
              HELD.remove(own);
            }
          }
          if (channel != null) {
            return new FileLock(own, channel);
          }
        }
        if (System.nanoTime() > last) {
          throw CommandFailure.badInput(
              what + " is in use by another trammel command. Wait until it is done.");
        }
        TimeUnit.MILLISECONDS.sleep(PAUSE_MS);
      }
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(lock, refused);
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
      throw CommandFailure.badInput(what + " was waited for when the command was ended.");
    }
  }

  /** The channel that holds the lock; null if another has it, or had it a moment ago. */
  private static FileChannel tried(Path lock) throws IOException {
    Object before = key(lock);
    FileChannel channel;
    try {
      channel =
          before == null
              ? FileChannel.open(lock, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)
              : FileChannel.open(lock, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    } catch (FileAlreadyExistsException made) {
      return null;
    } catch (NoSuchFileException gone) {
      if (before == null) {
        throw gone;
      }
      return null;
    }
    Object opened = before == null ? key(lock) : before;
    if (locks(channel) && opened != null && opened.equals(key(lock))) {
      return channel;
    }
    channel.close();
    return null;
  }

  /** Tells one small file from the next of the same name; null if there is none. */
  private static Object key(Path lock) throws IOException {
    try {
      BasicFileAttributes found =
          Files.readAttributes(lock, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      return found.fileKey() == null ? found.creationTime() : found.fileKey();
    } catch (NoSuchFileException none) {
      return null;
    }
  }

  private static boolean locks(FileChannel channel) {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException held) {
      return false;
    } catch (IOException noLocksHere) {
      return true;
    }
  }

  @Override
  public void close() {
    // Taken away while it is still held: whoever opened it meanwhile sees that it is gone.
    SafeFile.forget(lock);
    try {
      channel.close();
    } catch (IOException ended) {
      // The lock ends with the process at the latest.
      return;
    } finally {
      HELD.remove(lock);
    }
  }
}
