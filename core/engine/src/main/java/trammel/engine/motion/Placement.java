package trammel.engine.motion;

import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * The rotation and shift of an axle pose, worked out once for moving many points; it also has those
 * of the frame, which stays, and of any further body of the pose.
 */
public final class Placement {

  private static final Placement STILL = new Placement(BodyPose.atRide(BodyPose.FRAME));

  private final List<BodyPose> bodies;
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
    bodies = pose.bodies();
  }

  private Placement(BodyPose body) {
    xx = body.x().x();
    yx = body.x().y();
    zx = body.x().z();
    xy = body.y().x();
    yy = body.y().y();
    zy = body.y().z();
    xz = body.z().x();
    yz = body.z().y();
    zz = body.z().z();
    centreXMm = body.shiftMm().x();
    centreYMm = body.shiftMm().y();
    centreZMm = body.shiftMm().z();
    loadedRadiusMm = 0;
    bodies = List.of();
  }

  /**
   * The rotation and shift of any body.
   *
   * @param body {@link BodyPose#FRAME}, {@link BodyPose#AXLE} or a further body of the pose
   * @throws IllegalArgumentException if the pose has no such body
   */
  public Placement of(String body) {
    if (body.equals(BodyPose.AXLE)) {
      return this;
    }
    if (body.equals(BodyPose.FRAME)) {
      return STILL;
    }
    for (BodyPose further : bodies) {
      if (further.body().equals(body)) {
        return new Placement(further);
      }
    }
    throw new IllegalArgumentException(
        "The pose has no body '" + body + "'; name the frame, the axle or a body of the linkage.");
  }

  /** Where a point of the body, given at ride, stands now. */
  public Point3 move(Point3 pointAtRide) {
    double sx = pointAtRide.xMm();
    double sy = pointAtRide.yMm();
    double sz = pointAtRide.zMm() - loadedRadiusMm;
    return new Point3(
        centreXMm + xx * sx + xy * sy + xz * sz,
        centreYMm + yx * sx + yy * sy + yz * sz,
        centreZMm + zx * sx + zy * sy + zz * sz);
  }

  /** How a direction that is fixed in the body, given at ride, points now. */
  public Vector3 turn(Vector3 directionAtRide) {
    double sx = directionAtRide.x();
    double sy = directionAtRide.y();
    double sz = directionAtRide.z();
    return new Vector3(
        xx * sx + xy * sy + xz * sz, yx * sx + yy * sy + yz * sz, zx * sx + zy * sy + zz * sz);
  }

  /** How a direction of the frame looks from the body: the inverse of {@link #turn}. */
  public Vector3 turnBack(Vector3 direction) {
    double bx = direction.x();
    double by = direction.y();
    double bz = direction.z();
    return new Vector3(
        xx * bx + yx * by + zx * bz, xy * bx + yy * by + zy * bz, xz * bx + yz * by + zz * bz);
  }
}
