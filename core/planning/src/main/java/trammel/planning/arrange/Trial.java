package trammel.planning.arrange;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Judge;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Verdict;
import trammel.engine.quantity.Phrase;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;

/**
 * What became of a set of changes.
 *
 * @param edits the changes
 * @param draft the layout; empty where it was refused
 * @param refusal why it was refused; blank where it was not
 * @param open the checks that are not good, worst first; as far as they were made where it was
 *     given up
 * @param penalty 0 where every check is good; the lower the nearer
 * @param margin least distance to a limit, as a share of the way from good to stop
 * @param givenUp whether checks were left out since it is worse than the best already
 * @param estimate its price, where it was asked for
 */
record Trial(
    Edits edits,
    Optional<Draft> draft,
    Phrase refusal,
    List<Judge.Finding> open,
    double penalty,
    double margin,
    boolean givenUp,
    Optional<Estimate> estimate) {
  /** A layout that is refused is worse than any that is not. */
  static final double REFUSED = 1e6;

  private static final double STOP = 10;
  private static final double MOST_EXCESS = 20;

  Trial {
    open = List.copyOf(open);
  }

  static Trial refused(Edits edits, Phrase why) {
    return new Trial(
        edits,
        Optional.empty(),
        why,
        List.of(),
        REFUSED,
        Double.NEGATIVE_INFINITY,
        false,
        Optional.empty());
  }

  Trial with(Estimate price) {
    return new Trial(edits, draft, refusal, open, penalty, margin, givenUp, Optional.of(price));
  }

  boolean passes() {
    return penalty == 0 && !givenUp && draft.isPresent();
  }

  /**
   * What one check adds to the penalty: a STOP weighs ten times a look again, and how far it is.
   */
  static double weight(Judge.Finding finding) {
    return switch (finding.verdict()) {
      case GOOD -> 0;
      case LOOK_AGAIN -> 1 + Math.min(1, excess(finding));
      case STOP -> STOP + Math.min(MOST_EXCESS, excess(finding));
    };
  }

  /** How far outside the good range, as a share of the way from there to the stop limit. */
  private static double excess(Judge.Finding finding) {
    return -share(finding);
  }

  /** How far inside the good range, as a share of the way to the stop limit; negative outside. */
  static double share(Judge.Finding finding) {
    Limit limit = finding.limit();
    boolean low = finding.value() - limit.goodMin() < limit.goodMax() - finding.value();
    double good = low ? limit.goodMin() : limit.goodMax();
    double stop = low ? limit.stopMin() : limit.stopMax();
    double wayToStop = Math.abs(good - stop);
    double scale =
        Double.isFinite(wayToStop) && wayToStop > 0 ? wayToStop : Math.max(1e-9, Math.abs(good));
    return limit.margin(finding.value()) / scale;
  }

  static final Comparator<Judge.Finding> WORST_FIRST =
      Comparator.comparing((Judge.Finding finding) -> finding.verdict() != Verdict.STOP)
          .thenComparing(Comparator.comparingDouble(Trial::weight).reversed());
}
