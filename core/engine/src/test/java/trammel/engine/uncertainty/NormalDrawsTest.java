package trammel.engine.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import org.junit.jupiter.api.Test;

class NormalDrawsTest {
  private static final int DRAWS = 200_000;

  /** Standard normal: mean 0, variance 1, 68.27 and 95.45 of 100 within one and two deviations. */
  @Test
  void theDrawsAreStandardNormal() {
    NormalDraws draws = new NormalDraws(1, 0);
    double sum = 0;
    double squares = 0;
    int withinOne = 0;
    int withinTwo = 0;
    for (int i = 0; i < DRAWS; i++) {
      double draw = draws.next();
      sum += draw;
      squares += draw * draw;
      withinOne += Math.abs(draw) < 1 ? 1 : 0;
      withinTwo += Math.abs(draw) < 2 ? 1 : 0;
    }

    // Four standard errors of each.
    assertEquals(0, sum / DRAWS, 0.009);
    assertEquals(1, squares / DRAWS, 0.013);
    assertEquals(0.6827, (double) withinOne / DRAWS, 0.0042);
    assertEquals(0.9545, (double) withinTwo / DRAWS, 0.0019);
  }

  /** Over samples the first draws must be as independent as over one sample. */
  @Test
  void theFirstDrawsOfManySamplesAreStandardNormal() {
    double sum = 0;
    double squares = 0;
    double products = 0;
    for (int sample = 0; sample < DRAWS; sample++) {
      NormalDraws draws = new NormalDraws(7, sample);
      double first = draws.next();
      sum += first;
      squares += first * first;
      products += first * draws.next();
    }

    assertEquals(0, sum / DRAWS, 0.009);
    assertEquals(1, squares / DRAWS, 0.013);
    assertEquals(0, products / DRAWS, 0.009);
  }

  @Test
  void theSameSeedAndSampleGiveTheSameDraws() {
    assertEquals(new NormalDraws(3, 5).next(), new NormalDraws(3, 5).next());
    assertNotEquals(new NormalDraws(3, 5).next(), new NormalDraws(4, 5).next());
    assertNotEquals(new NormalDraws(3, 5).next(), new NormalDraws(3, 6).next());
  }
}
