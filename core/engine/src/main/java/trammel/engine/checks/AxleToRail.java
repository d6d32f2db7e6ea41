package trammel.engine.checks;

import java.util.List;

/** Least gap between axle tube and rail over the travel, the bump stop fully squeezed. */
record AxleToRail(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    boolean notched = analysis.layout().chassis().rails().notchDepthMm() > 0;
    return new Reading.Value(
        RailGap.leastMm(analysis), notched ? "at full bump, in the notch" : "at full bump");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeBump());
  }
}
