package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Joint;
import trammel.engine.strength.Bolt;
import trammel.engine.strength.BoltGrade;
import trammel.engine.strength.UnifiedThread;

/**
 * Least factor between the load that shears a bar's bolt and the force in the bar, over the load
 * cases. The bolt is a grade 8 bolt in a bracket of two plates, its thread in both shear planes:
 * the worse case, because a bolt cut to a stocked length may have its thread there.
 */
record BoltStrength(String id, String title) implements Check {
  private static final double INCH_MM = 25.4;
  private static final int DOUBLE_SHEAR = 2;

  /** Unified fine threads, diameter in inches and threads an inch. Source: ASME B1.1. */
  private static final double[][] FINE = {
    {0.25, 28},
    {0.3125, 24},
    {0.375, 24},
    {0.4375, 20},
    {0.5, 20},
    {0.5625, 18},
    {0.625, 18},
    {0.75, 16},
    {0.875, 14},
    {1, 12},
    {1.5, 12}
  };

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> bars = analysis.layout().bars();
    double[] shearN = new double[bars.size()];
    for (int i = 0; i < shearN.length; i++) {
      shearN[i] = Math.min(shearN(bars.get(i).frameJoint()), shearN(bars.get(i).axleJoint()));
    }
    return analysis.barForces().least(bars, (bar, tensionN) -> shearN[bar] / Math.abs(tensionN));
  }

  /** Load at which the bolt of a joint shears (N). */
  static double shearN(Joint joint) {
    double smallestMm = FINE[0][0] * INCH_MM;
    double largestMm = FINE[FINE.length - 1][0] * INCH_MM;
    double diameterMm = Math.max(smallestMm, Math.min(largestMm, joint.boltDiameterMm()));
    Bolt bolt = new Bolt(new UnifiedThread(diameterMm, pitchMm(diameterMm)), BoltGrade.GRADE_8);
    return bolt.shearStrengthN(DOUBLE_SHEAR, Bolt.ShearPlane.THREAD);
  }

  /** Pitch of the fine thread of the size at or next above the diameter. */
  private static double pitchMm(double diameterMm) {
    for (double[] size : FINE) {
      if (diameterMm <= size[0] * INCH_MM + 0.2) {
        return INCH_MM / size[1];
      }
    }
    return INCH_MM / FINE[FINE.length - 1][1];
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return StrongerJoints.toTry(analysis);
  }
}
