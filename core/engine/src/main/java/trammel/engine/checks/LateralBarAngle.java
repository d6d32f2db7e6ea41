package trammel.engine.checks;

import java.util.List;
import java.util.Set;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;

/** Rear-view angle of the lateral bar from level at ride. */
record LateralBarAngle(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double steepest = -1;
    String where = "";
    for (Bar bar : analysis.layout().across()) {
      Vector3 along = bar.axle().to(bar.frame());
      double angle = Math.abs(Math.atan2(along.z(), Math.abs(along.y())));
      if (angle > steepest) {
        steepest = angle;
        where = bar.name() + (along.z() > 0 ? ", frame end high" : ", frame end low");
      }
    }
    return steepest < 0
        ? new Reading.NotApplicable("this linkage has no lateral bar")
        : new Reading.Value(steepest, where);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Set<String> names = Names.of(analysis.layout().across());
    return List.of(
        new Adjustment.MoveEnds(names, End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(names, End.AXLE, Direction.UP));
  }
}
