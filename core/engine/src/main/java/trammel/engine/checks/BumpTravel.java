package trammel.engine.checks;

import java.util.List;
import java.util.Optional;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;

/** Bump travel from ride to whatever stops the axle first. */
record BumpTravel(String id, String title) implements Check {
  /** Step in which the travel is walked before the stop is closed in on (mm). */
  private static final double STEP_MM = 10;

  /** Halvings of a step: 10 mm / 2^14 is under a thousandth of a millimetre. */
  private static final int HALVINGS = 14;

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double wantedMm = analysis.layout().chassis().travel().bumpMm();
    double free = 0;
    while (free < wantedMm) {
      double next = Math.min(free + STEP_MM, wantedMm);
      Optional<String> stop = stopAt(analysis, next);
      if (stop.isPresent()) {
        return new Reading.Value(closeIn(analysis, free, next), stop.get());
      }
      free = next;
    }
    return new Reading.Value(wantedMm, "to the bump stop");
  }

  private static double closeIn(LayoutAnalysis analysis, double free, double blocked) {
    double low = free;
    double high = blocked;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (stopAt(analysis, middle).isPresent()) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return low;
  }

  private static Optional<String> stopAt(LayoutAnalysis analysis, double heaveMm) {
    Optional<AxlePose> pose = analysis.poseAt(heaveMm, 0);
    if (pose.isEmpty()) {
      return Optional.of("the bars let it go no further");
    }
    Layout layout = analysis.layout();
    if (RailGap.gapMm(layout.chassis(), pose.get()) < 0) {
      return Optional.of("axle tube meets the rail first");
    }
    for (ShockUnit shock : layout.shocks()) {
      if (shock.frame().distanceMm(pose.get().move(shock.axle())) < shock.closedMm()) {
        return Optional.of(shock.name() + " bottoms first");
      }
    }
    for (SpringUnit spring : layout.springs()) {
      if (spring.frame().distanceMm(pose.get().move(spring.axle())) < spring.shortestMm()) {
        return Optional.of(spring.name() + " is solid first");
      }
    }
    return Optional.empty();
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    return List.of(
        new Adjustment.ChangeBump(),
        new Adjustment.MoveEnds(
            Names.ofShocks(layout.shocks(), layout.springs()), End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(
            Names.ofSprings(layout.springs(), layout.shocks()), End.FRAME, Direction.UP));
  }
}
