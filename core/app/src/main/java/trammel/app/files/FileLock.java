package trammel.app.files;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import trammel.app.commandline.CommandFailure;

/**
 * Keeps a file to one command at a time, from reading it to writing it again, so that of two
 * commands neither undoes what the other wrote. The lock is on a small file beside it and ends with
 * the process, however that ends.
 */
public final class FileLock implements AutoCloseable {
  private final FileChannel channel;

  private FileLock(FileChannel channel) {
    this.channel = channel;
  }

  /**
   * Takes the lock of a file.
   *
   * @throws CommandFailure if another command has it, or it cannot be made
   */
  public static FileLock of(Path file) {
    Path lock = file.toAbsolutePath().resolveSibling("." + file.getFileName() + ".lock");
    try {
      FileChannel channel =
          FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      if (!locks(channel)) {
        channel.close();
        throw CommandFailure.badInput(
            file + " is in use by another trammel command. Wait until it is done.");
      }
      return new FileLock(channel);
    } catch (IOException refused) {
      throw CommandFailure.couldNotWrite(lock, refused);
    }
  }

  private static boolean locks(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException held) {
      return false;
    }
  }

  @Override
  public void close() {
    try {
      channel.close();
    } catch (IOException ended) {
      // The lock ends with the process at the latest.
      return;
    }
  }
}
