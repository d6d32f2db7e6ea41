package trammel.engine.layout;

import java.util.List;
import java.util.Objects;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Given;

/**
 * The vehicle at ride height before any bar is drawn: all that the measurements say, in vehicle
 * axes.
 *
 * @param wheelbaseLeftMm wheelbase on the left (mm), above 0
 * @param wheelbaseRightMm wheelbase on the right (mm), above 0
 * @param masses what the scales say
 * @param traction what can push the vehicle
 * @param tyre the rear tyre
 * @param axle the rigid axle
 * @param rails the frame rails
 * @param driveline transmission, shaft and pinion
 * @param obstacles what could be in the way
 * @param travel how far the axle is meant to move
 */
public record Chassis(
    double wheelbaseLeftMm,
    double wheelbaseRightMm,
    Masses masses,
    Traction traction,
    Tyre tyre,
    AxleHousing axle,
    Rails rails,
    Driveline driveline,
    List<Obstacle> obstacles,
    Travel travel) {
  public Chassis {
    Given.positive("left wheelbase (mm)", wheelbaseLeftMm);
    Given.positive("right wheelbase (mm)", wheelbaseRightMm);
    Objects.requireNonNull(masses, "masses");
    Objects.requireNonNull(traction, "traction");
    Objects.requireNonNull(tyre, "tyre");
    Objects.requireNonNull(axle, "axle");
    Objects.requireNonNull(rails, "rails");
    Objects.requireNonNull(driveline, "driveline");
    Objects.requireNonNull(travel, "travel");
    obstacles = List.copyOf(obstacles);
  }

  /** Mean of the left and right wheelbase (mm). */
  public double wheelbaseMm() {
    return (wheelbaseLeftMm + wheelbaseRightMm) / 2;
  }

  /** Centre of the axle at ride (mm). */
  public Point3 axleCentre() {
    return new Point3(0, 0, tyre.loadedRadiusMm());
  }

  /** A rear tyre at ride: as wide as its section and as round as without load. */
  public Cylinder tyreShape(boolean left) {
    double middleMm = (left ? 1 : -1) * axle.trackMm() / 2;
    double halfMm = tyre.widthMm() / 2;
    double upMm = axleCentre().zMm();
    return new Cylinder(
        new Point3(0, middleMm - halfMm, upMm),
        new Point3(0, middleMm + halfMm, upMm),
        tyre.freeRadiusMm());
  }

  /** The axle's centre housing at ride, between where brackets may stand on either side. */
  public Cylinder housingShape() {
    double halfMm = axle.innerLimitMm();
    double upMm = axleCentre().zMm();
    return new Cylinder(
        new Point3(0, halfMm, upMm), new Point3(0, -halfMm, upMm), axle.takenHousingRadiusMm());
  }

  /** This chassis with other rails. */
  public Chassis withRails(Rails newRails) {
    return new Chassis(
        wheelbaseLeftMm,
        wheelbaseRightMm,
        masses,
        traction,
        tyre,
        axle,
        newRails,
        driveline,
        obstacles,
        travel);
  }

  /** This chassis with another driveline. */
  public Chassis withDriveline(Driveline newDriveline) {
    return new Chassis(
        wheelbaseLeftMm,
        wheelbaseRightMm,
        masses,
        traction,
        tyre,
        axle,
        rails,
        newDriveline,
        obstacles,
        travel);
  }

  /** This chassis with other travel. */
  public Chassis withTravel(Travel newTravel) {
    return new Chassis(
        wheelbaseLeftMm,
        wheelbaseRightMm,
        masses,
        traction,
        tyre,
        axle,
        rails,
        driveline,
        obstacles,
        newTravel);
  }

  /** This chassis with other wheelbases (mm). */
  public Chassis withWheelbases(double leftMm, double rightMm) {
    return new Chassis(
        leftMm, rightMm, masses, traction, tyre, axle, rails, driveline, obstacles, travel);
  }

  /** This chassis with other weights. */
  public Chassis withMasses(Masses newMasses) {
    return new Chassis(
        wheelbaseLeftMm,
        wheelbaseRightMm,
        newMasses,
        traction,
        tyre,
        axle,
        rails,
        driveline,
        obstacles,
        travel);
  }

  /** This chassis on another tyre. */
  public Chassis withTyre(Tyre newTyre) {
    return new Chassis(
        wheelbaseLeftMm,
        wheelbaseRightMm,
        masses,
        traction,
        newTyre,
        axle,
        rails,
        driveline,
        obstacles,
        travel);
  }

  /** This chassis with other obstacles. */
  public Chassis withObstacles(List<Obstacle> newObstacles) {
    return new Chassis(
        wheelbaseLeftMm,
        wheelbaseRightMm,
        masses,
        traction,
        tyre,
        axle,
        rails,
        driveline,
        newObstacles,
        travel);
  }
}
