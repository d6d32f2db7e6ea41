package trammel.plugins.wattslinkage;

import java.util.List;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;

/**
 * Largest turn of the rocker against the axle that carries it, over the travel. The spacers beside
 * it leave room for {@link RockerForm#SWING_RAD}.
 */
record RockerSwing() implements Check {
  private static final Vector3 UP = new Vector3(0, 0, 1);

  @Override
  public String id() {
    return "rocker-swing";
  }

  @Override
  public String title() {
    return "swing of the rocker on the axle, all travel";
  }

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (Rocker.of(analysis.layout()).isEmpty()) {
      return new Reading.NotApplicable("this linkage has no rocker");
    }
    double most = -1;
    String where = "";
    for (AxlePose pose : analysis.envelope()) {
      Vector3 onRocker = pose.placement().of(Rocker.NAME).turn(UP);
      double angleRad = onRocker.angleToRad(pose.turn(UP));
      if (angleRad > most) {
        most = angleRad;
        where = analysis.describe(pose);
      }
    }
    return most < 0
        ? new Reading.NotApplicable("the bars let the axle reach no pose")
        : new Reading.Value(most, where);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeBump(), new Adjustment.ChangeDroop());
  }
}
