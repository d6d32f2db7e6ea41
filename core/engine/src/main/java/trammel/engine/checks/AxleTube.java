package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.motion.Load;
import trammel.engine.strength.RoundTubeSection;

/**
 * Least safety factor of the axle tube on yield under the load cases, with tyres, springs, bars and
 * stops where they now are. At every station the forces outboard of it bend the tube upright and
 * fore and aft, twist it and push along it; bending is the vector sum of both ways, and together
 * they count by von Mises. The tube's steel is taken to yield at 345 MPa (50 ksi), from memory.
 */
record AxleTube(String id, String title) implements Check {
  private static final double YIELD_MPA = 50 * 6.894757293;

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    BarForces forces = analysis.barForces();
    Chassis chassis = analysis.layout().chassis();
    double mostMPa = 0;
    String where = "";
    double atMm = 0;
    for (int i = 0; i < forces.cases().size(); i++) {
      for (int side = 1; side >= -1; side -= 2) {
        List<Load> outboard = onSide(forces.onAxle(i), side);
        for (Load at : outboard) {
          double outMm = station(chassis.axle(), Math.abs(at.at().yMm()));
          for (boolean counted : new boolean[] {false, true}) {
            double stress = stressMPa(chassis, outboard, side * outMm, counted);
            if (stress > mostMPa) {
              mostMPa = stress;
              atMm = outMm;
              where = (side > 0 ? "left" : "right") + ", " + forces.cases().get(i).name();
            }
          }
        }
      }
    }
    return mostMPa > 0
        ? new Reading.Value(
            YIELD_MPA / mostMPa,
            where,
            List.of(
                new Detail("stress", Measure.STRESS, mostMPa),
                new Detail("steel taken to yield at", Measure.STRESS, YIELD_MPA),
                new Detail("from the middle of the axle", Measure.LENGTH, atMm)))
        : new Reading.NotApplicable("no load reaches the axle");
  }

  @Override
  public String advice() {
    return "Set the springs further apart, nearer to the wheels; ask for a stronger axle tube, or a"
        + " truss along it.";
  }

  private static List<Load> onSide(List<Load> loads, int side) {
    List<Load> outboard = new ArrayList<>();
    for (Load load : loads) {
      if (side * load.at().yMm() > 1e-6) {
        outboard.add(load);
      }
    }
    return outboard;
  }

  /** A station on the tube itself: outside the centre housing, inside the wheel's flange. */
  private static double station(AxleHousing axle, double outMm) {
    return Math.max(axle.innerLimitMm(), Math.min(axle.flangeToFlangeMm() / 2, outMm));
  }

  /**
   * Stress at a station (MPa).
   *
   * @param outboard the loads on that side of the vehicle
   * @param leftMm the station (mm, left positive)
   * @param counted whether what acts right at the station is counted: just inboard of it
   */
  static double stressMPa(Chassis chassis, List<Load> outboard, double leftMm, boolean counted) {
    Point3 station = new Point3(0, leftMm, chassis.axleCentre().zMm());
    Vector3 moment = new Vector3(0, 0, 0);
    Vector3 force = new Vector3(0, 0, 0);
    double outMm = Math.abs(leftMm);
    for (Load load : outboard) {
      double atMm = Math.abs(load.at().yMm());
      if (atMm > outMm + 1e-6 || counted && atMm > outMm - 1e-6) {
        moment = moment.plus(station.to(load.at()).cross(load.forceN()));
        force = force.plus(load.forceN());
      }
    }
    AxleHousing axle = chassis.axle();
    RoundTubeSection tube = new RoundTubeSection(axle.tubeDiameterMm(), axle.tubeWallMm());
    double modulusMm3 = tube.leastModulusMm3();
    double bending =
        Math.hypot(moment.x(), moment.z()) / modulusMm3 + Math.abs(force.y()) / tube.areaMm2();
    double shear = Math.abs(moment.y()) / (2 * modulusMm3);
    return Math.sqrt(bending * bending + 3 * shear * shear);
  }
}
