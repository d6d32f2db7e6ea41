package trammel.app.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The order of the Unicode bidirectional algorithm (UAX 9), on texts worked by hand. */
class ReadingOrderTest {
  @Test
  void theFirstLetterOfARightToLeftNameStandsOnTheRight() {
    assertEquals("\u05d2\u05d1\u05d0", ReadingOrder.inSight("\u05d0\u05d1\u05d2"));
  }

  @Test
  void bracketsTurnWithTheText() {
    assertEquals("(\u05d0)", ReadingOrder.inSight("(\u05d0)"));
  }

  /** Digits keep their own order and stand to the left of the word that they follow. */
  @Test
  void aNumberWithinARightToLeftNameKeepsItsOrder() {
    assertEquals("job 12 \u05d1\u05d0", ReadingOrder.inSight("job \u05d0\u05d1 12"));
  }

  @Test
  void otherTextStaysAsItIs() {
    assertEquals("job D-101", ReadingOrder.inSight("job D-101"));
  }
}
