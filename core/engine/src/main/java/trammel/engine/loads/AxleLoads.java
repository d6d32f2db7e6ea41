package trammel.engine.loads;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.quantity.Gravity;

/**
 * Turns a load case into the forces on the rear axle of one vehicle. Axle, wheels and outboard
 * brakes are one body: road forces act where the tyres touch the road, so that the wind-up of the
 * housing under drive and braking needs no moment of its own; the driveshaft brings its torque as a
 * moment about the forward axis, against the turning direction of the usual engine (clockwise seen
 * from its front), which presses the left tyre down. The weight and inertia of the axle act at its
 * middle.
 *
 * <p>Load moves to the rear axle by W a h/L when accelerating; from the inside to the outside tyre
 * by the rear's share of W a h/t; and from the right to the left tyre by the part of the shaft's
 * torque that the front axle's roll stiffness holds. Source: Gillespie, Fundamentals of Vehicle
 * Dynamics (1992), ch. 1, 2 and 6, from memory.
 *
 * <p>Drive force and side force are shared by the tyres as their loads are (a locked differential,
 * the worst for the links); brake force is shared evenly as far as each tyre grips. Grip follows
 * the friction circle on the loads without the bump factor.
 */
public final class AxleLoads {
  /** What ends the drive force. */
  public enum DriveLimit {
    /** The case does not drive. */
    NONE,
    /** The engine gives no more. */
    TORQUE,
    /** The tyres hold no more. */
    GRIP
  }

  private final LoadedVehicle vehicle;

  /**
   * Loads of one vehicle.
   *
   * @param vehicle the vehicle
   */
  public AxleLoads(LoadedVehicle vehicle) {
    this.vehicle = vehicle;
  }

  /**
   * Forces on the axle.
   *
   * @param loadCase the case
   * @return the loads in vehicle axes
   */
  public AppliedLoads applied(LoadCase loadCase) {
    WeightAndSize size = vehicle.size();
    double driveN = driveForceN(loadCase);
    double rearN = rearLoadN(loadCase);
    double sideN = Math.copySign(sideForceN(loadCase), loadCase.corneringG());
    double toRightN = loadToRightN(loadCase);
    double leftN = 0.5 * rearN - toRightN;
    double rightN = 0.5 * rearN + toRightN;
    double leftShare = rearN > 0 ? leftN / rearN : 0.5;
    double rightShare = 1.0 - leftShare;
    double halfTrackMm = size.rearTrackMm() / 2.0;
    PointForce left =
        new PointForce(
            "left tyre",
            0,
            halfTrackMm,
            0,
            driveN * leftShare - tyreBrakeN(loadCase, leftN, sideN * leftShare),
            sideN * leftShare,
            leftN * loadCase.leftBumpFactor());
    PointForce right =
        new PointForce(
            "right tyre",
            0,
            -halfTrackMm,
            0,
            driveN * rightShare - tyreBrakeN(loadCase, rightN, sideN * rightShare),
            sideN * rightShare,
            rightN * loadCase.rightBumpFactor());
    double shaftNmm = shaftTorqueNmm(loadCase);
    List<PointForce> forces = new ArrayList<>(List.of(left, right, ownWeight(loadCase)));
    addBlow(forces, "left", 1, loadCase.leftBlow());
    addBlow(forces, "right", -1, loadCase.rightBlow());
    return new AppliedLoads(forces, -shaftNmm, 0, 0);
  }

  /** A wheel that rolls takes a push at its middle; a kerb pushes it where it stands. */
  private void addBlow(List<PointForce> forces, String side, int sign, WheelBlow blow) {
    WeightAndSize size = vehicle.size();
    double halfTrackMm = sign * size.rearTrackMm() / 2.0;
    if (blow.rearward() > 0) {
      double backN = blow.rearward() * size.rearWeightN() / 2;
      forces.add(
          new PointForce(
              "blow on the " + side + " wheel",
              0,
              halfTrackMm,
              vehicle.tyreRadiusMm(),
              -backN,
              0,
              0));
    }
    if (blow.kerb() > 0) {
      double tipsN = size.rearWeightN() * size.rearTrackMm() / (2 * size.centreOfGravityHeightMm());
      forces.add(
          new PointForce(
              "kerb at the " + side + " tyre",
              0,
              halfTrackMm,
              0,
              0,
              -sign * blow.kerb() * tipsN,
              0));
    }
  }

  /** Weight of the axle, and its inertia against being accelerated. */
  private PointForce ownWeight(LoadCase loadCase) {
    WeightAndSize size = vehicle.size();
    double weightN = size.rearUnsprungMassKg() * Gravity.M_PER_S2;
    double forwardG = driveForceN(loadCase) / size.totalWeightN() - loadCase.brakingG();
    return new PointForce(
        "weight and inertia of the axle",
        0,
        0,
        vehicle.tyreRadiusMm(),
        -weightN * forwardG,
        -weightN * loadCase.corneringG(),
        -weightN);
  }

