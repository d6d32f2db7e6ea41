package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BackupTest {
  @TempDir Path folder;
  private Path file;
  private Path backup;
  private Path kept;

  @BeforeEach
  void aBackupAndAJobClosedSince() {
    file = folder.resolve("ledger.sqlite");
    backup = folder.resolve("backup.sqlite");
    kept = folder.resolve("kept.sqlite");
    try (Ledger ledger = Ledger.open(file)) {
      ledger.closedJobs().close(Samples.job("A"));
      ledger.rackStock().become(Samples.RACK, "counted");
      ledger.backUp(backup);
      ledger.closedJobs().close(Samples.job("B"));
    }
  }

  private static List<String> numbers(Path ledger) {
    try (Ledger open = Ledger.openExisting(ledger)) {
      assertEquals(List.of(), open.findings());
      return open.closedJobs().all().stream().map(job -> job.number()).toList();
    }
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aBackupIsALedgerOfItsOwn() throws IOException {
    assertEquals(List.of("A"), numbers(backup));
    assertEquals(List.of("backup.sqlite", "ledger.sqlite"), files());
  }

  @Test
  void aBackupIsNeverWrittenOverAFile() throws IOException {
    byte[] before = Files.readAllBytes(backup);
    try (Ledger ledger = Ledger.openExisting(file)) {
      assertThrows(IllegalArgumentException.class, () -> ledger.backUp(backup));
    }
    assertArrayEquals(before, Files.readAllBytes(backup));
  }

  @Test
  void aRestoreBringsTheBackupAndKeepsWhatItReplaces() throws IOException {
    Ledger.restore(file, backup, kept);
    assertEquals(List.of("A"), numbers(file));
    assertEquals(List.of("A", "B"), numbers(kept));
    assertEquals(List.of("A"), numbers(backup));
    assertEquals(List.of("backup.sqlite", "kept.sqlite", "ledger.sqlite"), files());
  }

  /**
   * A command that has the ledger open sees the restored one, and its job is not lost in a ghost.
   */
  @Test
  void aLedgerThatIsOpenElsewhereIsRestoredUnderIt() {
    try (Ledger other = Ledger.openExisting(file)) {
      other.closedJobs().all();
      Ledger.restore(file, backup, kept);
      other.closedJobs().close(Samples.job("C"));
    }
    assertEquals(List.of("A", "C"), numbers(file));
  }

  @Test
  void aDamagedLedgerIsMovedAsideAndTheBackupTakesItsPlace() throws IOException {
    byte[] rubbish = "not a database at all, not any more".repeat(100).getBytes();
    Files.write(file, rubbish);
    Ledger.restore(file, backup, kept);
    assertEquals(List.of("A"), numbers(file));
    assertArrayEquals(rubbish, Files.readAllBytes(kept));
  }

  @Test
  void aLedgerThatIsGoneIsRestored() throws IOException {
    Files.delete(file);
    Ledger.restore(file, backup, kept);
    assertEquals(List.of("A"), numbers(file));
    assertEquals(List.of("backup.sqlite", "ledger.sqlite"), files());
  }

  @Test
  void whatIsNoSoundLedgerIsNotRestored() throws IOException {
    Path text = Files.writeString(folder.resolve("list.csv"), "a,b\n".repeat(300));
    assertThrows(IllegalArgumentException.class, () -> Ledger.restore(file, text, kept));
    try (Sql sql = Sql.open(backup)) {
      sql.run("delete from rack_piece");
    }
    String told =
        assertThrows(IllegalArgumentException.class, () -> Ledger.restore(file, backup, kept))
            .getMessage();
    assertTrue(told.contains("stick R1"), told);
    assertEquals(List.of("A", "B"), numbers(file));
    assertEquals(List.of("backup.sqlite", "ledger.sqlite", "list.csv"), files());
  }
}
