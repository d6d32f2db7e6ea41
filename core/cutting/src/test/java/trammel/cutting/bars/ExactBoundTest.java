package trammel.cutting.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import trammel.cutting.internal.Deadline;

/**
 * Chvatal, Linear Programming (1983) ch. 13: bars of 100, relaxation 452.25, optimum 453 (full
 * pattern enumeration).
 */
class ExactBoundTest {
  private static final int OPTIMUM = 453;
  private static final int FLOOR_OF_RELAXATION = 452;
  private static final double RELAXATION = 452.25;
  private static final int PIECES = 97 + 610 + 395 + 211;

  private final BarModel model =
      BarModel.of(
          BarInstances.oneStock(
              100, 0, new double[][] {{45, 97}, {36, 610}, {31, 395}, {14, 211}}));
  private final List<Pattern> patterns = allMaximalPatterns(model);
  private final CoveringLp lp = solved(model, patterns);
  private final ExactBound exact = new ExactBound(lp, model, patterns, PIECES);

  @Test
  void provesThePublishedRelaxation() {
    assertEquals(RELAXATION, lp.objective(), 1e-6);
    exact.take(lp.provingDuals(OPTIMUM));
    assertTrue(exact.isAbove(FLOOR_OF_RELAXATION));
    assertFalse(exact.isAbove(OPTIMUM));
  }

  @Test
  void wrongNumbersNeverProveTooMuch() {
    Random random = new Random(1);
    double[] right = lp.provingDuals(OPTIMUM);
    for (int i = 0; i < 10_000; i++) {
      double[] wrong = right.clone();
      double off = Math.pow(10, -12 * random.nextDouble());
      for (int r = 0; r < wrong.length; r++) {
        wrong[r] += off * random.nextGaussian();
      }
      exact.take(wrong);
      assertFalse(exact.isAbove(OPTIMUM), () -> Arrays.toString(wrong));
    }
  }

  @Test
  void rulesOutNoPatternOfTheRelaxation() {
    exact.take(lp.provingDuals(OPTIMUM));
    double[] levels = lp.solution();
    for (int c = 0; c < patterns.size(); c++) {
      assertFalse(levels[c] > 1e-6 && exact.rulesOut(c, OPTIMUM));
    }
  }

  /** Four pieces on three bars that hold one each: the cover cannot be had at any price. */
  @Test
  void infeasibleProgrammesAreProvenToBeSo() {
    CoveringLp few = new CoveringLp(new double[] {1}, new boolean[] {true}, 2, Deadline.never());
    Pattern one = new Pattern(0, new int[] {0}, new int[] {1});
    BarModel single = BarModel.of(BarInstances.oneStock(100, 0, new double[][] {{60, 4}}));
    few.addColumn(1, new int[] {0}, new double[] {1});
    few.start(new int[] {0});
    few.primal();
    ExactBound bound = new ExactBound(few, single, List.of(one), 4);
    few.appendRow(new int[] {0}, false, 3);
    assertTrue(few.dualSimplex(100));
    few.appendRow(new int[] {0}, true, 4);
    assertFalse(few.dualSimplex(100));
    bound.take(few.provingDuals(100));
    assertTrue(bound.isAbove(100));
  }

  private static List<Pattern> allMaximalPatterns(BarModel model) {
    PieceWorth nothing = new PieceWorth(model, new long[model.kinds()], new long[1], 1);
    PatternEnumeration all =
        new PatternEnumeration(model, nothing, 1000, Deadline.in(Duration.ofMinutes(1)));
    assertTrue(all.within(PIECES));
    return all.found();
  }

  private static CoveringLp solved(BarModel model, List<Pattern> patterns) {
    double[] demand = new double[model.kinds()];
    boolean[] atLeast = new boolean[demand.length];
    Arrays.fill(atLeast, true);
    for (int k = 0; k < demand.length; k++) {
      demand[k] = model.demand[k];
    }
    CoveringLp lp = new CoveringLp(demand, atLeast, 0, Deadline.never());
    for (Pattern pattern : patterns) {
      double[] counts = new double[pattern.counts.length];
      for (int i = 0; i < counts.length; i++) {
        counts[i] = pattern.counts[i];
      }
      lp.addColumn(1, pattern.kinds, counts);
    }
    int[] start = new int[demand.length];
    for (int k = 0; k < start.length; k++) {
      start[k] = lp.addColumn(PIECES, new int[] {k}, new double[] {1});
    }
    lp.start(start);
    lp.primal();
    return lp;
  }
}
