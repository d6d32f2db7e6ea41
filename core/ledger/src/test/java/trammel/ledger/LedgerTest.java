package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.planning.learning.ClosedJob;
import trammel.planning.rack.Rack;

class LedgerTest {
  @TempDir Path folder;

  private Path file() {
    return folder.resolve("ledger.sqlite");
  }

  @Test
  void closedJobsComeBackAsTheyWentInAndInTheirOrder() {
    List<ClosedJob> jobs =
        List.of(
            Samples.job("D-101"),
            Samples.jobInParts("D-102"),
            Samples.job("-7"),
            Samples.job("=1+1"),
            Samples.job("+4"),
            Samples.job("@home, \"quoted\" \u05d0\n2"));
    try (Ledger ledger = Ledger.open(file())) {
      jobs.forEach(ledger.closedJobs()::close);
    }
    try (Ledger ledger = Ledger.openExisting(file())) {
      assertEquals(jobs, ledger.closedJobs().all());
      assertEquals(Optional.of(jobs.get(2)), ledger.closedJobs().of("-7"));
      assertEquals(List.of(), ledger.findings());
    }
  }

  /** The later closing counts and stands last; the earlier one can be looked up. */
  @Test
  void aJobThatIsClosedAgainCountsOnceAndItsFirstClosingIsKept() {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.closedJobs().close(Samples.job("A"));
      ledger.closedJobs().close(Samples.job("B"));
      ledger.closedJobs().close(Samples.jobInParts("A"));
      assertEquals(List.of(Samples.job("B"), Samples.jobInParts("A")), ledger.closedJobs().all());
      assertEquals(Samples.job("A"), ledger.closedJobs().earlier().get(0).job());
      ledger.closedJobs().correct(Samples.jobInParts("B"));
      assertEquals(
          List.of(Samples.jobInParts("B"), Samples.jobInParts("A")), ledger.closedJobs().all());
      ledger.closedJobs().takeOut("A");
      assertEquals(1, ledger.closedJobs().count());
      assertEquals(3, ledger.closedJobs().earlier().size());
    }
  }

  @Test
  void theRackComesBackAndIsTheSumOfItsMovements() {
    try (Ledger ledger = Ledger.open(file())) {
      RackStock stock = ledger.rackStock();
      stock.become(Samples.RACK, "counted");
      assertEquals(Samples.RACK, stock.rack());
      Rack after =
          Samples.RACK
              .without("R1")
              .taking("jam-nut-0.750-16", 0, new BigDecimal("2.5"))
              .with(new Rack.Stick("R3", "dom-1.50x0.120", 415.925));
      stock.become(after, "ordered for D-101");
      assertEquals(after, stock.rack());
      List<RackStock.Movement> moved =
          stock.movements().stream()
              .filter(movement -> movement.reason().equals("ordered for D-101"))
              .toList();
      assertEquals(3, moved.size());
      assertEquals(new BigDecimal("-1"), moved.get(0).change());
      assertEquals("R3", moved.get(1).article().name());
      assertEquals(0, new BigDecimal("-2.5").compareTo(moved.get(2).change()));
      assertEquals(List.of(), ledger.findings());
    }
  }

  @Test
  void everyPriceThatEverCountedIsLookedUp() {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.prices().add(List.of(Samples.price("118.75")));
      ledger.prices().add(List.of(Samples.price("121.0")));
    }
    try (Ledger ledger = Ledger.openExisting(file())) {
      assertEquals(
          List.of(Samples.price("118.75"), Samples.price("121.0")),
          ledger.prices().of("dom-1.50x0.120").stream().map(PriceHistory.Entry::change).toList());
      assertEquals(List.of(), ledger.prices().of("bump-stop"));
      assertEquals(List.of(), ledger.findings());
    }
  }

  @Test
  void whatFailsHalfwayIsAsIfItHadNeverBegun() {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.closedJobs().close(Samples.job("A"));
      assertThrows(
          IllegalStateException.class,
          () ->
              ledger.asOne(
                  () -> {
                    ledger.closedJobs().close(Samples.job("B"));
                    ledger.rackStock().become(Samples.RACK, "counted");
                    throw new IllegalStateException("on purpose");
                  }));
      assertEquals(List.of(Samples.job("A")), ledger.closedJobs().all());
      assertTrue(ledger.rackStock().rack().isEmpty());
    }
  }

  /** A hand in the file is found, by what must hold between rack and movements. */
  @Test
  void aRackThatIsNotTheSumOfItsMovementsIsFound() {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.rackStock().become(Samples.RACK, "counted");
    }
    try (Sql sql = Sql.open(file())) {
      sql.run("update rack_bin set quantity = '4' where item = 'bolt-0.500-20'");
      sql.run("delete from rack_piece where name = 'D1'");
    }
    try (Ledger ledger = Ledger.openExisting(file())) {
      String found = String.join("\n", ledger.findings());
      assertTrue(found.contains("bin bolt-0.500-20: its movements come to 1 fewer"), found);
      assertTrue(found.contains("drop D1: its movements come to 1 more"), found);
    }
  }

  @Test
  void aDamagedFileIsSaidToBeDamaged() throws IOException {
    try (Ledger ledger = Ledger.open(file())) {
      ledger.rackStock().become(Samples.RACK, "counted");
    }
    byte[] bytes = Files.readAllBytes(file());
    for (int i = 100; i < bytes.length; i++) {
      bytes[i] ^= 0x5a;
    }
    Files.write(file(), bytes);
    assertThrows(
        DamagedLedgerException.class, () -> Ledger.openExisting(file()).rackStock().rack());
  }

  @Test
  void aLedgerThatIsNotThereIsNotMadeByLooking() {
    assertThrows(RuntimeException.class, () -> Ledger.openExisting(file()));
    assertFalse(Files.exists(file()));
  }

  @Test
  void anyFolderNameWillDo() throws IOException {
    Path odd = Files.createDirectories(folder.resolve("50% off? #2 \u00e9\u05d0 &x=1"));
    try (Ledger ledger = Ledger.open(odd.resolve("ledger.sqlite"))) {
      ledger.closedJobs().close(Samples.job("A"));
    }
    try (var files = Files.list(odd)) {
      assertEquals(List.of(odd.resolve("ledger.sqlite")), files.toList());
    }
  }

  /** One file when no command is at work: no journal, no write-ahead log stays beside it. */
  @Test
  void theSettingsThatThePromiseRestsOnAreOn() {
    Ledger.open(file()).close();
    try (Sql sql = Sql.open(file())) {
      // 2 is FULL (SQLite, "PRAGMA synchronous").
      assertEquals(2, sql.number("pragma synchronous"));
      assertEquals(1, sql.number("pragma foreign_keys"));
      assertEquals(List.of("delete"), sql.rows("pragma journal_mode", row -> row.getString(1)));
    }
  }

  @Test
  void aSecondWriterWaitsForTheFirst() throws Exception {
    Ledger.open(file()).close();
    Thread second;
    try (Ledger first = Ledger.open(file())) {
      second =
          first.asOne(
              () -> {
                Thread other =
                    new Thread(
                        () -> {
                          try (Ledger ledger = Ledger.open(file())) {
                            ledger.closedJobs().close(Samples.job("second"));
                          }
                        });
                other.start();
                first.closedJobs().close(Samples.job("first"));
                pause();
                return other;
              });
      second.join();
      assertEquals(List.of(Samples.job("first"), Samples.job("second")), first.closedJobs().all());
    }
  }

  private static void pause() {
    try {
      Thread.sleep(300);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
