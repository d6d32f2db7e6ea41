package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Closing jobs and what later quotes make of it, through an installed copy. */
class CloseIT {
  private static final int DONE = 0;
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;

  @TempDir static Path shop;
  private static InstalledCopy copy;

  @TempDir Path jobs;
  private Path pickup;
  private Path form;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
  }

  @BeforeEach
  void writeForm() throws Exception {
    pickup = Files.copy(copy.demoJob("pickup"), jobs.resolve("pickup.yaml"));
    Files.copy(copy.demoJob("sedan"), jobs.resolve("sedan.yaml"));
    Launch.Ended ended = copy.run("close", pickup.toString(), "--out", jobs.toString());
    assertEquals(DONE, ended.exitCode(), ended.err());
    form = jobs.resolve("actuals.csv");
  }

  private void fill(String start, String used) throws IOException {
    fill(form, start, used);
  }

  /** A form of another job than the pickup, filled in. */
  private Path filledForm(Path job, String start, String used) throws Exception {
    Path folder = Files.createDirectory(jobs.resolve("form-" + System.nanoTime()));
    Launch.Ended ended = copy.run("close", job.toString(), "--out", folder.toString());
    assertEquals(DONE, ended.exitCode(), ended.err());
    fill(folder.resolve("actuals.csv"), start, used);
    return folder.resolve("actuals.csv");
  }

  private static void fill(Path form, String start, String used) throws IOException {
    StringBuilder filled = new StringBuilder();
    for (String line : Files.readAllLines(form)) {
      filled.append(line.startsWith(start) ? line + used : line).append('\n');
    }
    Files.writeString(form, filled.toString());
  }

  private double hours(String job) throws Exception {
    return copy.json(STOP, "plan", jobs.resolve(job)).number("hours.mean_h");
  }

  private Tree ledger() throws Exception {
    Launch.Ended shown = copy.run("ledger", "--json", "--shop", jobs.toString());
    assertEquals(DONE, shown.exitCode(), shown.err());
    return Tree.ofJson(shown.out());
  }

  /** Without the hours of the whole job, which used to be lost at the next closing. */
  @Test
  void aJobClosedBySingleOperationsIsKeptWhenTheNextOneIsClosed() throws Exception {
    fill("hours,make-bar", "3.5");
    assertEquals(DONE, copy.run("close", pickup.toString(), form.toString()).exitCode());
    Path next =
        Files.writeString(
            jobs.resolve("next.yaml"), Files.readString(pickup).replace("D-101", "D-109"));
    Path nextForm = filledForm(next, "hours,make-bar", "3.5");
    assertEquals(DONE, copy.run("close", next.toString(), nextForm.toString()).exitCode());
    assertEquals(2, ledger().list("closed_jobs").size());
  }

  /** Signs that are guarded from spreadsheets in a CSV used to make it another number. */
  @Test
  void aJobNumberThatLooksLikeAFormulaIsClosedOnce() throws Exception {
    for (String number : List.of("-7", "=7", "+7", "@7")) {
      Path job =
          Files.writeString(
              jobs.resolve("signs.yaml"),
              Files.readString(pickup).replace("D-101", "\"" + number + "\""));
      Path filled = filledForm(job, "hours,whole job", "113");
      assertEquals(DONE, copy.run("close", job.toString(), filled.toString()).exitCode(), number);
      Launch.Ended twice = copy.run("close", job.toString(), filled.toString());
      assertEquals(BAD_INPUT, twice.exitCode(), number);
      assertTrue(twice.err().contains("Job " + number + " was closed on"), twice.err());
    }
  }

  /** The second used to fail at once. */
  @Test
  void twoJobsClosedAtTheSameMomentAreBothKept() throws Exception {
    Launch close = copy.launcher();
    Map<String, Path> forms = new LinkedHashMap<>();
    for (String number : List.of("D-201", "D-202")) {
      Path job =
          Files.writeString(
              jobs.resolve(number + ".yaml"), Files.readString(pickup).replace("D-101", number));
      forms.put(number, filledForm(job, "hours,whole job", "113"));
    }
    List<Process> both = new ArrayList<>();
    for (String number : forms.keySet()) {
      both.add(
          close.start(
              jobs.resolve(number + ".out"),
              jobs.resolve(number + ".err"),
              "close",
              jobs.resolve(number + ".yaml").toString(),
              forms.get(number).toString()));
    }
    for (Process one : both) {
      assertEquals(DONE, Launch.end(one));
    }
    assertEquals(2, ledger().list("closed_jobs").size());
  }

  @Test
  void aJobThatTookLongerMakesLaterQuotesLonger() throws Exception {
    double before = hours("sedan.yaml");
    fill("hours,whole job", "150");
    Launch.Ended closed = copy.run("close", pickup.toString(), form.toString());
    assertEquals(DONE, closed.exitCode(), closed.err());
    assertTrue(closed.out().contains("150.0 h used"), closed.out());
    double after = hours("sedan.yaml");
    assertTrue(after > 1.03 * before && after < 1.2 * before, before + " to " + after);
    assertTrue(
        copy.run("plan", jobs.resolve("sedan.yaml").toString())
            .out()
            .contains("learned from 1 closed job"));
  }

  @Test
  void aJobIsClosedOnceUnlessSaidOtherwise() throws Exception {
    fill("hours,whole job", "113");
    assertEquals(DONE, copy.run("close", pickup.toString(), form.toString()).exitCode());
    Launch.Ended twice = copy.run("close", pickup.toString(), form.toString());
    assertEquals(BAD_INPUT, twice.exitCode());
    assertTrue(twice.err().contains("--again"), twice.err());
    assertEquals(DONE, copy.run("close", "--again", pickup.toString(), form.toString()).exitCode());
    assertEquals(1, ledger().list("closed_jobs").size());
  }

  @Test
  void everyWrongLineIsNamedAndNothingIsKept() throws Exception {
    fill("hours,make-bar", "-3");
    fill("hours,whole job", "lots");
    Launch.Ended closed = copy.run("close", pickup.toString(), form.toString());
    assertEquals(BAD_INPUT, closed.exitCode());
    assertTrue(closed.err().contains("make-bar") && closed.err().contains("lots"), closed.err());
    assertFalse(Files.exists(jobs.resolve("ledger.sqlite")));
  }

  @Test
  void moreInTheOperationsThanInTheWholeIsRefused() throws Exception {
    fill("hours,make-bar", "90");
    fill("hours,whole job", "80");
    Launch.Ended closed = copy.run("close", pickup.toString(), form.toString());
    assertEquals(BAD_INPUT, closed.exitCode());
    assertTrue(closed.err().contains("leave something"), closed.err());
    assertFalse(Files.exists(jobs.resolve("ledger.sqlite")));
  }

  @Test
  void anEmptyFormTeachesNothing() throws Exception {
    Launch.Ended closed = copy.run("close", pickup.toString(), form.toString());
    assertEquals(BAD_INPUT, closed.exitCode());
    assertTrue(closed.err().contains("no hours are filled in"), closed.err());
  }

  @Test
  void hoursFarFromTheQuoteAreTakenOnlyWhereSomebodySaysSo() throws Exception {
    fill("hours,whole job", "1300");
    Launch.Ended closed = copy.run("close", pickup.toString(), form.toString());
    assertEquals(BAD_INPUT, closed.exitCode());
    assertTrue(closed.err().contains("the whole job: 1300 h against"), closed.err());
    double before = hours("sedan.yaml");
    assertEquals(
        DONE, copy.run("close", "--as-written", pickup.toString(), form.toString()).exitCode());
    double after = hours("sedan.yaml");
    assertTrue(after > before && after < 1.25 * before, before + " to " + after);
  }

  @Test
  void theFormOfAnotherJobIsRefused() throws Exception {
    fill("hours,whole job", "70");
    Path sedan = jobs.resolve("sedan.yaml");
    Launch.Ended closed = copy.run("close", sedan.toString(), form.toString());
    assertEquals(BAD_INPUT, closed.exitCode());
    assertTrue(
        closed.err().contains("line 2, form") && closed.err().contains("another job"),
        closed.err());
  }

  @Test
  void aFormWhoseJobHasAnotherNumberOrPlanNowIsRefused() throws Exception {
    fill("hours,whole job", "113");
    String job = Files.readString(pickup);
    Files.writeString(pickup, job.replaceFirst("number: .*", "number: D-999"));
    Launch.Ended renumbered = copy.run("close", pickup.toString(), form.toString());
    assertEquals(BAD_INPUT, renumbered.exitCode());
    assertTrue(renumbered.err().contains("of job D-999"), renumbered.err());
    Files.writeString(pickup, job.replace("rust: 1.15", "rust: 1.3"));
    Launch.Ended changed = copy.run("close", pickup.toString(), form.toString());
    assertEquals(BAD_INPUT, changed.exitCode());
    assertTrue(changed.err().contains("changed since the form was written"), changed.err());
  }
}
