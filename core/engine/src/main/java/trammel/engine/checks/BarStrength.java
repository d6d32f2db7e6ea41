package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.SpringUnit;
import trammel.engine.layout.Traction;
import trammel.engine.loads.AppliedLoads;
import trammel.engine.loads.AxleLoads;
import trammel.engine.loads.DriveTrain;
import trammel.engine.loads.LoadCase;
import trammel.engine.loads.LoadedVehicle;
import trammel.engine.loads.PointForce;
import trammel.engine.loads.WeightAndSize;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkForces;
import trammel.engine.motion.Linkage;
import trammel.engine.motion.Load;
import trammel.engine.motion.SpringPoint;
import trammel.engine.strength.Column;
import trammel.engine.strength.RoundTubeSection;
import trammel.engine.strength.SteelGrade;

/**
 * Least safety factor of the bars' tubes against yield in tension and against yield or buckling in
 * compression, over the load cases, at ride. A bar is taken as straight and pivoted at both ends.
 */
record BarStrength(String id, String title) implements Check {
  /** Share of the roll stiffness at the rear where it is not measured; common practice. */
  private static final double REAR_ROLL_SHARE = 0.5;

  /** Share of the engine's torque that reaches the shaft; from memory. */
  private static final double DRIVE_EFFICIENCY = 0.9;

  /** A bar that carries less than this carries nothing worth judging (N). */
  private static final double IDLE_N = 1;

  @Override
  public Measure measure() {
    return Measure.FACTOR;
  }

  @Override
  public Reading read(LayoutAnalysis analysis) {
    Layout layout = analysis.layout();
    Linkage linkage = layout.linkage();
    AxlePose ride = AxlePose.atRide(layout.chassis().tyre().loadedRadiusMm());
    List<SpringPoint> springs = new ArrayList<>(2);
    for (SpringUnit spring : layout.springs()) {
      springs.add(
          new SpringPoint(spring.name(), spring.frame(), spring.axle(), spring.rateNPerMm()));
    }
    AxleLoads loads = new AxleLoads(vehicle(layout.chassis()));
    double least = Double.POSITIVE_INFINITY;
    String where = "no load reaches the bars";
    for (LoadCase general : analysis.settings().loadCases()) {
      LoadCase loadCase = onThisTyre(general, layout.chassis().traction());
      List<Load> applied = loads(loads.applied(loadCase));
      LinkForces forces = LinkForces.under(linkage, ride, springs, applied);
      for (Bar bar : layout.bars()) {
        double tensionN = forces.link(bar.name()).tensionN();
        double factor = factor(bar, tensionN);
        if (factor < least) {
          least = factor;
          where = bar.name() + (tensionN < 0 ? " pushed, " : " pulled, ") + loadCase.name();
        }
      }
    }
    return Double.isInfinite(least)
        ? new Reading.NotApplicable(where)
        : new Reading.Value(least, where);
  }

  private static double factor(Bar bar, double tensionN) {
    if (Math.abs(tensionN) < IDLE_N) {
      return Double.POSITIVE_INFINITY;
    }
    RoundTubeSection section =
        new RoundTubeSection(bar.tube().outsideDiameterMm(), bar.tube().wallMm());
    double yieldMPa = bar.tube().yieldMPa();
    if (tensionN > 0) {
      return yieldMPa * section.areaMm2() / tensionN;
    }
    SteelGrade steel = new SteelGrade(bar.name(), yieldMPa, yieldMPa, "tube of the layout");
    return Column.pivoted(section, bar.lengthMm(), steel).criticalLoadN() / -tensionN;
  }

  private static LoadCase onThisTyre(LoadCase general, Traction traction) {
    if (traction.tyreGrip().isEmpty()) {
      return general;
    }
    return new LoadCase(
        general.name(),
        general.driveMultiplier(),
        general.brakingG(),
        general.corneringG(),
        general.leftBumpFactor(),
        general.rightBumpFactor(),
        traction.tyreGrip().getAsDouble());
  }

  private static LoadedVehicle vehicle(Chassis chassis) {
    Masses masses = chassis.masses();
    return new LoadedVehicle(
        new WeightAndSize(
            masses.frontAxleKg(),
            masses.rearAxleKg(),
            masses.rearUnsprungKg(),
            masses.centreOfGravityHeightMm(),
            chassis.wheelbaseMm(),
            chassis.axle().trackMm()),
        driveTrain(chassis),
        chassis.tyre().loadedRadiusMm(),
        1 - chassis.traction().frontBrakeShare(),
        REAR_ROLL_SHARE);
  }

  /** Where the engine is not known, torque enough to spin the tyres: their grip is the limit. */
  private static DriveTrain driveTrain(Chassis chassis) {
    Traction traction = chassis.traction();
    if (traction.wheelTorqueNmm().isPresent()) {
      return new DriveTrain(
          traction.engineTorqueNmm().getAsDouble(),
          traction.firstGear().getAsDouble(),
          DRIVE_EFFICIENCY,
          traction.finalDrive().getAsDouble());
    }
    double weightN = 9.81 * chassis.masses().totalKg();
    double spinsThemNmm = weightN * traction.tyreGrip().orElse(1) * chassis.tyre().loadedRadiusMm();
    return new DriveTrain(spinsThemNmm, 1, 1, 1);
  }

  private static List<Load> loads(AppliedLoads applied) {
    List<Load> loads = new ArrayList<>(applied.forces().size() + 1);
    for (PointForce force : applied.forces()) {
      loads.add(
          Load.force(
              new Point3(force.xMm(), force.yMm(), force.zMm()),
              new Vector3(force.forceXN(), force.forceYN(), force.forceZN())));
    }
    loads.add(
        Load.moment(new Vector3(applied.momentXNmm(), applied.momentYNmm(), applied.momentZNmm())));
    return loads;
  }
}
