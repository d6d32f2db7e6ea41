package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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
