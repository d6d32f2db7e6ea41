package trammel.engine.layout;

import java.util.Objects;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.quantity.Given;

/**
 * Transmission output, driveshaft and pinion at ride.
 *
 * @param pinionJoint centre of the universal joint on the pinion (mm)
 * @param pinionAxis direction of the pinion's axis, forward
 * @param transmissionJoint centre of the universal joint at the transmission (mm)
 * @param transmissionAxis direction of the transmission output's axis, forward
 * @param shaftDiameterMm outside diameter of the shaft tube (mm), above 0, if it is known
 * @param shaftWallMm wall of the shaft tube (mm), above 0, if it is known
 * @param slipEngagementMm length of spline engaged at ride (mm), if it is known
 * @param slipRoomMm how far the slip yoke can still go in at ride (mm), if it is known
 */
public record Driveline(
    Point3 pinionJoint,
    Vector3 pinionAxis,
    Point3 transmissionJoint,
    Vector3 transmissionAxis,
    OptionalDouble shaftDiameterMm,
    OptionalDouble shaftWallMm,
    OptionalDouble slipEngagementMm,
    OptionalDouble slipRoomMm) {
  public Driveline {
    Objects.requireNonNull(pinionJoint, "pinionJoint");
    pinionAxis = pinionAxis.normalized();
    Objects.requireNonNull(transmissionJoint, "transmissionJoint");
    transmissionAxis = transmissionAxis.normalized();
    if (shaftDiameterMm.isPresent()) {
      Given.positive("shaft tube diameter (mm)", shaftDiameterMm.getAsDouble());
    }
    if (shaftWallMm.isPresent()) {
      Given.positive("shaft tube wall (mm)", shaftWallMm.getAsDouble());
    }
    if (slipEngagementMm.isPresent()) {
      Given.notNegative("slip engagement (mm)", slipEngagementMm.getAsDouble());
    }
    if (slipRoomMm.isPresent()) {
      Given.notNegative("slip room (mm)", slipRoomMm.getAsDouble());
    }
    if (!(transmissionJoint.xMm() > pinionJoint.xMm())) {
      throw new IllegalArgumentException(
          "the transmission's joint is "
              + transmissionJoint.xMm()
              + " mm ahead of the axle and the pinion's joint "
              + pinionJoint.xMm()
              + " mm; the transmission must be ahead. Check both forward measurements.");
    }
  }

  /** Side-view elevation of the pinion's axis at ride (rad), nose up positive. */
  public double pinionAngleRad() {
    return pinionAxis.sideViewRad();
  }

  /** Side-view elevation of the transmission output's axis (rad), higher at the front positive. */
  public double transmissionAngleRad() {
    return transmissionAxis.sideViewRad();
  }

  /**
   * This driveline with the pinion turned about the axle's line.
   *
   * @param axleCentre centre of the axle at ride (mm)
   * @param noseUpRad how far the nose comes up (rad)
   */
  public Driveline withPinionTurned(Point3 axleCentre, double noseUpRad) {
    return new Driveline(
        turn(pinionJoint, axleCentre, noseUpRad),
        turn(pinionAxis, noseUpRad),
        transmissionJoint,
        transmissionAxis,
        shaftDiameterMm,
        shaftWallMm,
        slipEngagementMm,
        slipRoomMm);
  }

  /**
   * This driveline with the transmission shimmed so that its output's axis turns in side view.
   *
   * @param frontUpRad how far the axis rises toward the front (rad)
   */
  public Driveline withTransmissionTilted(double frontUpRad) {
    return new Driveline(
        pinionJoint,
        pinionAxis,
        transmissionJoint,
        turn(transmissionAxis, frontUpRad),
        shaftDiameterMm,
        shaftWallMm,
        slipEngagementMm,
        slipRoomMm);
  }

  /**
   * This driveline with a shaft of another length: the slip yoke sits as much deeper or farther
   * out.
   *
   * @param longerMm how much longer (mm), negative for shorter
   */
  public Driveline withShaftLengthened(double longerMm) {
    return new Driveline(
        pinionJoint,
        pinionAxis,
        transmissionJoint,
        transmissionAxis,
        shaftDiameterMm,
        shaftWallMm,
        moved(slipEngagementMm, longerMm),
        moved(slipRoomMm, -longerMm));
  }

  /**
   * This driveline with a shaft of another tube.
   *
   * @param diameterMm outside diameter (mm), above 0
   * @param wallMm wall (mm), above 0
   */
  public Driveline withShaftTube(double diameterMm, double wallMm) {
    return new Driveline(
        pinionJoint,
        pinionAxis,
        transmissionJoint,
        transmissionAxis,
        OptionalDouble.of(diameterMm),
        OptionalDouble.of(wallMm),
        slipEngagementMm,
        slipRoomMm);
  }

  private static OptionalDouble moved(OptionalDouble lengthMm, double byMm) {
    return lengthMm.isPresent()
        ? OptionalDouble.of(lengthMm.getAsDouble() + byMm)
        : OptionalDouble.empty();
  }

  private static Point3 turn(Point3 point, Point3 about, double noseUpRad) {
    return about.plus(turn(about.to(point), noseUpRad));
  }

  private static Vector3 turn(Vector3 vector, double noseUpRad) {
    double cos = Math.cos(noseUpRad);
    double sin = Math.sin(noseUpRad);
    return new Vector3(
        vector.x() * cos - vector.z() * sin, vector.y(), vector.x() * sin + vector.z() * cos);
  }
}
