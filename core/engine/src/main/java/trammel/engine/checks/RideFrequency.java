package trammel.engine.checks;

import java.util.List;

/** Natural frequency of a rear corner at ride on its spring. */
record RideFrequency(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.FREQUENCY;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return new Reading.Value(analysis.ride().rideFrequencyHz(), "at ride, as weighed");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.ChangeRate());
  }
}
