package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleMotion;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.Traction;
import trammel.engine.loads.AppliedLoads;
import trammel.engine.loads.AxleLoads;
import trammel.engine.loads.DriveTrain;
import trammel.engine.loads.LoadCase;
import trammel.engine.loads.LoadedVehicle;
import trammel.engine.loads.PointForce;
import trammel.engine.loads.WeightAndSize;
import trammel.engine.mechanism.MechanismForces;
import trammel.engine.motion.BodyPose;
import trammel.engine.motion.Load;
import trammel.engine.motion.MemberForce;
import trammel.engine.motion.MotionRates;
import trammel.engine.quantity.Gravity;

/** The force in every bar at ride, under every load case. */
public final class BarForces {
  /** A bar that carries less than this carries nothing worth judging (N). */
  private static final double IDLE_N = 1;

  /** Share of the engine's torque that reaches the shaft; from memory. */
  private static final double DRIVE_EFFICIENCY = 0.9;

  private static final LoadCase STANDING = new LoadCase("standing", 0, 0, 0, 1, 1, 1);

  private final List<LoadCase> cases;
  private final double[][] tensionN;
  private final List<AxleSupports.Balance> balances;
  private final double[] noseUpRad;
  private final List<List<Load>> outside;
  private final boolean[] endsOnAxle;

  private BarForces(
      List<LoadCase> cases,
      double[][] tensionN,
      List<AxleSupports.Balance> balances,
      double[] noseUpRad,
      List<List<Load>> outside,
      boolean[] endsOnAxle) {
    this.cases = List.copyOf(cases);
    this.tensionN = tensionN;
    this.noseUpRad = noseUpRad;
    this.outside = List.copyOf(outside);
    this.endsOnAxle = endsOnAxle;
    this.balances = List.copyOf(balances);
  }

  static BarForces of(Layout layout, AxleMotion motion, BodyRoll roll, List<LoadCase> cases) {
    AxleLoads loads = new AxleLoads(vehicle(layout.chassis(), roll));
    List<List<Load>> onAxle = new ArrayList<>(cases.size());
    for (LoadCase loadCase : cases) {
      AppliedLoads applied = loads.applied(onThisTyre(loadCase, layout.chassis().traction()));
      onAxle.add(loads(applied, layout.chassis()));
    }
    onAxle.add(loads(loads.applied(STANDING), layout.chassis()));
    List<AxleSupports.Balance> balances = new AxleSupports(layout, motion).under(onAxle);
    MotionRates rates = motion.ratesAtRide();
    double standingRad = noseUpRad(balances.remove(cases.size()), rates);
    onAxle.remove(cases.size());
    double[] noseUpRad = new double[cases.size()];
    double[][] tensionN = new double[cases.size()][layout.bars().size()];
    for (int i = 0; i < cases.size(); i++) {
      MechanismForces forces = balances.get(i).forces();
      noseUpRad[i] = noseUpRad(balances.get(i), rates) - standingRad;
      for (int k = 0; k < tensionN[i].length; k++) {
        tensionN[i][k] = forces.members().links().get(k).tensionN();
      }
    }
    boolean[] endsOnAxle = new boolean[layout.bars().size()];
    for (int k = 0; k < endsOnAxle.length; k++) {
      endsOnAxle[k] = layout.bars().get(k).axleEnd().body().equals(BodyPose.AXLE);
    }
    return new BarForces(cases, tensionN, balances, noseUpRad, onAxle, endsOnAxle);
  }

  /** Turn of the axle in side view, less what bars without any give would turn it on its way. */
  private static double noseUpRad(AxleSupports.Balance balance, MotionRates rates) {
    Vector3 turn = balance.forces().members().axleTurnRad();
    double heaveMm = balance.forces().members().axleShiftMm().z();
    return -turn.y()
        - rates.pitchNoseUpRadPerMmHeave() * heaveMm
        - rates.pitchNoseUpRadPerRadRoll() * turn.x();
  }

  /**
   * How far the axle turns under a load case by the give of the bushings; what it turns with the
   * travel is not counted.
   *
   * @return turn in side view (rad), nose up positive
   */
  public double windUpRad(int loadCase) {
    return noseUpRad[loadCase];
  }

  /** The load cases, in the order in which they are counted. */
  public List<LoadCase> cases() {
    return cases;
  }

  /**
   * The force along a bar.
   *
   * @param loadCase index of the load case
   * @param bar index of the bar in the layout
   * @return force (N), pull positive
   */
  public double tensionN(int loadCase, int bar) {
    return tensionN[loadCase][bar];
  }

  /**
   * The force of a slider's line on the body that slides.
   *
   * @param loadCase index of the load case
   * @param slider index of the slider in the layout's guide
   * @return force (N), square to the line
   */
  public Vector3 sliderN(int loadCase, int slider) {
    return balances.get(loadCase).forces().slidersN().get(slider);
  }

