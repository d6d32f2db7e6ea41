package trammel.ledger;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.function.Consumer;

/** Copies of a ledger, made and put back by SQLite's own means: an open file is never copied. */
final class Backup {
  private Backup() {}

  /** Writes a copy under another name, checks it, forces it to the disk, gives it its name. */
  static void write(Sql sql, Path copy) {
    write(sql, copy, Backup::requireSound);
  }

  private static void write(Sql sql, Path copy, Consumer<Path> check) {
    requireFree(copy);
    Path part = part(copy);
    try {
      Files.deleteIfExists(part);
      sql.run("vacuum into ?", Sql.uri(part));
      check.accept(part);
      force(part);
      move(part, copy);
    } catch (IOException refused) {
      throw new UncheckedIOException(copy + " (" + refused.getMessage() + ")", refused);
    } finally {
      forget(part);
    }
  }

  /** The copy that is kept of a file before it is lifted to a newer version. */
  static void ofOlderVersion(Path file, Sql sql, int version) {
    Path copy = file.resolveSibling(file.getFileName() + ".version-" + version);
    // From a lift that was cut off; what it holds is what is in the ledger still.
    if (!Files.exists(copy)) {
      write(sql, copy, Backup::requireWhole);
    }
  }

  /** Puts back what a backup holds; see {@link Ledger#restore}. */
  static void restore(Path file, Path backup, Path kept) {
    requireFree(kept);
    Path lifted = part(kept);
    try {
      Files.deleteIfExists(lifted);
      try (Sql source = Sql.open(backup)) {
        requireLedger(backup, source);
        source.run("vacuum into ?", Sql.uri(lifted));
      }
      requireSound(lifted);
      if (Files.exists(file) && !exchanged(file, lifted, kept)) {
        moveAside(file, kept);
      }
      if (!Files.exists(file)) {
        force(lifted);
        move(lifted, file);
      }
    } catch (IOException refused) {
      throw new UncheckedIOException(file + " (" + refused.getMessage() + ")", refused);
    } finally {
      forget(lifted);
    }
  }

  /** False if the ledger is damaged, so that nothing in it can be moved. */
  private static boolean exchanged(Path file, Path lifted, Path kept) {
    try (Ledger ledger = Ledger.openExisting(file)) {
      if (!ledger.isSound()) {
        return false;
      }
      Ledger.open(kept).close();
      ledger.exchange(lifted, kept);
      return true;
    } catch (DamagedLedgerException damaged) {
      return false;
    }
  }

  /** The journal goes first: beside the restored file it would be taken for that file's own. */
  private static void moveAside(Path file, Path kept) throws IOException {
    Path journal = journal(file);
    if (Files.exists(journal)) {
      move(journal, journal(kept));
    }
    move(file, kept);
  }

  private static Path journal(Path file) {
    return file.resolveSibling(file.getFileName() + "-journal");
  }

  /**
   * Takes the content of one file in and the ledger's own out into another, as one change of all
   * the files: SQLite commits them together.
   */
  static void exchange(Sql sql, Path from, Path kept) {
    sql.run("attach ? as source", Sql.uri(from));
    sql.run("attach ? as kept", Sql.uri(kept));
    try {
      sql.change(
          () -> {
            for (String table : Schema.TABLES) {
              sql.run("insert into kept." + table + " select * from main." + table);
            }
            for (int i = Schema.TABLES.size() - 1; i >= 0; i--) {
              sql.run("delete from main." + Schema.TABLES.get(i));
            }
            for (String table : Schema.TABLES) {
              sql.run("insert into main." + table + " select * from source." + table);
            }
            return null;
          });
    } finally {
      sql.run("detach source");
      sql.run("detach kept");
    }
  }

  private static void requireLedger(Path file, Sql sql) {
    Schema schema = new Schema(file, sql, Schema.STEPS);
    schema.requireOurs();
    if (schema.version() == 0) {
      throw new IllegalArgumentException(file + " is an empty file, not a ledger.");
    }
  }

  /** Opening it lifts an older version; that is a copy, so the backup itself stays as it is. */
  private static void requireSound(Path file) {
    List<String> findings;
    try (Ledger copy = Ledger.openExisting(file)) {
      findings = copy.findings();
    }
    if (!findings.isEmpty()) {
      throw new IllegalArgumentException(
          file.getFileName() + " is not sound: " + String.join("; ", findings) + ".");
    }
  }

  /** What opens it as a ledger would lift it; it is to stay of its version. */
  private static void requireWhole(Path file) {
    try (Sql copy = Sql.open(file)) {
      if (!copy.isSound()) {
        throw new IllegalArgumentException(file.getFileName() + " is not sound.");
      }
    }
  }

  private static void requireFree(Path file) {
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new IllegalArgumentException(
          file + " is there already and is not written over. Give another name.");
    }
  }

  private static Path part(Path file) {
    return file.resolveSibling(
        "." + file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
  }

  private static void force(Path file) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.force(true);
    }
  }

  static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException unsupported) {
      Files.move(from, to);
    }
    forceFolder(to.toAbsolutePath().getParent());
  }

  /** A name is on the disk when its folder is; some systems refuse to force that. */
  private static void forceFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOnThisSystem) {
      return;
    }
  }

  private static void forget(Path part) {
    for (Path left : List.of(part, journal(part))) {
      try {
        Files.deleteIfExists(left);
      } catch (IOException stays) {
        // It is named as a part and harms nothing.
        continue;
      }
    }
  }
}
