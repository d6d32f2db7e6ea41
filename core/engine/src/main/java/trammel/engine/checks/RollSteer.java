package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;

/** Steer of the axle per angle of roll at ride, understeer positive. */
record RollSteer(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double understeer = analysis.ride().rollUndersteer();
    return new Reading.Value(understeer, understeer < 0 ? "oversteer" : "understeer");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(
        new Adjustment.MoveEnds(Names.of(analysis.layout().lower()), End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(Names.of(analysis.layout().upper()), End.FRAME, Direction.UP));
  }
}
