package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.ClearancePair;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.LeastGap;
import trammel.engine.clearance.TightestPair;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;

/** Least gap between the outside of a spring or shock and the axle tube over the travel. */
record SpringToTube(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (analysis.envelope().isEmpty()) {
      return new Reading.NotApplicable("the bars let the axle reach no pose");
    }
    Body tube = new Body("axle tube", tube(analysis.layout().chassis()), Carrier.AXLE);
    TightestPair tightest = new TightestPair(analysis.envelope());
    for (Body unit : units(analysis.layout())) {
      tightest.add(ClearancePair.of(unit, tube));
    }
    LeastGap least = tightest.found().orElseThrow();
    Optional<AxlePose> at = analysis.poseAt(least.heaveMm(), least.rollRad());
    String pose = at.isPresent() ? analysis.describe(at.get()) : "";
    return new Reading.Value(least.gap().gapMm(), least.pair().first().name() + " " + pose);
  }

  private static List<Body> units(Layout layout) {
    List<Body> units = new ArrayList<>(4);
    for (SpringUnit spring : layout.springs()) {
      Cylinder shape = new Cylinder(spring.frame(), spring.axle(), spring.radiusMm());
      units.add(new Body(spring.name(), shape, Carrier.LINK));
    }
    for (ShockUnit shock : layout.shocks()) {
      Cylinder shape = new Cylinder(shock.frame(), shock.axle(), shock.bodyRadiusMm());
      units.add(new Body(shock.name(), shape, Carrier.LINK));
    }
    return units;
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
    Set<String> springs = Names.ofSprings(layout.springs(), layout.shocks());
    Set<String> shocks = Names.ofShocks(layout.shocks(), layout.springs());
    return List.of(
        new Adjustment.MoveEnds(springs, End.AXLE, Direction.FORWARD),
        new Adjustment.MoveEnds(springs, End.AXLE, Direction.UP),
        new Adjustment.MoveEnds(shocks, End.AXLE, Direction.FORWARD));
  }
}