  /**
   * Drive force of both tyres together: what the engine gives, or what the tyres hold, whichever is
   * less. As the force itself presses the axle down, the tyres hold μ W_r/(1 − μ h/L) on a straight
   * road, and never more than the friction of the whole weight.
   *
   * @param loadCase the case
   * @return force, N, 0 or more
   */
  public double driveForceN(LoadCase loadCase) {
    return Math.min(engineForceN(loadCase), gripForceN(loadCase));
  }

  /**
   * What ends the drive force.
   *
   * @param loadCase the case
   * @return torque, grip, or none when the case does not drive
   */
  public DriveLimit driveLimit(LoadCase loadCase) {
    double engineN = engineForceN(loadCase);
    if (engineN <= 0) {
      return DriveLimit.NONE;
    }
    return engineN <= gripForceN(loadCase) ? DriveLimit.TORQUE : DriveLimit.GRIP;
  }

  private double engineForceN(LoadCase loadCase) {
    DriveTrain train = vehicle.driveTrain();
    double wheelsNmm = loadCase.driveMultiplier() * train.shaftTorqueNmm() * train.axleRatio();
    return wheelsNmm / vehicle.tyreRadiusMm();
  }

  /** Larger root of (1 − m²)F² − 2 m μ W_r F + S² − (μ W_r)² = 0, m = μ h/L, S the side force. */
  private double gripForceN(LoadCase loadCase) {
    WeightAndSize size = vehicle.size();
    double mu = loadCase.friction();
    double transfer = mu * size.heightOverWheelbase();
    double heldN = mu * size.rearWeightN();
    double sideN = Math.min(size.rearWeightN() * Math.abs(loadCase.corneringG()), heldN);
    double wholeN = mu * size.totalWeightN();
    double mostN = Math.sqrt(Math.max(0, (wholeN - sideN) * (wholeN + sideN)));
    double leading = 1.0 - transfer * transfer;
    if (leading <= 0) {
      return mostN;
    }
    double root =
        Math.sqrt(
            transfer * transfer * heldN * heldN + leading * (heldN - sideN) * (heldN + sideN));
    return Math.min((transfer * heldN + root) / leading, mostN);
  }

  /**
   * Load on both tyres together before any bump, W_r + W a h/L, from nothing to the whole weight.
   *
   * @param loadCase the case
   * @return load, N
   */
  public double rearLoadN(LoadCase loadCase) {
    WeightAndSize size = vehicle.size();
    double forwardN = driveForceN(loadCase) - loadCase.brakingG() * size.totalWeightN();
    double loadN = size.rearWeightN() + forwardN * size.heightOverWheelbase();
    return Math.max(0.0, Math.min(loadN, size.totalWeightN()));
  }

  /**
   * Side force of both tyres together, without its direction. What driving adds to the load is left
   * to the drive force, as in {@link #gripForceN}.
   */
  private double sideForceN(LoadCase loadCase) {
    double askedN = vehicle.size().rearWeightN() * Math.abs(loadCase.corneringG());
    double loadN = Math.min(rearLoadN(loadCase), vehicle.size().rearWeightN());
    return Math.min(askedN, loadCase.friction() * loadN);
  }

  /** Load moved from the left to the right tyre, as far as there is any on the other side. */
  private double loadToRightN(LoadCase loadCase) {
    WeightAndSize size = vehicle.size();
    double bendNmm =
        vehicle.rearTransferShare()
            * size.totalWeightN()
            * loadCase.corneringG()
            * size.centreOfGravityHeightMm();
    double shaftNmm = shaftTorqueNmm(loadCase) * (1.0 - vehicle.rearRollShare());
    double halfN = 0.5 * rearLoadN(loadCase);
    double movedN = (bendNmm - shaftNmm) / size.rearTrackMm();
    return Math.max(-halfN, Math.min(movedN, halfN));
  }

  private double tyreBrakeN(LoadCase loadCase, double tyreLoadN, double tyreSideN) {
    double askedN =
        0.5 * vehicle.rearBrakeShare() * loadCase.brakingG() * vehicle.size().totalWeightN();
    double heldN = loadCase.friction() * tyreLoadN;
    double leftOverN2 = (heldN - Math.abs(tyreSideN)) * (heldN + Math.abs(tyreSideN));
    return Math.min(askedN, Math.sqrt(Math.max(0.0, leftOverN2)));
  }

  /**
   * Torque in the driveshaft that goes with the drive force.
   *
   * @param loadCase the case
   * @return torque, Nmm, 0 or more
   */
  public double shaftTorqueNmm(LoadCase loadCase) {
    return driveForceN(loadCase) * vehicle.tyreRadiusMm() / vehicle.driveTrain().axleRatio();
  }
}
