package trammel.engine.checks;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;

/** Side-view angle of the bars of one kind from level at ride; the steepest counts. */
record BarAngle(String id, String title, Function<Layout, List<Bar>> which) implements Check {

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double steepest = -1;
    String where = "";
    for (Bar bar : which.apply(analysis.layout())) {
      Vector3 along = bar.axle().to(bar.frame());
      double angle = Math.abs(Math.atan2(along.z(), Math.abs(along.x())));
      if (angle > steepest) {
        steepest = angle;
        where = bar.name();
      }
    }
    return steepest < 0
        ? new Reading.NotApplicable("this linkage has no such bar")
        : new Reading.Value(steepest, where);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Set<String> names = Names.of(which.apply(analysis.layout()));
    return List.of(
        new Adjustment.MoveEnds(names, End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(names, End.AXLE, Direction.UP));
  }
}
