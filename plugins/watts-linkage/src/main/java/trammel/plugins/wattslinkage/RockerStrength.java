package trammel.plugins.wattslinkage;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.Adjustment;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BracketPlate;

/**
 * Least factor between the yield of the rocker's plates and their stress across the pivot, over the
 * load cases. There the arm bends most, and the bore for the shell leaves least: two plates of
 * width H with a bore d, modulus 2 t (H3 - d3) / (6 H) and area 2 t (H - d) (bending of a section
 * with a hole in its middle; Roark, formulas for stress and strain, from memory). The shell that is
 * welded into the bore is not counted.
 */
record RockerStrength() implements Check {
  private static final int PLATES = 2;

  @Override
  public String id() {
    return "rocker-strength";
  }

  @Override
  public String title() {
    return "safety factor of the rocker's plates";
  }

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Optional<Rocker> rocker = Rocker.of(analysis.layout());
    if (rocker.isEmpty()) {
      return new Reading.NotApplicable("this linkage has no rocker");
    }
    List<Bar> bars = analysis.layout().bars();
    for (Bar link : rocker.get().links()) {
      if (link.bracket().isEmpty()) {
        return new Reading.NotApplicable("the plate of the rocker is not known");
      }
    }
    return analysis
        .barForces()
        .least(
            bars,
            (bar, tensionN) ->
                rocker.get().links().contains(bars.get(bar))
                    ? factor(rocker.get().arm(bars.get(bar)), bars.get(bar), tensionN)
                    : Double.POSITIVE_INFINITY);
  }

  /**
   * Factor on yield across the pivot.
   *
   * @param arm from the pivot to the link's joint (mm)
   * @param tensionN force in the link, pull positive
   */
  static double factor(Vector3 arm, Bar link, double tensionN) {
    BracketPlate plate = link.bracket().orElseThrow();
    Vector3 force = Rocker.pull(link).scaled(tensionN);
    double widthMm = 2 * PivotBush.bossMm();
    double boreMm = 2 * RockerPlate.BORE_RADIUS_MM;
    double thicknessMm = PLATES * plate.thicknessMm();
    double modulusMm3 = thicknessMm * (Math.pow(widthMm, 3) - Math.pow(boreMm, 3)) / (6 * widthMm);
    double bendingMPa = arm.cross(force).norm() / modulusMm3;
    double pullMPa = Math.abs(arm.normalized().dot(force)) / (thicknessMm * (widthMm - boreMm));
    return plate.yieldMPa() / (bendingMPa + pullMPa);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ThickenBrackets());
  }
}
