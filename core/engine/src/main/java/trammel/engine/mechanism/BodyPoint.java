package trammel.engine.mechanism;

import java.util.Objects;
import trammel.engine.geometry.Point3;

/**
 * A point fixed to a body.
 *
 * @param body name of the body: {@link Mechanism#FRAME}, {@link Mechanism#AXLE} or a further body
 * @param atRide where it is at ride (mm, vehicle axes)
 */
public record BodyPoint(String body, Point3 atRide) {
  public BodyPoint {
    Objects.requireNonNull(body, "body of the point");
    Objects.requireNonNull(atRide, "place of the point");
  }

  /** The same point on the other side of the vehicle, on the body of the same name. */
  public BodyPoint mirrored() {
    return new BodyPoint(body, atRide.mirrored());
  }
}
