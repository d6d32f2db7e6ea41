package trammel.engine.motion;

import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * Where the axle stands against the body. A point {@code p} of the axle, given at ride, stands at
 * {@code C + R (p - C0)} with {@code C0 = (0, 0, loaded radius)}, {@code C = C0 + (forward,
 * lateral, heave)} and {@code R = Rz(yaw) Rx(roll) Ry(-pitch)}.
 *
 * @param heaveMm rise of the axle's middle, bump positive (mm)
 * @param rollRad elevation of the axle line from right to left wheel, left up positive (rad)
 * @param forwardMm shift of the axle's middle to the front (mm)
 * @param lateralMm shift of the axle's middle to the left (mm)
 * @param yawRad heading of the axle line, counter-clockwise from above positive (rad)
 * @param pitchNoseUpRad turn of the housing about its own line, nose up positive (rad)
 * @param loadedRadiusMm height of the axle's middle at ride (mm)
 * @param bodies where the bodies besides frame and axle stand; empty where there are none
 */
public record AxlePose(
    double heaveMm,
    double rollRad,
    double forwardMm,
    double lateralMm,
    double yawRad,
    double pitchNoseUpRad,
    double loadedRadiusMm,
    List<BodyPose> bodies) {

  /**
   * @throws IllegalArgumentException if a component is not a finite number
   */
  public AxlePose {
    bodies = List.copyOf(bodies);
    double sum =
        heaveMm + rollRad + forwardMm + lateralMm + yawRad + pitchNoseUpRad + loadedRadiusMm;
    if (!Double.isFinite(sum)) {
      throw new IllegalArgumentException(
          "The axle pose heave "
              + heaveMm
              + " mm, roll "
              + rollRad
              + " rad, forward "
              + forwardMm
              + " mm, lateral "
              + lateralMm
              + " mm, yaw "
              + yawRad
              + " rad, pitch "
              + pitchNoseUpRad
              + " rad, radius "
              + loadedRadiusMm
              + " mm has a part that is no number; give finite values.");
    }
  }

  /** An axle on plain bars: there are no further bodies. */
  public AxlePose(
      double heaveMm,
      double rollRad,
      double forwardMm,
      double lateralMm,
      double yawRad,
      double pitchNoseUpRad,
      double loadedRadiusMm) {
    this(heaveMm, rollRad, forwardMm, lateralMm, yawRad, pitchNoseUpRad, loadedRadiusMm, List.of());
  }

  /** The same with further bodies. */
  public AxlePose withBodies(List<BodyPose> further) {
    return new AxlePose(
        heaveMm, rollRad, forwardMm, lateralMm, yawRad, pitchNoseUpRad, loadedRadiusMm, further);
  }

  /** The axle at ride height. */
  public static AxlePose atRide(double loadedRadiusMm) {
    return new AxlePose(0, 0, 0, 0, 0, 0, loadedRadiusMm);
  }

  /** Middle of the axle line. */
  public Point3 centre() {
    return new Point3(forwardMm, lateralMm, loadedRadiusMm + heaveMm);
  }

  /** Shift of the axle's middle from ride (mm). */
  public Vector3 centreDisplacementMm() {
    return new Vector3(forwardMm, lateralMm, heaveMm);
  }

  /** Rotation and shift worked out once, for moving many points. */
  public Placement placement() {
    return new Placement(this);
  }

  /** Where a point of the axle, given at ride, stands now. */
  public Point3 move(Point3 axlePointAtRide) {
    return placement().move(axlePointAtRide);
  }

  /** How a direction that is fixed in the axle, given at ride, points now. */
  public Vector3 turn(Vector3 axleDirectionAtRide) {
    return placement().turn(axleDirectionAtRide);
  }

  /** Unit vector from the right to the left wheel centre. */
  public Vector3 axleLine() {
    double cosRoll = Math.cos(rollRad);
    return new Vector3(-Math.sin(yawRad) * cosRoll, Math.cos(yawRad) * cosRoll, Math.sin(rollRad));
  }

  /** Centre of the left wheel. */
  public Point3 wheelLeft(double trackMm) {
    return centre().plus(axleLine().scaled(trackMm / 2));
  }

  /** Centre of the right wheel. */
  public Point3 wheelRight(double trackMm) {
    return centre().plus(axleLine().scaled(-trackMm / 2));
  }

  /**
   * Pinion angle: side-view elevation of the pinion's axis, nose up positive (rad).
   *
   * @param pinionAxisAtRide axis of the pinion at ride, pointing forward
   */
  public double pinionElevationRad(Vector3 pinionAxisAtRide) {
    return turn(pinionAxisAtRide).sideViewRad();
  }
}
