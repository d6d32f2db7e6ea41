package trammel.app.ledger;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.zip.CRC32;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.SafeFile;
import trammel.ledger.LedgerPrint;
import trammel.planning.learning.LearnedHours;

/**
 * What was learned from a ledger, kept so that a quote need not open the ledger and learn from a
 * thousand jobs anew. It is only ever a shortcut: it counts if it was learned from exactly the
 * bytes that the ledger has now, by this very build of Trammel; anything else and it is as if it
 * were not there.
 */
public final class LearnedMemory {
  /** The check sum at the start takes this many bytes. */
  private static final int SUM_BYTES = Long.BYTES;

  private final List<Path> folders;
  private final Path program;

  /**
   * @param folders folders it may be kept in, the best first
   * @param program the file whose size and time tell one build from another
   */
  public LearnedMemory(List<Path> folders, Path program) {
    this.folders = List.copyOf(folders);
    this.program = program;
  }

  /** What was learned from a ledger with these bytes, if it is remembered. */
  public Optional<LearnedHours> recall(Path ledger, LedgerPrint print, double correlation) {
    for (Path folder : folders) {
      Optional<LearnedHours> found = recall(file(folder, ledger), ledger, print, correlation);
      if (found.isPresent()) {
        return found;
      }
    }
    return Optional.empty();
  }

  private Optional<LearnedHours> recall(
      Path file, Path ledger, LedgerPrint print, double correlation) {
    try {
      return Files.exists(file)
          ? read(Files.readAllBytes(file), key(ledger, print, correlation))
          : Optional.empty();
    } catch (IOException unread) {
      return Optional.empty();
    }
  }

  private static Optional<LearnedHours> read(byte[] content, byte[] key) throws IOException {
    DataInputStream in = new DataInputStream(new ByteArrayInputStream(content));
    boolean whole =
        content.length > SUM_BYTES + key.length && in.readLong() == sum(content, SUM_BYTES);
    return whole && Arrays.equals(in.readNBytes(key.length), key)
        ? Optional.of(LearnedHours.readFrom(in))
        : Optional.empty();
  }

  /** Keeps what was learned; where that cannot be written, it is learned again next time. */
  public void keep(Path ledger, LedgerPrint print, double correlation, LearnedHours learned) {
    try {
      byte[] content = content(key(ledger, print, correlation), learned);
      for (Path folder : folders) {
        if (isKept(file(folder, ledger), content)) {
          return;
        }
      }
    } catch (IOException unread) {
      return;
    }
  }

  private static boolean isKept(Path file, byte[] content) {
    try {
      Files.createDirectories(file.getParent());
      SafeFile.write(file, content);
      return true;
    } catch (IOException | CommandFailure refused) {
      return false;
    }
  }

  private static byte[] content(byte[] key, LearnedHours learned) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeLong(0);
    out.write(key);
    learned.writeTo(out);
    byte[] content = bytes.toByteArray();
    ByteBuffer.wrap(content).putLong(sum(content, SUM_BYTES));
    return content;
  }

  private byte[] key(Path ledger, LedgerPrint print, double correlation) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    out.writeUTF(ledger.toString());
    out.writeLong(print.length());
    out.writeLong(print.sum());
    out.writeDouble(correlation);
    out.writeLong(Files.size(program));
    out.writeLong(Files.getLastModifiedTime(program).toMillis());
    return bytes.toByteArray();
  }

  private static Path file(Path folder, Path ledger) {
    byte[] name = ledger.toString().getBytes(StandardCharsets.UTF_8);
    return folder.resolve("learned-" + Long.toHexString(sum(name, 0)));
  }

  private static long sum(byte[] bytes, int from) {
    CRC32 crc = new CRC32();
    crc.update(bytes, from, bytes.length - from);
    return crc.getValue();
  }
}
