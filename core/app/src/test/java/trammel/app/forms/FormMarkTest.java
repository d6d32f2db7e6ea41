package trammel.app.forms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.closing.ActualsFile;
import trammel.app.commandline.CommandFailure;
import trammel.app.files.FormMark;
import trammel.app.fitup.FitUpForm;
import trammel.app.fitup.ReadingsFile;
import trammel.engine.quantity.Phrase;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.fitup.Target;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.BadInputException;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;

/** A form that comes back must be this job's, filled in where it is to be filled in. */
class FormMarkTest {
  @TempDir Path folder;

  private static ActualsFile actuals(String job, double hours) {
    Operation weld =
        new Operation("weld", "weld", "job", ThreePoint.exactly(hours), List.of(), "invented");
    List<OperationLine> lines =
        List.of(new OperationLine(weld, 1, Phrase.text("1 job"), List.of(), Phrase.of("invented")));
    return new ActualsFile(job, lines, lines, List.of());
  }

  private static FitUpSheet sheet(double planMm) {
    Target target =
        new Target("wheelbase.left", "axle", "left", QuantityKind.LENGTH, planMm, 1.6, 0.8);
    return new FitUpSheet(List.of(target), List.of(), List.of());
  }

  private Path file(String text) throws IOException {
    return Files.writeString(folder.resolve("form.csv"), text);
  }

  private Path filled(String job, double hours) throws IOException {
    return file(actuals(job, hours).form().replace(",h,\r", ",h,9\r"));
  }

  @Test
  void theFormOfThisJobIsTaken() throws IOException {
    assertEquals(9, actuals("D-101", 9).read(filled("D-101", 9)).whole().orElseThrow());
  }

  @Test
  void theFormOfAnotherJobIsRefusedByItsLine() throws IOException {
    Path other = filled("D-102", 9);
    BadInputException refused =
        assertThrows(BadInputException.class, () -> actuals("D-101", 9).read(other));
    assertEquals(2, refused.problems().get(0).line());
    String told = refused.problems().toString();
    assertTrue(told.contains("D-102") && told.contains("another job"), told);
  }

  @Test
  void aFormOfThisJobBeforeItsPlanChangedIsRefused() throws IOException {
    Path before = filled("D-101", 8);
    String told =
        assertThrows(BadInputException.class, () -> actuals("D-101", 9).read(before))
            .problems()
            .toString();
    assertTrue(told.contains("changed since the form was written"), told);
  }

  @Test
  void aFormWithoutItsLineIsRefused() throws IOException {
    Path torn = file("kind,item,what,planned,unit,used\nhours,weld,weld,9,h,9\n");
    assertTrue(
        assertThrows(CommandFailure.class, () -> actuals("D-101", 9).read(torn))
            .getMessage()
            .contains("starts with form"));
  }

  /** 9,5 without quotation marks is two cells, and 9 h would be taken. */
  @Test
  void aDecimalCommaThatMakesTwoCellsIsRefused() throws IOException {
    Path comma = file(actuals("D-101", 9).form().replace("9.0,h,\r", "9.0,h,9,5\r"));
    String told =
        assertThrows(BadInputException.class, () -> actuals("D-101", 9).read(comma))
            .problems()
            .toString();
    assertTrue(told.contains("7 cells") && told.contains("quotation marks"), told);
  }

  @Test
  void aFormInLatin1ReadsAsTheOneInUtf8() throws IOException {
    String form = actuals("D-101", 9).form() + "\u00bd,,,,\r\n";
    Path latin = folder.resolve("latin.csv");
    Files.write(latin, form.getBytes(StandardCharsets.ISO_8859_1));
    assertEquals(told(Files.writeString(folder.resolve("utf8.csv"), form)), told(latin));
  }

  private String told(Path form) {
    return assertThrows(RuntimeException.class, () -> actuals("D-101", 9).read(form))
        .getMessage()
        .replace(form.toString(), "form");
  }

  private static String read(String form) {
    return form.replaceFirst(",,\r\n$", ",10 ft,\r\n");
  }

  @Test
  void readingsOfAnotherJobOrPlanAreRefused() throws IOException {
    QuantityPrinter inches = new QuantityPrinter(UnitSystem.US);
    Path other = file(read(FitUpForm.csv("D-102", sheet(3048), inches)));
    Path here = folder.resolve("here.csv");
    assertThrows(
        BadInputException.class,
        () -> new ReadingsFile(other, sheet(3048), UnitSystem.US, "D-101").read());
    Files.writeString(here, read(FitUpForm.csv("D-101", sheet(3060), inches)));
    assertThrows(
        BadInputException.class,
        () -> new ReadingsFile(here, sheet(3048), UnitSystem.US, "D-101").read());
    // In whatever units it was printed.
    Files.writeString(
        here, read(FitUpForm.csv("D-101", sheet(3048), new QuantityPrinter(UnitSystem.METRIC))));
    ReadingsFile taken = new ReadingsFile(here, sheet(3048), UnitSystem.US, "D-101");
    assertEquals(List.of(3048.0), taken.read().get(0).values());
    assertEquals(List.of(), taken.remarks());
  }

  /** A list of readings written by hand is taken, and it is said for which job. */
  @Test
  void readingsWithoutTheLineAreTakenWithARemark() throws IOException {
    Path own = file("target,reading,weather\nwheelbase.left,10 ft,rain\n");
    ReadingsFile taken = new ReadingsFile(own, sheet(3048), UnitSystem.US, "D-101");
    assertEquals(1, taken.read().size());
    assertTrue(taken.remarks().get(0).contains("taken for job D-101"), taken.remarks().toString());
    assertTrue(taken.remarks().get(1).contains("'weather'"), taken.remarks().toString());
  }

  /** Ten thousand numbers of jobs: four letters of twenty tell most of them apart. */
  @Test
  void marksAreLettersThatTellJobsApart() {
    Set<String> jobs = new HashSet<>();
    for (int i = 0; i < 10_000; i++) {
      FormMark mark = FormMark.of("D-" + i, List.of("weld 9.00"));
      assertTrue(mark.text().matches("[a-z]{4}-[a-z]{6}"), mark.text());
      jobs.add(mark.job());
    }
    // By chance 10,000 of 160,000 marks fall on 9,695 different ones: n(1 - (1 - 1/n)^k).
    assertEquals(9_695, jobs.size(), 60);
    assertFalse(FormMark.of("D-1", List.of()).is(FormMark.of("D-2", List.of()).text()));
  }
}
