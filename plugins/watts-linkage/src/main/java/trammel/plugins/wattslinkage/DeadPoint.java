package trammel.plugins.wattslinkage;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.BodyPose;
import trammel.engine.motion.Placement;

/**
 * Least angle between an arm of the rocker and its link over the travel. In line with its link, at
 * no angle, the rocker is at its dead point: the link cannot turn it, and the axle jams.
 */
record DeadPoint() implements Check {

  @Override
  public String id() {
    return "rocker-dead-point";
  }

  @Override
  public String title() {
    return "angle between rocker and link, all travel";
  }

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Optional<Rocker> rocker = Rocker.of(analysis.layout());
    if (rocker.isEmpty()) {
      return new Reading.NotApplicable("this linkage has no rocker");
    }
    double least = Double.POSITIVE_INFINITY;
    String where = "";
    for (AxlePose pose : analysis.envelope()) {
      for (Bar link : rocker.get().links()) {
        double angleRad = angleRad(rocker.get().pivot(), link, pose.placement());
        if (angleRad < least) {
          least = angleRad;
          where = link.name() + ", " + analysis.describe(pose);
        }
      }
    }
    return Double.isInfinite(least)
        ? new Reading.NotApplicable("the bars let the axle reach no pose")
        : new Reading.Value(least, where);
  }

  /** Angle between the lines of arm and link, up to a right angle. */
  private static double angleRad(Point3 pivot, Bar link, Placement placement) {
    Placement rocker = placement.of(Rocker.NAME);
    Point3 joint = rocker.move(link.axle());
    Vector3 arm = rocker.move(pivot).to(joint);
    Vector3 along = joint.to(placement.of(BodyPose.FRAME).move(link.frame()));
    return arm.angleToLineRad(along);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeBump(), new Adjustment.ChangeDroop());
  }
}
