package trammel.app.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A quantity is one word to whoever reads it. */
class UnbrokenTest {
  @ParameterizedTest
  @CsvSource({
    "2 7/8 in of the rail, [2 7/8 in] of the rail",
    "from -14 3/8 in to 3/4 in, from [-14 3/8 in] to [3/4 in]",
    "the 2 in square, the [2 in] square",
    "12.7 mm or 1/2 in, [12.7 mm] or [1/2 in]",
    "204 lb/in at 1.74 Hz, [204 lb/in] at [1.74 Hz]",
    "4 in the box, [4 in] the box",
    "page 3 of 12, page 3 of 12",
    "12 inches, 12 inches"
  })
  void aNumberStaysWithItsFractionAndItsUnit(String text, String kept) {
    String expected = kept.replace("[", "<span class=\"q\">").replace("]", "</span>");
    assertEquals("<body><p>" + expected + "</p>", Unbroken.in("<body><p>" + text + "</p>"));
  }

  /** A line may end after a blank, but not before the fraction nor at its stroke. */
  @Test
  void aPrintedLineEndsAroundAQuantity() {
    Unbroken.LineEnds ends = new Unbroken.LineEnds();
    ends.setText("cut 2 7/8 in deep");
    List<Integer> found = new ArrayList<>();
    for (int end = ends.next(); end >= 0; end = ends.next()) {
      found.add(end);
    }
    assertEquals(List.of(4, 13, 17), found);
  }

  @ParameterizedTest
  @CsvSource({"<title>2 in</title><body>", "<body><i style=w:2 in></i>", "2 in"})
  void nothingButTheTextsOfTheBodyIsTouched(String html) {
    assertEquals(html, Unbroken.in(html));
  }
}
