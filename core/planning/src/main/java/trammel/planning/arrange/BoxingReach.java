package trammel.planning.arrange;

import java.util.List;
import java.util.Optional;
import trammel.brackets.rail.Footprint;
import trammel.brackets.rail.RailClosings;
import trammel.engine.checks.Judge;
import trammel.engine.layout.Rails;
import trammel.planning.draft.Draft;
import trammel.planning.job.BoxedStretch;

/**
 * How much further the open rails of a draft may be closed where mounts twist them: first without a
 * gap, then up to the frame's own crossmember on the side that is weak, then up to the other.
 */
final class BoxingReach {
  /**
   * A plate ends this far before the middle of the frame's crossmember, whose flanges stand in its
   * way, 2 in: common practice, no source.
   */
  private static final double SHORT_OF_CROSSMEMBER_MM = 2 * 25.4;

  /** What is gained by less than this is no change (mm). */
  private static final double SAME_MM = 25.4;

  private final Draft draft;
  private final Rails rails;
  private final List<Footprint> closed;

  /**
   * @param draft a layout whose work can be planned
   */
  BoxingReach(Draft draft) {
    this.draft = draft;
    rails = draft.layout().chassis().rails();
    closed = RailClosings.stretches(draft.work().closings(), rails);
  }

  /** The next stretch to close for a check of the rails' twist; empty where nothing is left. */
  Optional<BoxedStretch> next(Judge.Finding finding) {
    if (rails.boxed()) {
      return Optional.empty();
    }
    double behindMm = closed.stream().mapToDouble(one -> -one.rearMm()).reduce(0, Math::max);
    double aheadMm = closed.stream().mapToDouble(Footprint::frontMm).reduce(0, Math::max);
    double toBehindMm = Math.max(behindMm, reach(measured().crossmemberBehindMm()));
    double toAheadMm = Math.max(aheadMm, reach(measured().crossmemberAheadMm()));
    boolean isBehind = finding.where().mentions("behind") && !finding.where().mentions("ahead");
    double firstBehindMm = isBehind ? toBehindMm : behindMm;
    double firstAheadMm = isBehind ? aheadMm : toAheadMm;
    return wider(behindMm, aheadMm)
        .or(() -> wider(firstBehindMm, firstAheadMm))
        .or(() -> wider(toBehindMm, toAheadMm));
  }

  private trammel.planning.job.Rails measured() {
    return draft.job().measured().rails();
  }

  private static double reach(Optional<Double> crossmemberMm) {
    return crossmemberMm.orElse(0.0) - SHORT_OF_CROSSMEMBER_MM;
  }

  /** A stretch that is not closed yet. */
  private Optional<BoxedStretch> wider(double behindMm, double aheadMm) {
    return aheadMm > 0 && !(isClosed(true, behindMm, aheadMm) && isClosed(false, behindMm, aheadMm))
        ? Optional.of(new BoxedStretch(behindMm, aheadMm))
        : Optional.empty();
  }

  private boolean isClosed(boolean left, double behindMm, double aheadMm) {
    return closed.stream()
        .anyMatch(
            one ->
                one.left() == left
                    && one.rearMm() < SAME_MM - behindMm
                    && one.frontMm() > aheadMm - SAME_MM);
  }
}
