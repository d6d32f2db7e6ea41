package trammel.engine.motion;

import java.util.Objects;
import trammel.engine.geometry.Vector3;

/**
 * Where a body besides frame and axle stands: a point {@code p} of it, given at ride, stands at
 * {@code shift + px x + py y + pz z}.
 *
 * @param body name of the body
 * @param turnRad its turn coordinates since ride (rad); on a pin X alone, the turn about the pin
 * @param x where the vehicle's X axis, turned with the body, points now: a unit vector
 * @param y the same of the Y axis
 * @param z the same of the Z axis
 * @param shiftMm where the point that was at the origin at ride stands now (mm)
 */
public record BodyPose(
    String body, Vector3 turnRad, Vector3 x, Vector3 y, Vector3 z, Vector3 shiftMm) {
  /** Name of the body that is held still. */
  public static final String FRAME = "frame";

  /** Name of the body that the wheels are on. */
  public static final String AXLE = "axle";

  public BodyPose {
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(turnRad, "turnRad");
    Objects.requireNonNull(x, "x");
    Objects.requireNonNull(y, "y");
    Objects.requireNonNull(z, "z");
    Objects.requireNonNull(shiftMm, "shiftMm");
  }

  /** A body as it stands at ride. */
  public static BodyPose atRide(String body) {
    Vector3 none = new Vector3(0, 0, 0);
    return new BodyPose(
        body, none, new Vector3(1, 0, 0), new Vector3(0, 1, 0), new Vector3(0, 0, 1), none);
  }
}
