package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.planning.learning.ClosedJob;

/**
 * Processes that write are killed in the midst of it, and many write at once: every change that was
 * said to be kept is there, at most one more, and all parts of a change or none. The long form is
 * in docs/reliability.md.
 */
class LedgerKillTest {
  private static final int LONGEST_WAIT_MICROS = 20_000;

  /** Files with a rollback journal grow slowly to check; a new one after so many kills. */
  private static final int KILLS_A_FILE = 100;

  @TempDir Path folder;
  private Path file;
  private int cutOff;
  private int extra;

  @BeforeEach
  void prepare() {
    file = folder.resolve("ledger.sqlite");
    KilledWriter.prepare(file);
  }

  @Test
  void nothingThatWasKeptIsLostHoweverTheWriterIsKilled() throws Exception {
    kill(10, 2026);
  }

  @Test
  void manyWritersAtOnceLoseNothing() throws Exception {
    writeAtOnce(5, 8);
  }

  @Test
  @Tag("long")
  void aThousandKills() throws Exception {
    int kills = Integer.getInteger("trammel.kills", 1000);
    int jobs = kill(kills, Long.getLong("trammel.seed", 12));
    System.out.println(
        kills
            + " kills, "
            + jobs
            + " jobs kept, "
            + cutOff
            + " kills within a change, "
            + extra
            + " changes kept but not yet told");
  }

  @Test
  @Tag("long")
  void twentyWritersAtOnce() throws Exception {
    long start = System.nanoTime();
    writeAtOnce(20, 50);
    System.out.println("20 writers: " + (System.nanoTime() - start) / 1_000_000_000 + " s");
  }

  private int kill(int kills, long seed) throws Exception {
    Random random = new Random(seed);
    int all = 0;
    Set<String> told = new HashSet<>();
    for (int i = 0; i < kills; i++) {
      if (i > 0 && i % KILLS_A_FILE == 0) {
        Files.delete(file);
        KilledWriter.prepare(file);
        all += told.size();
        told.clear();
      }
      Process writer = Child.start(KilledWriter.class, file, kept(), "K" + i, 0);
      told.addAll(killed(writer, random));
      check(told, 1, "seed " + seed + ", kill " + i);
    }
    return all + told.size();
  }

  private Path kept() {
    return folder.resolve("native");
  }

  /** Every other one is killed when it has begun a change: its journal is there. */
  private List<String> killed(Process writer, Random random) throws Exception {
    BufferedReader out = writer.inputReader();
    List<String> told = new ArrayList<>();
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      String line = out.readLine();
      assertTrue(line != null, "the writer has ended by itself");
      told.add(line);
    }
    if (random.nextBoolean()) {
      Path journal = journal();
      while (!Files.exists(journal)) {
        Thread.onSpinWait();
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_WAIT_MICROS / 10));
    } else {
      TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_WAIT_MICROS));
    }
    // Through its handle: Process.destroyForcibly would close the pipe with what was still told.
    writer.toHandle().destroyForcibly();
    writer.waitFor();
    cutOff += Files.exists(journal()) ? 1 : 0;
    out.lines().forEach(told::add);
    return told;
  }

  private Path journal() {
    return file.resolveSibling(file.getFileName() + "-journal");
  }

  private void writeAtOnce(int writers, int jobs) throws IOException, InterruptedException {
    List<Process> all = new ArrayList<>();
    for (int i = 0; i < writers; i++) {
      all.add(Child.start(KilledWriter.class, file, kept(), "W" + i, jobs));
    }
    Set<String> told = new HashSet<>();
    for (Process writer : all) {
      writer.inputReader().lines().forEach(told::add);
      assertEquals(0, writer.waitFor());
    }
    assertEquals(writers * jobs, told.size());
    check(told, 0, writers + " writers");
  }

  /** Adds the job that was kept but not told, if there is one. */
  private void check(Set<String> told, int mostExtra, String when) {
    try (Ledger ledger = Ledger.openExisting(file)) {
      assertEquals(List.of(), ledger.findings(), when);
      Set<String> kept = new HashSet<>();
      for (ClosedJob job : ledger.closedJobs().all()) {
        assertEquals(Samples.jobInParts(job.number()), job, when);
        kept.add(job.number());
      }
      Set<String> tacked = new HashSet<>();
      for (Written<Tacking> tacking : ledger.tackings().all()) {
        assertEquals(Samples.tacking(tacking.what().job()), tacking.what(), when);
        tacked.add(tacking.what().job());
      }
      assertEquals(kept, tacked, when);
      assertTrue(kept.containsAll(told), () -> when + ": told " + told + ", kept " + kept);
      assertTrue(kept.size() - told.size() <= mostExtra, () -> when + ": " + kept);
      extra += kept.size() - told.size();
      told.addAll(kept);
      int nuts = ledger.rackStock().rack().held(KilledWriter.NUT, 0).intValueExact();
      assertEquals(KilledWriter.NUTS - kept.size(), nuts, when);
    }
  }
}
