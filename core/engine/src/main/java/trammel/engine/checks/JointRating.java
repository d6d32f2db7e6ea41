package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Bar;

/**
 * Largest force in a bar over the load cases, as a share of what its weaker joint may carry in
 * service: a bushing's own rating, a quarter of a rod end's static one.
 */
record JointRating(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    List<Bar> bars = analysis.layout().bars();
    return analysis
        .barForces()
        .greatest(bars, (bar, tensionN) -> Math.abs(tensionN) / workingN(bars.get(bar)));
  }

  private static double workingN(Bar bar) {
    return Math.min(bar.frameJoint().workingN(), bar.axleJoint().workingN());
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return StrongerJoints.toTry(analysis);
  }
}
