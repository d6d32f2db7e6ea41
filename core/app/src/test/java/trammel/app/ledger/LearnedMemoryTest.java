package trammel.app.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.ledger.Ledger;
import trammel.ledger.LedgerPrint;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.ClosedOperation;
import trammel.planning.learning.LearnedHours;
import trammel.planning.rack.Rack;

/** What is remembered is what would be learned anew, and nothing else. */
class LearnedMemoryTest {
  private static final double CORRELATION = 0.3;

  @TempDir Path folder;
  private Path program;
  private LearnedMemory memory;
  private List<ClosedJob> jobs;

  @BeforeEach
  void aLedgerWithJobs() throws IOException {
    program = Files.writeString(folder.resolve("program.jar"), "this build");
    memory =
        new LearnedMemory(List.of(program.resolve("no folder"), folder.resolve("cache")), program);
    jobs =
        Stream.iterate(3L, seed -> seed + 1)
            .map(seed -> OldLists.jobs(new Random(seed)))
            .filter(some -> some.size() > 5)
            .findFirst()
            .orElseThrow();
    try (Ledger ledger = Ledger.open(file())) {
      jobs.forEach(ledger.closedJobs()::close);
    }
  }

  private Path file() {
    return folder.resolve("ledger.sqlite").toAbsolutePath();
  }

  private LearnedHours learned() throws IOException {
    ShopLedger shop = new ShopLedger(folder, rack -> Rack.EMPTY);
    return shop.learned(CORRELATION, memory).orElseThrow();
  }

  private Optional<LearnedHours> recalled() throws IOException {
    return memory.recall(file().toRealPath(), LedgerPrint.of(file()).orElseThrow(), CORRELATION);
  }

  private void assertSame(LearnedHours expected, LearnedHours seen) {
    assertEquals(expected.jobs(), seen.jobs());
    assertEquals(expected.scatter(), seen.scatter());
    assertEquals(expected.correlation(), seen.correlation());
    for (ClosedJob job : jobs) {
      for (ClosedOperation operation : job.operations()) {
        String key = operation.key();
        assertEquals(expected.factor(key), seen.factor(key), key);
        assertEquals(expected.factorDeviation(key), seen.factorDeviation(key), key);
        assertEquals(expected.jobs(key), seen.jobs(key), key);
      }
    }
  }

  @Test
  void whatIsRecalledIsWhatWasLearned() throws IOException {
    assertTrue(recalled().isEmpty());
    LearnedHours learned = learned();
    assertSame(LearnedHours.from(jobs, CORRELATION), learned);
    assertSame(learned, recalled().orElseThrow());
    assertSame(learned, learned());
  }

  @Test
  void anotherJobAnotherBuildOrASpoiltFileIsNotRecalled() throws IOException {
    learned();
    Files.setLastModifiedTime(program, FileTime.fromMillis(1_000_000));
    assertTrue(recalled().isEmpty(), "another build");
    learned();
    assertTrue(recalled().isPresent());
    try (Ledger ledger = Ledger.open(file())) {
      ledger.closedJobs().takeOut(jobs.get(0).number());
    }
    assertTrue(recalled().isEmpty(), "another content");
    assertSame(LearnedHours.from(jobs.subList(1, jobs.size()), CORRELATION), learned());
    Path kept;
    try (Stream<Path> files = Files.list(folder.resolve("cache"))) {
      kept = files.findFirst().orElseThrow();
    }
    byte[] bytes = Files.readAllBytes(kept);
    for (int i = 0; i < bytes.length; i += 41) {
      byte[] spoilt = bytes.clone();
      spoilt[i] ^= 1;
      Files.write(kept, spoilt);
      assertTrue(recalled().isEmpty(), "spoilt at " + i);
    }
    Files.write(kept, java.util.Arrays.copyOf(bytes, bytes.length / 2));
    assertTrue(recalled().isEmpty(), "cut off");
  }

  /** In the midst of a change, or after a kill in it, the file alone does not say what counts. */
  @Test
  void aLedgerThatIsBeingWrittenIsNotJudgedByItsFile() throws IOException {
    Path journal = Files.createFile(folder.resolve("ledger.sqlite-journal"));
    assertTrue(LedgerPrint.of(file()).isEmpty());
    Files.delete(journal);
    try (Ledger ledger = Ledger.openExisting(file())) {
      assertTrue(LedgerPrint.of(file()).isEmpty(), ledger.file() + " is open here");
    }
    assertTrue(LedgerPrint.of(file()).isPresent());
  }
}
