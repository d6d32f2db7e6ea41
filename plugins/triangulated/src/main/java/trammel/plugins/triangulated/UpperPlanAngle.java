package trammel.plugins.triangulated;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.planning.extension.LimitedCheck;

/**
 * Angle between the two upper bars seen from above. Their share of a side force grows as the angle
 * closes: each carries F / (2 sin of half the angle).
 */
record UpperPlanAngle(String id, String title) implements Check {
  /** At 60 degrees each upper bar carries just the whole side force. */
  private static final double GOOD_RAD = Math.toRadians(60);

  /** A bar shorter than this in plan has no direction there (mm). */
  private static final double LEAST_MM = 1;

  /** At 35 degrees each upper bar carries 1.7 times the side force. */
  private static final double STOP_RAD = Math.toRadians(35);

  static LimitedCheck limited() {
    return new LimitedCheck(
        new UpperPlanAngle("upper-bar-plan-angle", "angle between the upper bars in plan"),
        Limit.atLeast(GOOD_RAD, STOP_RAD, "common practice, no source"));
  }

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> uppers = analysis.layout().upper();
    if (uppers.size() != 2) {
      return new Reading.NotApplicable("this layout has " + uppers.size() + " upper bars, not two");
    }
    Vector3 first = planView(uppers.get(0));
    Vector3 second = planView(uppers.get(1));
    if (first.norm() < LEAST_MM || second.norm() < LEAST_MM) {
      return new Reading.Unknown(
          "an upper bar stands upright and has no direction in plan; check its pick-up points");
    }
    double angleRad = first.angleToRad(second);
    return new Reading.Value(angleRad, uppers.get(0).name() + " to " + uppers.get(1).name());
  }

  private static Vector3 planView(Bar bar) {
    Vector3 along = bar.axle().to(bar.frame());
    return new Vector3(along.x(), along.y(), 0);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Set<String> names = new LinkedHashSet<>();
    for (Bar bar : analysis.layout().upper()) {
      names.add(bar.name());
    }
    return List.of(
        new Adjustment.MoveEnds(names, End.FRAME, Direction.FORWARD),
        new Adjustment.MoveEnds(names, End.AXLE, Direction.OUTBOARD));
  }
}
