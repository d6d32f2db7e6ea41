package trammel.engine.layout;

import java.util.OptionalDouble;
import trammel.engine.quantity.Given;

/**
 * What the scales say, and how high the mass lies.
 *
 * @param frontAxleKg both front wheels together (kg), above 0
 * @param rearLeftKg the left rear wheel (kg), above 0
 * @param rearRightKg the right rear wheel (kg), above 0
 * @param rearUnsprungKg axle, wheels and brakes at the rear (kg), above 0 and below the rear axle's
 * @param centreOfGravityHeightMm centre of gravity of the vehicle above ground (mm), above 0
 * @param frontRollNmmPerRad roll stiffness of the front axle with its anti-roll bar (Nmm/rad),
 *     above 0, where it was measured
 * @param frontWheelNPerMm rate at one front wheel, springs alone (N/mm), above 0, where it was
 *     measured
 * @param payload what is carried at most beyond what was weighed
 */
public record Masses(
    double frontAxleKg,
    double rearLeftKg,
    double rearRightKg,
    double rearUnsprungKg,
    double centreOfGravityHeightMm,
    OptionalDouble frontRollNmmPerRad,
    OptionalDouble frontWheelNPerMm,
    Payload payload) {
  /** Weights of a vehicle whose front roll stiffness is not measured and that carries no more. */
  public Masses(
      double frontAxleKg,
      double rearLeftKg,
      double rearRightKg,
      double rearUnsprungKg,
      double centreOfGravityHeightMm) {
    this(
        frontAxleKg,
        rearLeftKg,
        rearRightKg,
        rearUnsprungKg,
        centreOfGravityHeightMm,
        OptionalDouble.empty());
  }

  /** Weights of a vehicle that carries no more. */
  public Masses(
      double frontAxleKg,
      double rearLeftKg,
      double rearRightKg,
      double rearUnsprungKg,
      double centreOfGravityHeightMm,
      OptionalDouble frontRollNmmPerRad) {
    this(
        frontAxleKg,
        rearLeftKg,
        rearRightKg,
        rearUnsprungKg,
        centreOfGravityHeightMm,
        frontRollNmmPerRad,
        Payload.NONE);
  }

  /** Weights of a vehicle whose rate at the front wheels is not measured. */
  public Masses(
      double frontAxleKg,
      double rearLeftKg,
      double rearRightKg,
      double rearUnsprungKg,
      double centreOfGravityHeightMm,
      OptionalDouble frontRollNmmPerRad,
      Payload payload) {
    this(
        frontAxleKg,
        rearLeftKg,
        rearRightKg,
        rearUnsprungKg,
        centreOfGravityHeightMm,
        frontRollNmmPerRad,
        OptionalDouble.empty(),
        payload);
  }

  public Masses {
    if (frontRollNmmPerRad.isPresent()) {
      Given.positive("front roll stiffness (Nmm/rad)", frontRollNmmPerRad.getAsDouble());
    }
    if (frontWheelNPerMm.isPresent()) {
      Given.positive("rate at a front wheel (N/mm)", frontWheelNPerMm.getAsDouble());
    }
    Given.positive("front axle mass (kg)", frontAxleKg);
    Given.positive("left rear wheel mass (kg)", rearLeftKg);
    Given.positive("right rear wheel mass (kg)", rearRightKg);
    Given.positive("rear unsprung mass (kg)", rearUnsprungKg);
    Given.positive("centre-of-gravity height (mm)", centreOfGravityHeightMm);
    if (rearUnsprungKg >= rearLeftKg + rearRightKg) {
      throw new IllegalArgumentException(
          "rear unsprung mass is "
              + rearUnsprungKg
              + " kg; it must be below what the rear wheels weigh together, "
              + (rearLeftKg + rearRightKg)
              + " kg. Weigh the bare axle with its wheels and brakes.");
    }
  }

  /** The same vehicle with what it carries on the scales, evenly on both sides. */
  public Masses loaded() {
    return new Masses(
        frontAxleKg + payload.frontKg(),
        rearLeftKg + payload.rearKg() / 2,
        rearRightKg + payload.rearKg() / 2,
        rearUnsprungKg,
        centreOfGravityHeightMm,
        frontRollNmmPerRad,
        frontWheelNPerMm,
        Payload.NONE);
  }

  /** Both rear wheels together (kg). */
  public double rearAxleKg() {
    return rearLeftKg + rearRightKg;
  }

  /** The whole vehicle (kg). */
  public double totalKg() {
    return frontAxleKg + rearAxleKg();
  }

  /** Mass that one rear spring carries on average (kg). */
  public double sprungPerRearCornerKg() {
    return (rearAxleKg() - rearUnsprungKg) / 2;
  }
}
