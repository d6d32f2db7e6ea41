package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
  @ValueSource(strings = {"9.5\u001b[2J", "9\u202e5", "9\u20285", "9\t5", "9\u00005"})
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

  /** Rows as a spreadsheet holds them, with a quoted line break and signs beyond ASCII. */
  private static final List<List<String>> TABLE =
      List.of(
          List.of("kind", "name", "length", "note"),
          List.of("stick", "Größe ½", "36 in", "two lines, one cell"),
          List.of("bin", "say \"so\"", "9.5", ""));

  private static String saved(char between, String lineEnd) {
    String comma = "\"two lines,\n one cell\"";
    return String.join(
        lineEnd,
        String.join("" + between, "kind", "name", "length", "note"),
        String.join("" + between, "stick", "Größe ½", "36 in", comma),
        String.join("" + between, "bin", "\"say \"\"so\"\"\"", "9.5", ""),
        "");
  }

  /** Every way in which spreadsheets save a table: signs between cells, line ends, encodings. */
  @ParameterizedTest
  @CsvSource({
    "UTF-8, ''",
    "UTF-8, EFBBBF",
    "UTF-16LE, FFFE",
    "UTF-16BE, FEFF",
    "UTF-16LE, ''",
    "UTF-16BE, ''",
    "ISO-8859-1, ''",
    "windows-1252, ''"
  })
  void aTableReadsTheSameHoweverItWasSaved(String charset, String mark, @TempDir Path folder)
      throws IOException {
    for (char between : new char[] {',', ';', '\t'}) {
      for (String lineEnd : List.of("\n", "\r\n", "\r")) {
        for (String told : List.of("", "sep=" + between + lineEnd)) {
          if (lineEnd.equals("\r") && !told.isEmpty()) {
            continue;
          }
          ByteArrayOutputStream bytes = new ByteArrayOutputStream();
          bytes.write(HexFormat.of().parseHex(mark));
          bytes.write((told + saved(between, lineEnd)).getBytes(Charset.forName(charset)));
          Path file = folder.resolve("table.csv");
          Files.write(file, bytes.toByteArray());
          assertEquals(
              TABLE,
              CsvReader.rows(file).stream().map(CsvReader.Row::cells).toList(),
              charset + " " + mark + " '" + between + "' " + told);
        }
      }
    }
  }

  /** A decimal comma is one only where the cells are not parted by commas. */
  @Test
  void numbersMayHaveADecimalComma(@TempDir Path folder) throws IOException {
    Path file = Files.writeString(folder.resolve("table.csv"), "what;hours;note\nweld;9,5;a, b\n");
    CsvReader.Row row = CsvReader.rows(file).get(1);
    assertEquals("9.5", row.number(1));
    assertEquals("a, b", row.number(2));
    Path commas = Files.writeString(folder.resolve("commas.csv"), "what,hours\nweld,\"9,5\"\n");
    assertEquals("9,5", CsvReader.rows(commas).get(1).number(1));
  }

  @Seeds(300)
  void whatIsWrittenIsReadBack(Draw draw) {
    List<String> cells = draw.listOf(1, 5, d -> d.text(1, 30));
    List<String> plain = cells.stream().map(cell -> "x" + cell.replace("\r", "") + "x").toList();
    String text = new Csv().row(plain.toArray()).text();
    assertEquals(plain, CsvReader.rows(text).get(0).cells());
  }
}
