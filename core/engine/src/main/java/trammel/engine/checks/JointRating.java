package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Bar;

/** Largest force in a bar over the load cases, as a share of what its weaker joint is rated for. */
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
        .greatest(bars, (bar, tensionN) -> Math.abs(tensionN) / ratingN(bars.get(bar)));
  }

  private static double ratingN(Bar bar) {
    return Math.min(bar.frameJoint().staticRatingN(), bar.axleJoint().staticRatingN());
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return StrongerJoints.toTry(analysis);
  }
}
