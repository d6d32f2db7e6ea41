package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;

/** Share of the wanted travel that the bars let the axle reach, the worst direction. */
record LinkageReach(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.SHARE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double share = analysis.reachedShare();
    return new Reading.Value(share, share < 1 ? "the bars run out of travel" : "all travel");
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(
        new Adjustment.MoveEnds(Names.of(analysis.layout().upper()), End.FRAME, Direction.FORWARD),
        new Adjustment.ChangeBump(),
        new Adjustment.ChangeDroop());
  }
}
