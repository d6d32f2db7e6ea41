package trammel.plugins.wattslinkage;

import java.util.List;
import java.util.Optional;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.Check;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Measure;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.strength.Bolt;
import trammel.engine.strength.BoltGrade;
import trammel.engine.strength.UnifiedThread;

/**
 * Least factor between the load that shears the rocker's pivot bolt and the force of both links on
 * it, over the load cases. It is a grade 8 bolt, 5/8-18, in double shear with its thread in both
 * planes, which is the worse case.
 */
record PivotBoltStrength() implements Check {
  private static final int DOUBLE_SHEAR = 2;

  /** 5/8-18: ASME B1.1. */
  private static final double PITCH_MM = 25.4 / 18;

  /** Less than this is no load worth judging (N). */
  private static final double IDLE_N = 1;

  @Override
  public String id() {
    return "rocker-pivot-bolt";
  }

  @Override
  public String title() {
    return "safety factor of the rocker's pivot bolt in shear";
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
    BarForces forces = analysis.barForces();
    double mostN = IDLE_N;
    String where = "";
    for (int i = 0; i < forces.cases().size(); i++) {
      Vector3 onBolt = new Vector3(0, 0, 0);
      for (Bar link : rocker.get().links()) {
        double tensionN = forces.tensionN(i, bars.indexOf(link));
        onBolt = onBolt.plus(Rocker.pull(link).scaled(tensionN));
      }
      if (onBolt.norm() > mostN) {
        mostN = onBolt.norm();
        where = forces.cases().get(i).name();
      }
    }
    return where.isEmpty()
        ? new Reading.NotApplicable("no load reaches the rocker")
        : new Reading.Value(shearN() / mostN, where);
  }

  /** Load at which the bolt shears (N). */
  static double shearN() {
    return new Bolt(new UnifiedThread(PivotBush.BOLT_MM, PITCH_MM), BoltGrade.GRADE_8)
        .shearStrengthN(DOUBLE_SHEAR, Bolt.ShearPlane.THREAD);
  }
}
