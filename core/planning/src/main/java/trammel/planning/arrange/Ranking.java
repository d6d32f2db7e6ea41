package trammel.planning.arrange;

import java.util.Comparator;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.estimate.Estimate;

/**
 * Which of two layouts is the better: the one with fewer and lighter remarks, then the one that
 * comes nearer to the goal, then the one that changes less.
 *
 * @param goal what the best is best at
 */
record Ranking(Goal goal) {
  private static final double SAME = 1e-9;

  /** The better first. */
  Comparator<Trial> order() {
    return Comparator.comparingDouble(Trial::penalty)
        .thenComparingDouble(this::cost)
        .thenComparingInt(trial -> trial.edits().byPath().size())
        .thenComparing(trial -> trial.edits().key());
  }

  /**
   * Whether one that passes comes nearer to the goal than another, or as near with less changed.
   */
  boolean isBetter(Trial one, Trial other) {
    double gain = cost(other) - cost(one);
    return gain > SAME
        || gain > -SAME && one.edits().byPath().size() < other.edits().byPath().size();
  }

  /** What is to be small; infinite where it is not known. */
  double cost(Trial trial) {
    if (trial.estimate().isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Estimate estimate = trial.estimate().get();
    return switch (goal) {
      case PRICE -> estimate.price().total().amount().doubleValue();
      case HOURS -> estimate.hours().meanHours();
      case MARGIN -> -trial.margin();
      case RIDE -> rideHz(trial);
    };
  }

  private static double rideHz(Trial trial) {
    LayoutAnalysis analysis =
        new LayoutAnalysis(
            trial.draft().orElseThrow().layout(), trial.draft().orElseThrow().judge().settings());
    return trial.draft().orElseThrow().judge().checks().stream()
        .filter(check -> check.id().equals("ride-frequency"))
        .flatMap(check -> trial.draft().orElseThrow().judge().find(check, analysis).stream())
        .mapToDouble(found -> found.value())
        .findFirst()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
