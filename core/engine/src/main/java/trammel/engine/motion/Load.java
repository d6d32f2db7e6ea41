package trammel.engine.motion;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * Force and moment on the axle, in vehicle axes.
 *
 * @param at where the force acts, as the axle stands at the pose in question (mm)
 * @param forceN force on the axle (N)
 * @param momentNmm free moment on the axle (Nmm)
 */
public record Load(Point3 at, Vector3 forceN, Vector3 momentNmm) {

  /** Refuses missing parts. */
  public Load {
    Objects.requireNonNull(at, "point of the load");
    Objects.requireNonNull(forceN, "force of the load");
    Objects.requireNonNull(momentNmm, "moment of the load");
  }

  /** A force without a moment. */
  public static Load force(Point3 at, Vector3 forceN) {
    return new Load(at, forceN, new Vector3(0, 0, 0));
  }

  /** A moment without a force. */
  public static Load moment(Vector3 momentNmm) {
    return new Load(new Point3(0, 0, 0), new Vector3(0, 0, 0), momentNmm);
  }

  /** Moment of force and free moment together about a point (Nmm). */
  public Vector3 momentAbout(Point3 point) {
    return point.to(at).cross(forceN).plus(momentNmm);
  }
}
