package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;

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
    for (SpringUnit spring : analysis.layout().springs()) {
      if (spring.kind() != SpringKind.COIL) {
        // The rate of an air spring follows from its size and load; it cannot be chosen by itself.
        return List.of();
      }
    }
    return List.of(new Adjustment.ChangeRate());
  }
}
