package trammel.engine.checks;

import java.util.List;
import java.util.Set;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;

/** Angle of the most inclined shock or spring from upright at ride. */
record Lean(String id, String title) implements Check {
  private static final Vector3 UPRIGHT = new Vector3(0, 0, 1);

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double most = 0;
    String where = "";
    for (ShockUnit shock : analysis.layout().shocks()) {
      double lean = lean(shock.axle(), shock.frame());
      if (lean >= most) {
        most = lean;
        where = shock.name();
      }
    }
    for (SpringUnit spring : analysis.layout().springs()) {
      double lean = lean(spring.axle(), spring.frame());
      if (lean > most || where.isEmpty()) {
        most = lean;
        where = spring.name();
      }
    }
    return new Reading.Value(most, where);
  }

  private static double lean(Point3 lower, Point3 upper) {
    return lower.to(upper).angleToLineRad(UPRIGHT);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    Set<String> shocks = Names.ofShocks(layout.shocks(), layout.springs());
    Set<String> springs = Names.ofSprings(layout.springs(), layout.shocks());
    return List.of(
        new Adjustment.MoveEnds(shocks, End.FRAME, Direction.OUTBOARD),
        new Adjustment.MoveEnds(shocks, End.FRAME, Direction.FORWARD),
        new Adjustment.MoveEnds(springs, End.FRAME, Direction.OUTBOARD),
        new Adjustment.MoveEnds(springs, End.FRAME, Direction.FORWARD));
  }
}
