package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.springs.AirSpringSize;

/** Room that is left to the ends of each air spring's load-height table over all travel. */
record AirSpringHeight(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.LENGTH;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    double least = Double.POSITIVE_INFINITY;
    String where = "";
    for (SpringUnit spring : analysis.layout().springs()) {
      if (spring.air().isEmpty()) {
        continue;
      }
      AirSpringSize size = spring.air().get().size();
      for (AxlePose pose : analysis.envelope()) {
        double lengthMm = spring.frame().distanceMm(pose.move(spring.axle()));
        double aboveMm = lengthMm - size.leastHeightMm();
        double belowMm = size.mostHeightMm() - lengthMm;
        if (Math.min(aboveMm, belowMm) < least) {
          least = Math.min(aboveMm, belowMm);
          where =
              spring.name()
                  + (aboveMm < belowMm ? " at its shortest, " : " at its longest, ")
                  + analysis.describe(pose);
        }
      }
    }
    return Double.isInfinite(least)
        ? new Reading.NotApplicable("there is no air spring with a table")
        : new Reading.Value(least, where);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(
        new Adjustment.MoveEnds(
            Names.ofSprings(analysis.layout().springs(), analysis.layout().shocks()),
            End.FRAME,
            Direction.UP),
        new Adjustment.ChangeDroop(),
        new Adjustment.ChangeBump());
  }
}
