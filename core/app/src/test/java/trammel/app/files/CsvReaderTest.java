package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problem;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Rules by RFC 4180, section 2. */
class CsvReaderTest {

  @Test
  void quotedCellsHoldCommasQuotesAndLineBreaks() {
    List<CsvReader.Row> rows = CsvReader.rows("a,\"b,\"\"c\"\"\nd\",e\r\n\r\nf,,g");
    assertEquals(List.of("a", "b,\"c\"\nd", "e"), rows.get(0).cells());
    assertEquals(List.of("f", "", "g"), rows.get(1).cells());
    assertEquals(4, rows.get(1).line());
    assertEquals("", rows.get(1).cell(9));
  }

  @Test
  void aMarkAtTheFilesStartIsNoPartOfTheFirstCell() {
    assertEquals("target", CsvReader.rows("\ufefftarget,reading\n").get(0).cell(0));
  }

  @Test
  void aQuotationMarkThatIsNeverClosedIsNamedByItsLine() {
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> CsvReader.rows("a\nb,\"c\n"));
    assertTrue(refused.getMessage().startsWith("line 2"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"9.5\u001b[2J", "\"9.5\nwhole job\"", "9\u202e5", "9\u20285", "9\t5", "9\u00005"})
  void aFormWithACharacterThatDoesNotShowIsRefusedByLineAndColumn(String cell, @TempDir Path folder)
      throws IOException {
    Path file = Files.writeString(folder.resolve("form.csv"), "what,used\nweld," + cell + "\n");
    BadInputException refused = assertThrows(BadInputException.class, () -> CsvReader.rows(file));
    Problem problem = refused.problems().get(0);
    assertEquals(2, problem.line());
    assertEquals("used", problem.field());
    assertEquals(1, refused.getMessage().lines().count(), refused.getMessage());
  }

  @Test
  void aFileThatIsNoTableIsNotNamedCellByCell(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("form.csv"), "\u0001,\u0002\n".repeat(1000));
    BadInputException refused = assertThrows(BadInputException.class, () -> CsvReader.rows(file));
    assertEquals(10, refused.problems().size());
  }

  @Seeds(300)
  void whatIsWrittenIsReadBack(Draw draw) {
    List<String> cells = draw.listOf(1, 5, d -> d.text(1, 30));
    List<String> plain = cells.stream().map(cell -> "x" + cell.replace("\r", "") + "x").toList();
    String text = new Csv().row(plain.toArray()).text();
    assertEquals(plain, CsvReader.rows(text).get(0).cells());
  }
}
