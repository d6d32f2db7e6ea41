package trammel.reading.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What does not show has no place in a field. Source of the characters: ISO/IEC 6429, sections 5.2
 * and 5.3; Unicode, UAX #9, table 4.
 */
class PlainTextTest {

  @Test
  void everyControlCharacterIsOutOfPlace() {
    for (char c = 0; c < 0xa0; c++) {
      boolean control = c < 0x20 || c >= 0x7f;
      assertEquals(control, PlainText.troubleOfLine("a" + c + "b").isPresent(), "U+" + (int) c);
    }
    assertEquals(Optional.of("a line break"), PlainText.troubleOfLine("a\nb"));
    assertEquals(Optional.empty(), PlainText.troubleOfLines("a\nb"));
    assertTrue(PlainText.troubleOfLines("a\rb").isPresent());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u2028", "\u2029", "\u202a", "\u202b", "\u202c", "\u202d", "\u202e", "\u2066", "\u2067",
        "\u2068", "\u2069", "\ud800", "\udc00"
      })
  void separatorsTurnsOfDirectionAndHalvesOfCharactersAreOutOfPlace(String sign) {
    assertTrue(PlainText.troubleOfLine("a" + sign + "b").isPresent());
    assertTrue(PlainText.troubleOfLines(sign).isPresent());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "caf\u00e9",
        "\u0421\u0435\u0434\u0430\u043d",
        "\u05e9\u05dc\u05d5\u05dd",
        "1/2\u00a0in",
        "\ud83d\ude97",
        "\u0645\u06cc\u200c\u062e"
      })
  void lettersOfAnyScriptHaveTheirPlace(String text) {
    assertEquals(Optional.empty(), PlainText.troubleOfLine(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"job\": {\"number\": \"D\\u001b[2J\"}}",
        "{\"job\": {\"number\": \"D\\u0085x\"}}",
        "{\"job\": {\"number\": \"D\\u0000\"}}",
        "{\"job\": {\"number\": \"D\\ud800\"}}",
        "{\"job\": {\"number\": \"D\u202ex\"}}"
      })
  void aDocumentNamesTheFieldAndTheCharacter(String json) {
    BadInputException refused =
        assertThrows(BadInputException.class, () -> DocumentReader.read("job.json", json));
    Problem problem = refused.problems().get(0);
    assertEquals("job.number", problem.field());
    assertTrue(problem.given().matches("the character U\\+[0-9A-F]{4}, which .*"), problem.given());
  }

  @Test
  void aNameThatTheUserChoosesIsOneLine() {
    String json = "{\"items\": {\"bolt\\nTOTAL $1\": {\"price\": 1}}}";
    BadInputException refused =
        assertThrows(BadInputException.class, () -> DocumentReader.read("prices.json", json));
    assertEquals("a line break", refused.problems().get(0).given());
    assertEquals(1, refused.getMessage().lines().count(), refused.getMessage());
  }
}
