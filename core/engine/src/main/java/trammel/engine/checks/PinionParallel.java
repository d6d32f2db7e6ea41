package trammel.engine.checks;

import java.util.List;
import trammel.engine.layout.Driveline;

/** Side-view angle between the pinion's axis and the transmission output's at ride. */
record PinionParallel(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Driveline driveline = analysis.layout().chassis().driveline();
    double off = driveline.pinionAngleRad() - driveline.transmissionAngleRad();
    String where = off > 0 ? "pinion's nose is high" : "pinion's nose is low";
    return new Reading.Value(Math.abs(off), off == 0 ? "parallel" : where);
  }

  @Override
  public List<Adjustment> adjustments(LayoutAnalysis analysis) {
    return List.of(new Adjustment.TurnPinion());
  }
}