  /**
   * What each spring pushes with under a load case (N), 0 where it is slack; in the layout's order.
   */
  public List<Double> springsN(int loadCase) {
    return balances.get(loadCase).springsN();
  }

  /**
   * All that pushes or pulls the axle under a load case: tyres, its own weight, bars, springs,
   * stops.
   */
  public List<Load> onAxle(int loadCase) {
    List<Load> all = new ArrayList<>(outside.get(loadCase));
    List<MemberForce> bars = balances.get(loadCase).forces().members().links();
    for (int k = 0; k < bars.size(); k++) {
      if (endsOnAxle[k]) {
        all.add(Load.force(bars.get(k).axlePivot(), bars.get(k).onAxleN()));
      }
    }
    all.addAll(balances.get(loadCase).onAxle());
    return all;
  }

  /** Force along the links of the anti-roll bar under a load case (N); 0 for none. */
  public double antiRollBarN(int loadCase) {
    return balances.get(loadCase).antiRollBarN();
  }

  /** Names of the bump stops and of the shocks' ends. */
  public List<String> stops() {
    return balances.isEmpty() ? List.of() : balances.get(0).stops();
  }

  /** What each of {@link #stops} carries under a load case (N), 0 where it does not. */
  public List<Double> stopsN(int loadCase) {
    return balances.get(loadCase).stopsN();
  }

  /** How much worse than allowed, or how safe, a force in a bar is. */
  public interface Rating {
    /**
     * The figure of a bar under a force.
     *
     * @param bar index of the bar in the layout
     * @param tensionN force along it, pull positive, never near 0
     */
    double of(int bar, double tensionN);
  }

  /**
   * The least figure over all bars and load cases, and where it is; empty where nothing loads them.
   */
  public Reading least(List<Bar> bars, Rating rating) {
    return worst(bars, rating, 1);
  }

  /** The greatest figure over all bars and load cases, and where it is. */
  public Reading greatest(List<Bar> bars, Rating rating) {
    return worst(bars, rating, -1);
  }

  private Reading worst(List<Bar> bars, Rating rating, int sign) {
    double worst = Double.POSITIVE_INFINITY;
    String where = "no load reaches the bars";
    for (int i = 0; i < tensionN.length; i++) {
      for (int k = 0; k < bars.size(); k++) {
        double force = tensionN[i][k];
        if (Math.abs(force) >= IDLE_N && sign * rating.of(k, force) < worst) {
          worst = sign * rating.of(k, force);
          where =
              bars.get(k).name() + (force < 0 ? " pushed, " : " pulled, ") + cases.get(i).name();
        }
      }
    }
    return Double.isInfinite(worst)
        ? new Reading.NotApplicable(where)
        : new Reading.Value(sign * worst, where);
  }

  private static LoadCase onThisTyre(LoadCase general, Traction traction) {
    if (traction.tyreGrip().isEmpty()) {
      return general;
    }
    return general.withFriction(traction.tyreGrip().getAsDouble());
  }

  private static LoadedVehicle vehicle(Chassis chassis, BodyRoll roll) {
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
        roll.rearStiffnessShare(),
        roll.rearTransferShare());
  }

  /** Where the engine is not known, torque enough to spin the tyres: their grip is the limit. */
  private static DriveTrain driveTrain(Chassis chassis) {
    Traction traction = chassis.traction();
    if (traction.isDriveKnown()) {
      return new DriveTrain(
          traction.engineTorqueNmm().getAsDouble(),
          traction.torqueMultiplication().getAsDouble(),
          DRIVE_EFFICIENCY,
          traction.finalDrive().getAsDouble());
    }
    double weightN = 9.81 * chassis.masses().totalKg();
    double spinsThemNmm = weightN * traction.tyreGrip().orElse(1) * chassis.tyre().loadedRadiusMm();
    return new DriveTrain(spinsThemNmm, 1, 1, 1);
  }

  /** What the heavier tyre carries beyond the mean (N): the cases share the weight evenly. */
  private static double unevenN(Chassis chassis) {
    Masses masses = chassis.masses();
    return (masses.rearLeftKg() - masses.rearRightKg()) / 2 * Gravity.M_PER_S2;
  }

  private static List<Load> loads(AppliedLoads applied, Chassis chassis) {
    List<Load> loads = new ArrayList<>(applied.forces().size() + 1);
    for (PointForce force : applied.forces()) {
      loads.add(
          Load.force(
              new Point3(force.xMm(), force.yMm(), force.zMm()),
              new Vector3(force.forceXN(), force.forceYN(), force.forceZN())));
    }
    double halfTrackMm = chassis.axle().trackMm() / 2;
    Vector3 uneven = new Vector3(0, 0, unevenN(chassis));
    loads.add(Load.force(new Point3(0, halfTrackMm, 0), uneven));
    loads.add(Load.force(new Point3(0, -halfTrackMm, 0), uneven.scaled(-1)));
    loads.add(
        Load.moment(new Vector3(applied.momentXNmm(), applied.momentYNmm(), applied.momentZNmm())));
    return loads;
  }
}
