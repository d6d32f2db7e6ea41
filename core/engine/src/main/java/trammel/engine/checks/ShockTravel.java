package trammel.engine.checks;

import java.util.List;
import java.util.Set;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.motion.AxlePose;

/** Shock travel left at the end of bump or of droop, over every pose the wheels can take. */
record ShockTravel(String id, String title, boolean inBump) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    if (analysis.layout().shocks().isEmpty()) {
      return new Reading.NotApplicable("the layout has no separate shock");
    }
    double least = Double.POSITIVE_INFINITY;
    String where = "";
    for (AxlePose pose : analysis.envelope()) {
      for (ShockUnit shock : analysis.layout().shocks()) {
        double length = shock.frame().distanceMm(pose.move(shock.axle()));
        double left = inBump ? length - shock.closedMm() : shock.openMm() - length;
        if (left < least) {
          least = left;
          where = shock.name() + (inBump ? " at full bump" : " at full droop");
        }
      }
    }
    return new Reading.Value(least, where);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    Set<String> names = Names.ofShocks(layout.shocks(), layout.springs());
    return List.of(
        new Adjustment.MoveEnds(names, End.FRAME, Direction.UP),
        new Adjustment.MoveEnds(names, End.AXLE, Direction.UP),
        inBump ? new Adjustment.ChangeBump() : new Adjustment.ChangeDroop());
  }
}
