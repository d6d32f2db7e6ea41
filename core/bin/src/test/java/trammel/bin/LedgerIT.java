package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The shop's ledger, through an installed copy. */
class LedgerIT {
  private static final int DONE = 0;
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;

  /** Invented. */
  private static final String JOBS =
      "job,closed_on,quoted_hours,quoted_eight_of_ten_hours,job_used_hours,operation,"
          + "standard_hours,deviation_hours,used_hours\n"
          + "D-90,2026-10-05,100,112,130,make-bar,2.7,0.4,\n";

  @TempDir static Path installed;
  private static InstalledCopy copy;

  @TempDir Path folder;
  private Path jobs;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(installed);
  }

  @BeforeEach
  void aShopWithAClosedJobAndARack() throws Exception {
    jobs = Files.createDirectory(folder.resolve("jobs"));
    Files.writeString(folder.resolve("closed-jobs.csv"), JOBS);
    Files.copy(copy.home().resolve("catalogs/demo/rack.csv"), folder.resolve("rack.csv"));
    ledger(DONE, "take", folder.resolve("closed-jobs.csv"), "--apply");
    ledger(DONE, "take", folder.resolve("rack.csv"), "--apply");
  }

  private Launch.Ended ledger(int exitCode, Object... words) throws Exception {
    List<String> all = new ArrayList<>(List.of("ledger"));
    Arrays.stream(words).map(Object::toString).forEach(all::add);
    all.addAll(List.of("--shop", jobs.toString()));
    Launch.Ended ended = copy.run(all.toArray(new String[0]));
    assertEquals(exitCode, ended.exitCode(), ended.out() + ended.err());
    return ended;
  }

  @Test
  void itShowsWhatIsInItAndThatItIsSound() throws Exception {
    String shown = ledger(DONE).out();
    assertTrue(shown.contains("CLOSED JOBS: 1") && shown.contains("D-90"), shown);
    assertTrue(shown.contains("2 sticks, 1 drop, 2 bins"), shown);
    assertTrue(ledger(DONE, "check").out().startsWith("SOUND"));
  }

  @Test
  void aDamagedLedgerIsNotSoundAndABackupBringsItBack() throws Exception {
    Path backup = folder.resolve("backup.sqlite");
    ledger(DONE, "backup", backup);
    Path file = jobs.resolve("ledger.sqlite");
    byte[] bytes = Files.readAllBytes(file);
    Arrays.fill(bytes, 4096, bytes.length, (byte) 0x5a);
    Files.write(file, bytes);
    assertTrue(ledger(STOP, "check").out().startsWith("NOT SOUND"));
    String restored = ledger(DONE, "restore", backup).out();
    assertTrue(restored.contains("ledger-before-restore.sqlite"), restored);
    assertTrue(ledger(DONE, "check").out().startsWith("SOUND"));
    assertTrue(ledger(DONE).out().contains("D-90"));
  }

  /** Out, one figure changed, back in: shown first, changed only when told to. */
  @Test
  void aTableGoesOutIsChangedAndComesBack() throws Exception {
    Path out = folder.resolve("tables");
    ledger(DONE, "tables", "--out", out);
    for (String table :
        List.of("closed-jobs.csv", "earlier-closings.csv", "rack.csv", "rack-movements.csv")) {
      assertTrue(Files.exists(out.resolve(table)), table);
    }
    Path table = out.resolve("closed-jobs.csv");
    String same = ledger(DONE, "take", table).out();
    assertTrue(same.contains("nothing is to be changed"), same);
    Files.writeString(table, Files.readString(table).replace(",130.0,", ",140,"));
    String would = ledger(DONE, "take", table).out();
    assertTrue(would.contains("job D-90: hours of the whole job 130.0 to 140.0"), would);
    assertTrue(would.contains("--apply"), would);
    assertTrue(ledger(DONE).out().contains("130.0 h used"));
    ledger(DONE, "take", table, "--apply");
    assertTrue(ledger(DONE).out().contains("140.0 h used"));
  }

  @Test
  void aBackupIsNotWrittenOverAnythingAndAForeignFileIsNotRestored() throws Exception {
    Path mine = Files.writeString(folder.resolve("mine.txt"), "mine\n".repeat(300));
    assertTrue(ledger(BAD_INPUT, "backup", mine).err().contains("is there already"));
    assertTrue(ledger(BAD_INPUT, "restore", mine).err().contains("is no ledger"));
    assertTrue(ledger(DONE).out().contains("D-90"));
  }

  @Test
  void wrongWordsAreRefusedWithTheRightOnes() throws Exception {
    assertTrue(ledger(BAD_INPUT, "shov").err().contains("show, check"));
    assertTrue(ledger(BAD_INPUT, "take").err().contains("needs a file"));
    assertTrue(ledger(BAD_INPUT, "tables").err().contains("--out DIR"));
    assertTrue(ledger(BAD_INPUT, "check", "--apply").err().contains("ledger take"));
  }

  /** A quote in a folder without a ledger never loads SQLite, and makes no file. */
  @Test
  void aQuoteWithoutALedgerKnowsNothingOfSqlite() throws Exception {
    Path lone = Files.createDirectory(folder.resolve("lone"));
    Path job = Files.copy(copy.demoJob("pickup"), lone.resolve("pickup.yaml"));
    assertEquals(List.of(), sqliteClasses(job));
    assertFalse(Files.exists(lone.resolve("ledger.sqlite")));
    assertFalse(
        sqliteClasses(Files.copy(job, jobs.resolve("pickup.yaml"))).isEmpty(),
        "the test would see it");
  }

  private static List<String> sqliteClasses(Path job) throws Exception {
    Launch.Ended ended =
        Launch.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load",
                "-Dtrammel.home=" + copy.home(),
                "-jar",
                copy.home().resolve("lib/trammel-app.jar").toString())
            .run("quote", job.toString());
    assertEquals(STOP, ended.exitCode(), ended.err());
    return ended.out().lines().filter(line -> line.contains(" org.sqlite.")).toList();
  }
}
