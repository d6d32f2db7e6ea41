package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quoting by RFC 4180, section 2; formula signs by common practice, no source. */
class CsvTest {

  @Test
  void quotesCommasAndLineBreaksAreQuoted() {
    assertEquals(
        "\"1/4 \"\" plate, hot\",\"two\nlines\",plain,3.5\r\n",
        new Csv().row("1/4 \" plate, hot", "two\nlines", "plain", 3.5).text());
  }

  @ParameterizedTest
  @CsvSource({"=1+1, '''=1+1'", "+x, '''+x'", "-x, '''-x'", "@x, '''@x'", "x=1, x=1", "'', ''"})
  void aTextThatLooksLikeAFormulaIsMadeHarmless(String text, String cell) {
    assertEquals(cell, Csv.cell(text));
  }

  @Test
  void negativeNumbersStayNumbers() {
    assertEquals("-2.5\r\n", new Csv().row(-2.5).text());
  }
}
