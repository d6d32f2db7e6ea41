package trammel.plugins.torquearm;

import java.util.List;
import java.util.Optional;
import trammel.brackets.bar.JointSeat;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BracketPlate;
import trammel.engine.layout.Layout;
import trammel.engine.strength.BuiltUpSection;
import trammel.engine.strength.PlateRectangle;
import trammel.planning.extension.LimitedCheck;

/**
 * Safety factor on yield of the arm in bending where it leaves its saddle: there the moment is
 * largest and the box is nearly as deep as anywhere. The force at the eye is the drop link's,
 * square to the arm; stress is moment over section modulus of two sides and two strips (theory of
 * bending; any handbook of mechanics, from memory).
 */
record ArmStrength(String id, String title) implements Check {
  private static final double GOOD = 2;
  private static final double STOP = 1.3;

  static LimitedCheck limited() {
    return new LimitedCheck(
        new ArmStrength("arm-strength", "safety factor of the torque arm on yield"),
        Limit.atLeast(GOOD, STOP, "common practice, no source"));
  }

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    Optional<Bar> link = layout.bar(TorqueArm.LINK);
    if (link.isEmpty() || link.get().bracket().isEmpty()) {
      return new Reading.NotApplicable("this layout has no arm on a drop link");
    }
    BracketPlate plate = link.get().bracket().get();
    double tubeMm = layout.chassis().axle().tubeRadiusMm();
    double armMm = Math.hypot(eye(layout, link.get()).x(), eye(layout, link.get()).z());
    double rootMm = (tubeMm + plate.thicknessMm()) * Math.cos(BoxedArm.WRAP_RAD / 2);
    double modulusMm3 = root(layout, link.get(), plate).leastModulusMm3();
    int bar = layout.bars().indexOf(link.get());
    BarForces forces = analysis.barForces();
    double worstNmm = 0;
    String where = "no load reaches the arm";
    for (int i = 0; i < forces.cases().size(); i++) {
      double momentNmm =
          Math.abs(forces.tensionN(i, bar)) * square(layout, link.get()) * (armMm - rootMm);
      if (momentNmm > worstNmm) {
        worstNmm = momentNmm;
        where = forces.cases().get(i).name();
      }
    }
    return worstNmm == 0
        ? new Reading.NotApplicable(where)
        : new Reading.Value(plate.yieldMPa() * modulusMm3 / worstNmm, where);
  }

  private static Vector3 eye(Layout layout, Bar link) {
    Vector3 way = layout.chassis().axleCentre().to(link.axle());
    return new Vector3(way.x(), 0, way.z());
  }

  /** Share of the link's force that stands square to the arm in side view. */
  private static double square(Layout layout, Bar link) {
    Vector3 along = eye(layout, link).normalized();
    Vector3 pull = link.axle().to(link.frame()).normalized();
    return Math.abs(along.x() * pull.z() - along.z() * pull.x());
  }

  /** Two sides with the strips between them, where the saddle's corners are. */
  static BuiltUpSection root(Layout layout, Bar link, BracketPlate plate) {
    double thicknessMm = plate.thicknessMm();
    double footMm = layout.chassis().axle().tubeRadiusMm() + thicknessMm;
    double deepMm = 2 * footMm * Math.sin(BoxedArm.WRAP_RAD / 2);
    double betweenMm = new JointSeat(link.axleJoint(), thicknessMm).joint().widthMm();
    return new BuiltUpSection(
        List.of(
            new PlateRectangle(0, 0, thicknessMm, deepMm),
            new PlateRectangle(thicknessMm + betweenMm, 0, thicknessMm, deepMm),
            new PlateRectangle(thicknessMm, 0, betweenMm, thicknessMm),
            new PlateRectangle(thicknessMm, deepMm - thicknessMm, betweenMm, thicknessMm)));
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ThickenBrackets());
  }
}
