package trammel.ledger;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * What tells one content of a ledger's file from any other, taken without opening the ledger.
 *
 * @param length how long the file is (bytes)
 * @param sum CRC-32 of all of it
 */
public record LedgerPrint(long length, long sum) {

  /**
   * The print of a file as it lies on the disk; empty while a command writes or was cut off, so
   * that the file alone does not say what is in it, and while this very process has a ledger open:
   * with the closing of any stream on the file the system gives up the locks that SQLite holds on
   * it (SQLite, "How to corrupt an SQLite database file", section 2.2).
   */
  public static Optional<LedgerPrint> of(Path file) {
    synchronized (Ledger.class) {
      try {
        if (Ledger.isOpenHere() || isBeingWritten(file)) {
          return Optional.empty();
        }
        byte[] bytes = Files.readAllBytes(file);
        CRC32 crc = new CRC32();
        crc.update(bytes);
        return isBeingWritten(file)
            ? Optional.empty()
            : Optional.of(new LedgerPrint(bytes.length, crc.getValue()));
      } catch (IOException unread) {
        return Optional.empty();
      }
    }
  }

  private static boolean isBeingWritten(Path file) {
    return Files.exists(file.resolveSibling(file.getFileName() + "-journal"));
  }
}
