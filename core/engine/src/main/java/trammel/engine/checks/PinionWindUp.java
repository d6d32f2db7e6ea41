package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.loads.LoadCase;

/**
 * How far the give of the bushings lets the pinion turn from where it stands at ride when the
 * vehicle is driven or braked as hard as the load cases say. What it turns with the travel comes on
 * top.
 */
record PinionWindUp(String id, String title) implements Check {

  @Override
  public Measure measure() {
    return Measure.ANGLE;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    BarForces forces = analysis.barForces();
    double mostRad = 0;
    String where = "";
    List<Detail> details = new ArrayList<>();
    for (int i = 0; i < forces.cases().size(); i++) {
      LoadCase one = forces.cases().get(i);
      if (one.driveMultiplier() == 0 && one.brakingG() == 0) {
        continue;
      }
      double noseUpRad = forces.windUpRad(i);
      String way = noseUpRad < 0 ? ", nose down" : ", nose up";
      details.add(new Detail(one.name() + way, Measure.ANGLE, Math.abs(noseUpRad)));
      if (Math.abs(noseUpRad) > mostRad) {
        mostRad = Math.abs(noseUpRad);
        where = one.name() + way;
      }
    }
    return details.isEmpty()
        ? new Reading.NotApplicable("no load case drives or brakes")
        : new Reading.Value(mostRad, where, details);
  }

  @Override
  public String advice() {
    return "Fit stiffer joints, or set upper and lower bars further apart on the axle.";
  }
}
