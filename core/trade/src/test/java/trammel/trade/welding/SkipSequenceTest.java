package trammel.trade.welding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class SkipSequenceTest {

  /** Every millimetre of the seam is welded once, in steps no longer than allowed. */
  @Seeds(200)
  void stepsCoverTheSeamOnce(Draw draw) {
    double seamMm = draw.between(10, 3000);
    double longestMm = draw.between(20, 200);
    List<SkipSequence.Step> steps = new ArrayList<>(new SkipSequence(seamMm, longestMm).steps());
    steps.sort(Comparator.comparingDouble(SkipSequence.Step::toMm));
    double reachedMm = 0;
    for (SkipSequence.Step step : steps) {
      assertEquals(reachedMm, step.toMm(), 1e-9);
      assertTrue(step.fromMm() - step.toMm() <= longestMm * (1 + 1e-8));
      reachedMm = step.fromMm();
    }
    assertEquals(seamMm, reachedMm, 1e-9);
  }

  /** From four steps on, no step starts against the one just welded. */
  @Seeds(200)
  void noStepTouchesTheOneBefore(Draw draw) {
    double seamMm = draw.between(310, 3000);
    double longestMm = draw.between(20, 100);
    List<SkipSequence.Step> steps = new SkipSequence(seamMm, longestMm).steps();
    for (int i = 1; i < steps.size(); i++) {
      SkipSequence.Step before = steps.get(i - 1);
      SkipSequence.Step now = steps.get(i);
      assertEquals(i + 1, now.order());
      assertTrue(
          now.toMm() > before.fromMm() + 1e-6 || now.fromMm() < before.toMm() - 1e-6,
          seamMm + " in steps of " + longestMm + ": " + before + " then " + now);
    }
  }

  @Test
  void shortSeamIsOneStep() {
    assertEquals(List.of(new SkipSequence.Step(1, 60, 0)), new SkipSequence(60, 75).steps());
  }

  @Test
  void endlessStepsAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new SkipSequence(3000, 0.001));
    assertThrows(IllegalArgumentException.class, () -> new SkipSequence(0, 75));
  }
}
