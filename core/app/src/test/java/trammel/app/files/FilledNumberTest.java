package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.app.start.MeasuringSheet;
import trammel.planning.start.Questions;

/** Decimal commas, as most of Europe writes them. */
class FilledNumberTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "438,2 mm | 438.2 mm",
        "-17,25 | -17.25",
        "3,1° | 3.1°",
        "0,0625 in | 0.0625 in",
        // May be a thousand.
        "1,500 | 1,500",
        "1.500,25 | 1.500,25",
        // Several, or a fraction behind it: no decimal.
        "12,34,56 | 12,34,56",
        "24,5 1/2 in | 24,5 1/2 in",
        "438.2 mm | 438.2 mm"
      })
  void aCommaIsADecimalWhereItCanBeNothingElse(String cell, String meant) {
    assertEquals(meant, FilledNumber.quantity(cell, true));
    assertEquals(cell, FilledNumber.quantity(cell, false));
  }

  @Test
  void theMeasuringSheetOfAMetricShopTakesThem(@TempDir Path folder) throws Exception {
    String field = "measured.rails.depth";
    Path sheet =
        Files.writeString(
            folder.resolve("sheet.csv"),
            "field;reading;again\njob.units;metric;\n" + field + ";152,4 mm;152,6\n");
    assertEquals(
        "152.4 mm; 152.6",
        MeasuringSheet.read(sheet).answers().of(Questions.at(field).orElseThrow()).orElseThrow());
  }
}
