package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
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

  @Seeds(300)
  void whatIsWrittenIsReadBack(Draw draw) {
    List<String> cells = draw.listOf(1, 5, d -> d.text(1, 30));
    List<String> plain = cells.stream().map(cell -> "x" + cell.replace("\r", "") + "x").toList();
    String text = new Csv().row(plain.toArray()).text();
    assertEquals(plain, CsvReader.rows(text).get(0).cells());
  }
}
