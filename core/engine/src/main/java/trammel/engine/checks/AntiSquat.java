package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;

/** Anti-squat at ride, as a share of the load transfer under drive. */
record AntiSquat(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    return new Reading.Value(analysis.ride().antiSquatShare(), "at ride");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(
        new Adjustment.MoveEnds(Names.of(analysis.layout().upper()), End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(Names.of(analysis.layout().lower()), End.FRAME, Direction.UP));
  }
}
