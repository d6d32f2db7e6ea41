package trammel.engine.checks;

import trammel.engine.layout.Rails;

/** Section modulus of the rail in the middle of its notch over that of the rail as it was. */
record RailModulus(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Rails rails = analysis.layout().chassis().rails();
    if (!(rails.notchDepthMm() > 0)) {
      return new Reading.NotApplicable("the rails are not notched");
    }
    double ratio = NotchedRail.modulusRatio(rails);
    return new Reading.Value(
        ratio,
        ratio > 0
            ? "over the axle, in the middle of the notch"
            : "over the axle, where the notch reaches the top flange");
  }
}
