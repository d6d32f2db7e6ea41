package trammel.engine.motion;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** The rotation and shift of an axle pose, worked out once for moving many points. */
public final class Placement {

  private final double xx;
  private final double xy;
  private final double xz;
  private final double yx;
  private final double yy;
  private final double yz;
  private final double zx;
  private final double zy;
  private final double zz;
  private final double centreXMm;
  private final double centreYMm;
  private final double centreZMm;
  private final double loadedRadiusMm;

  Placement(AxlePose pose) {
    double sinYaw = Math.sin(pose.yawRad());
    double cosYaw = Math.cos(pose.yawRad());
    double sinRoll = Math.sin(pose.rollRad());
    double cosRoll = Math.cos(pose.rollRad());
    double sinPitch = Math.sin(pose.pitchNoseUpRad());
    double cosPitch = Math.cos(pose.pitchNoseUpRad());
    // Columns of Rz Rx are (cos, sin, 0), the axle line, and the normal of both; pitch mixes the
    // first and the third.
    double normalX = sinYaw * sinRoll;
    double normalY = -cosYaw * sinRoll;
    xx = cosPitch * cosYaw + sinPitch * normalX;
    yx = cosPitch * sinYaw + sinPitch * normalY;
    zx = sinPitch * cosRoll;
    xy = -sinYaw * cosRoll;
    yy = cosYaw * cosRoll;
    zy = sinRoll;
    xz = cosPitch * normalX - sinPitch * cosYaw;
    yz = cosPitch * normalY - sinPitch * sinYaw;
    zz = cosPitch * cosRoll;
    centreXMm = pose.forwardMm();
    centreYMm = pose.lateralMm();
    centreZMm = pose.loadedRadiusMm() + pose.heaveMm();
    loadedRadiusMm = pose.loadedRadiusMm();
  }

  /** Where a point of the axle, given at ride, stands now. */
  public Point3 move(Point3 axlePointAtRide) {
    double sx = axlePointAtRide.xMm();
    double sy = axlePointAtRide.yMm();
    double sz = axlePointAtRide.zMm() - loadedRadiusMm;
    return new Point3(
        centreXMm + xx * sx + xy * sy + xz * sz,
        centreYMm + yx * sx + yy * sy + yz * sz,
        centreZMm + zx * sx + zy * sy + zz * sz);
  }

  /** How a direction that is fixed in the axle, given at ride, points now. */
  public Vector3 turn(Vector3 axleDirectionAtRide) {
    double sx = axleDirectionAtRide.x();
    double sy = axleDirectionAtRide.y();
    double sz = axleDirectionAtRide.z();
    return new Vector3(
        xx * sx + xy * sy + xz * sz, yx * sx + yy * sy + yz * sz, zx * sx + zy * sy + zz * sz);
  }

  /** How a direction of the body looks from the axle: the inverse of {@link #turn}. */
  public Vector3 turnBack(Vector3 bodyDirection) {
    double bx = bodyDirection.x();
    double by = bodyDirection.y();
    double bz = bodyDirection.z();
    return new Vector3(
        xx * bx + yx * by + zx * bz, xy * bx + yy * by + zy * bz, xz * bx + yz * by + zz * bz);
  }
}
