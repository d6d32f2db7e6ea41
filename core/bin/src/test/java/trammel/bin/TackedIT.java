package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.files.Csv;
import trammel.app.files.CsvReader;

/** From the fit-up form to the judgement of what was tacked, through an installed copy. */
class TackedIT {
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;
  private static final int READING = 5;

  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static List<CsvReader.Row> form;

  @BeforeAll
  static void writeForm() throws Exception {
    copy = InstalledCopy.unpackedInto(shop);
    Launch.Ended fitUp =
        copy.run("fitup", copy.demoJob("pickup").toString(), "--out", shop.toString());
    assertEquals(STOP, fitUp.exitCode(), fitUp.err());
    form = CsvReader.rows(Files.readString(shop.resolve("fitup.csv")));
  }

  /** The form filled in as planned, but for one target. */
  private static Path filled(String target, String reading) throws IOException {
    Csv csv = new Csv();
    for (CsvReader.Row row : form) {
      List<String> cells = new ArrayList<>(row.cells());
      if (!cells.get(0).equals("target")) {
        String read = cells.get(0).equals(target) ? reading : cells.get(3);
        // A space in front keeps a minus from being taken for a formula.
        cells.set(READING, " " + read);
      }
      csv.row(cells.toArray());
    }
    return Files.writeString(shop.resolve("filled.csv"), csv.text());
  }

  @Test
  void aBracketThatWentUpIsSentDown() throws Exception {
    Path readings = filled("upper-right.axle.up", "5 in");
    Launch.Ended tacked =
        copy.run("tacked", copy.demoJob("pickup").toString(), readings.toString());
    assertEquals(STOP, tacked.exitCode(), tacked.err());
    assertTrue(tacked.out().contains("RE-SET"), tacked.out());
    assertTrue(
        tacked.out().contains("move the axle bracket of upper-right")
            && tacked.out().contains(" down"),
        tacked.out());
  }

  /** The demo's own plan has a check that says stop: perfect brackets are not welded on it. */
  @Test
  void nothingIsWeldedWhileThePlanItselfSaysStop() throws Exception {
    Path readings = filled("none", "");
    Launch.Ended tacked =
        copy.run("tacked", copy.demoJob("pickup").toString(), readings.toString());
    assertEquals(STOP, tacked.exitCode(), tacked.err());
    assertTrue(tacked.out().contains("CHANGE THE PLAN"), tacked.out());
  }

  private static Launch.Ended in(Path folder, int exitCode, Object... words) {
    List<String> all = new ArrayList<>();
    Arrays.stream(words).map(Object::toString).forEach(all::add);
    all.addAll(List.of("--shop", folder.toString()));
    Launch.Ended ended = copy.run(all.toArray(new String[0]));
    assertEquals(exitCode, ended.exitCode(), ended.out() + ended.err());
    return ended;
  }

  private static Path jobIn(Path folder) throws IOException {
    return Files.copy(copy.demoJob("pickup"), Files.createDirectory(folder).resolve("pickup.yaml"));
  }

  private static Launch.Ended tacked(Path job, Path readings) {
    Launch.Ended tacked = copy.run("tacked", job.toString(), readings.toString());
    assertEquals(STOP, tacked.exitCode(), tacked.err());
    return tacked;
  }

  /** What was read stays with its day and its answer, also when the bracket has been set again. */
  @Test
  void theShopsLedgerKeepsWhatWasReadAndWhatItSaid(@TempDir Path folder) throws Exception {
    Path jobs = folder.resolve("jobs");
    Path job = jobIn(jobs);
    assertEquals(STOP, copy.run("book", "quote", job.toString()).exitCode());
    tacked(job, filled("upper-right.axle.up", "5 in"));
    tacked(job, filled("upper-right.axle.up", "5 in"));
    tacked(job, filled("none", ""));
    Tree course = Tree.ofJson(in(jobs, 0, "book", "show", "D-101", "--json").out());
    List<Tree> tackings = course.list("tackings");
    assertEquals(2, tackings.size(), "told twice, the same is kept once");
    assertEquals("re-set", tackings.get(0).text("answer"));
    assertEquals(LocalDate.now().toString(), tackings.get(0).text("on"));
    assertTrue(tackings.get(0).at("said").toString().contains("upper-right"));
    assertEquals("change the plan", tackings.get(1).text("answer"));
    assertEquals(1, tackings.get(1).list("readings").size(), "what was read anew");
    assertEquals("upper-right.axle.up", tackings.get(1).list("readings").get(0).text("target"));
    String shown = in(jobs, 0, "book", "show", "D-101").out();
    assertTrue(shown.contains("TACKED") && shown.contains("68 targets read"), shown);
    assertTrue(in(jobs, 0, "ledger").out().contains("TACKED: 1 job, 69 readings"));
    Path out = folder.resolve("tables");
    in(jobs, 0, "ledger", "tables", "--out", out);
    Path table = out.resolve("tack-readings.csv");
    assertTrue(
        in(jobs, 0, "ledger", "take", table).out().contains("nothing is to be changed"),
        "taken back as it is");
    String forgotten = in(jobs, 0, "book", "forget", "D-101", "--apply").out();
    assertTrue(forgotten.contains("readings after tacking"), forgotten);
    assertTrue(in(jobs, 0, "ledger").out().contains("TACKED: 0 jobs"));
  }

  @Test
  void aShopWithoutALedgerGetsTheAnswerAndNoLedger(@TempDir Path folder) throws Exception {
    Path job = jobIn(folder.resolve("jobs"));
    assertEquals("", tacked(job, filled("none", "")).err());
    assertFalse(Files.exists(job.resolveSibling("ledger.sqlite")));
  }

  /** Whoever stands at the vehicle gets the answer, and is told that it was not kept. */
  @Test
  void aLedgerThatCannotBeWrittenDoesNotHoldTheAnswerBack(@TempDir Path folder) throws Exception {
    Path job = jobIn(folder.resolve("jobs"));
    Files.writeString(job.resolveSibling("ledger.sqlite"), "no database\n".repeat(500));
    Launch.Ended tacked = tacked(job, filled("upper-right.axle.up", "5 in"));
    assertTrue(tacked.out().contains("RE-SET"), tacked.out());
    assertTrue(tacked.err().contains("were not written into the shop's ledger"), tacked.err());
  }

  /** Readings of a job that was never quoted are under its number alone; its file names whose. */
  @Test
  void readingsOfAJobThatWasNeverQuotedAreForgottenToo(@TempDir Path folder) throws Exception {
    Path jobs = folder.resolve("jobs");
    Path job = jobIn(jobs);
    Path rack = copy.home().resolve("catalogs/demo/rack.csv");
    in(jobs, 0, "ledger", "take", rack, "--apply");
    tacked(job, filled("none", ""));
    assertTrue(in(jobs, 0, "ledger").out().contains("TACKED: 1 job"));
    in(jobs, 0, "book", "forget", "Example Customer (invented)", "--apply");
    assertTrue(in(jobs, 0, "ledger").out().contains("TACKED: 0 jobs"));
  }

  /** Heading, mark, three lines for each of nine axle brackets and seven of the axle come first. */
  @Test
  void aReadingThatIsNoLengthIsNamedWithItsLine() throws Exception {
    Path readings = filled("lower-left.frame.up", "about there");
    Launch.Ended tacked =
        copy.run("tacked", copy.demoJob("pickup").toString(), readings.toString());
    assertEquals(BAD_INPUT, tacked.exitCode());
    assertTrue(tacked.err().contains("line 39, lower-left.frame.up"), tacked.err());
    assertFalse(tacked.err().contains("Exception"), tacked.err());
  }
}
