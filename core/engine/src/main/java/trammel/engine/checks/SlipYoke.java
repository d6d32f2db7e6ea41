package trammel.engine.checks;

import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Driveline;
import trammel.engine.motion.AxlePose;

/** Room left in front of the slip yoke, or spline still engaged, over the travel. */
record SlipYoke(String id, String title, boolean room) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Driveline driveline = analysis.layout().chassis().driveline();
    OptionalDouble atRide = room ? driveline.slipRoomMm() : driveline.slipEngagementMm();
    if (atRide.isEmpty()) {
      return new Reading.Unknown(
          room
              ? "the room in front of the slip yoke is not measured; give measured.driveshaft.slip_room"
              : "the spline engagement is not measured; give measured.driveshaft.slip_engagement");
    }
    double rideMm = driveline.pinionJoint().distanceMm(driveline.transmissionJoint());
    double least = Double.POSITIVE_INFINITY;
    String where = "";
    for (AxlePose pose : analysis.envelope()) {
      Point3 pinion = pose.move(driveline.pinionJoint());
      double longerMm = pinion.distanceMm(driveline.transmissionJoint()) - rideMm;
      double left = atRide.getAsDouble() + (room ? longerMm : -longerMm);
      if (left < least) {
        least = left;
        where = analysis.describe(pose);
      }
    }
    return new Reading.Value(least, where);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeShaft());
  }
}
