package trammel.engine.checks;

import java.util.List;
import java.util.Set;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.motion.AxlePose;

/** Largest sideways movement of the axle in pure heave through the travel. */
record LateralShift(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double largest = 0;
    double atHeave = 0;
    for (AxlePose pose : analysis.heaveSweep()) {
      if (Math.abs(pose.lateralMm()) > largest) {
        largest = Math.abs(pose.lateralMm());
        atHeave = pose.heaveMm();
      }
    }
    return new Reading.Value(largest, atHeave > 0 ? "at full bump" : "at full droop");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Set<String> names = Names.of(analysis.layout().across());
    if (names.isEmpty()) {
      return List.of();
    }
    return List.of(
        new Adjustment.MoveEnds(names, End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(names, End.FRAME, Direction.OUTBOARD),
        new Adjustment.MoveEnds(names, End.AXLE, Direction.OUTBOARD));
  }
}
