package trammel.engine.checks;

import java.util.List;
import java.util.Set;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Gap;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/** Least gap between the outside of a spring and the axle tube over the travel. */
record SpringToTube(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double least = Double.POSITIVE_INFINITY;
    String where = "";
    Capsule tube = tube(analysis.layout().chassis());
    for (AxlePose pose : analysis.envelope()) {
      Placement placement = pose.placement();
      Capsule moved = tube.moved(placement);
      for (SpringUnit spring : analysis.layout().springs()) {
        Cylinder envelope =
            new Cylinder(placement.move(spring.axle()), spring.frame(), spring.radiusMm());
        double gap = Gap.between(envelope, moved).gapMm();
        if (gap < least) {
          least = gap;
          where = spring.name() + " " + analysis.describe(pose);
        }
      }
    }
    return new Reading.Value(least, where);
  }

  private static Capsule tube(Chassis chassis) {
    AxleHousing axle = chassis.axle();
    double halfMm = axle.flangeToFlangeMm() / 2;
    double upMm = chassis.tyre().loadedRadiusMm();
    return new Capsule(
        new Point3(0, halfMm, upMm), new Point3(0, -halfMm, upMm), axle.tubeRadiusMm());
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    Set<String> names = Names.ofSprings(layout.springs(), layout.shocks());
    return List.of(
        new Adjustment.MoveEnds(names, End.AXLE, Direction.FORWARD),
        new Adjustment.MoveEnds(names, End.AXLE, Direction.UP));
  }
}
