package trammel.planning.arrange;

import java.util.List;
import java.util.Random;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Verdict;
import trammel.engine.layout.Layout;
import trammel.engine.uncertainty.Figure;
import trammel.planning.draft.Draft;
import trammel.planning.draft.JobUncertainty;

/**
 * How often a layout has no STOP on vehicles whose measurements are off within their tolerances and
 * which are built as well as a shop builds, each figure by itself and normally distributed. Checks
 * that need the plan of the whole job are left out: what is off by a tape's width changes no plate.
 */
final class StopChance {
  /** Enough to tell nine out of ten from eight. */
  private static final int SAMPLES = 40;

  private StopChance() {}

  /** The share of vehicles without a STOP, 0 to 1; the same for the same seed. */
  static double shareWithout(Draft draft, long seed) {
    List<Figure> figures = JobUncertainty.figures(draft);
    Random random = new Random(seed);
    int without = 0;
    for (int sample = 0; sample < SAMPLES; sample++) {
      if (!stops(draft.judge(), draft.layout(), figures, random)) {
        without++;
      }
    }
    return (double) without / SAMPLES;
  }

  private static boolean stops(Judge judge, Layout layout, List<Figure> figures, Random random) {
    try {
      Layout built = layout;
      for (Figure figure : figures) {
        built = figure.effect().apply(built, random.nextGaussian() * figure.standardDeviation());
      }
      LayoutAnalysis analysis = new LayoutAnalysis(built, judge.settings());
      for (Check check : judge.checks()) {
        if (!check.isOfMeasurements()
            && !TrialBench.ON_THE_PLAN.contains(check.id())
            && judge.find(check, analysis).stream()
                .anyMatch(found -> found.verdict() == Verdict.STOP)) {
          return true;
        }
      }
      return false;
    } catch (IllegalArgumentException | IllegalStateException impossible) {
      // The engine says why no such vehicle can stand; it counts as one with a STOP.
      return true;
    }
  }
}
