package trammel.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words joined by hand after the Unicode charts of Arabic Presentation Forms-A and -B. */
class ArabicJoiningTest {
  private static String codes(String text) {
    return text.codePoints()
        .mapToObj(letter -> String.format("%04X", letter))
        .collect(Collectors.joining(" "));
  }

  private static String text(String codes) {
    return List.of(codes.split(" ")).stream()
        .map(code -> Character.toString(Integer.parseInt(code, 16)))
        .collect(Collectors.joining());
  }

  /**
   * Meem, reh, hah, beh, alef: reh joins only what is before it, so hah begins anew. Seen, lam with
   * alef as one sign, and a meem that stands alone. Persian peh and gaf. A mark over a letter does
   * not part it from the next. Peh by itself.
   */
  @ParameterizedTest
  @CsvSource({
    "0645 0631 062D 0628 0627, FEE3 FEAE FEA3 FE92 FE8E",
    "0633 0644 0627 0645, FEB3 FEFC FEE1",
    "067E 06AF, FB58 FB93",
    "0628 064E 062A, FE91 064E FE96",
    "067E, FB56",
    "0628 0640, FE91 0640",
    "0627 0644 0627, FE8D FEFB"
  })
  void eachLetterTakesTheFormOfItsPlace(String letters, String joined) {
    assertEquals(joined, codes(ArabicJoining.joined(text(letters))));
  }

  @Test
  void otherWritingStaysAsItIs() {
    String other = "Job D-101, \u05d0\u05d1\u05d2, \u0391\u03b2, 2 7/8 in <b>&amp;</b>";
    assertEquals(other, ArabicJoining.joined(other));
  }
}
