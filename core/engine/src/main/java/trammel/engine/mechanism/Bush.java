package trammel.engine.mechanism;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * A bush that holds a point of one body elastically to a point of another. Its deflection is taken
 * in the axes X, Y and Z that turn with the body it sits on; it does not resist turning.
 *
 * @param name what the shop calls it; unlike every other bush
 * @param body the body that is held
 * @param on the body that the bush sits on
 * @param point its centre at ride (mm)
 * @param stiffnessNPerMm stiffness along X, Y and Z (N/mm, each above 0)
 */
public record Bush(String name, String body, String on, Point3 point, Vector3 stiffnessNPerMm) {
  /** Equations that a bush adds. */
  static final int EQUATIONS = 3;

  public Bush {
    Objects.requireNonNull(name, "name of the bush");
    Objects.requireNonNull(body, "body that the bush holds");
    Objects.requireNonNull(on, "body that the bush sits on");
    Objects.requireNonNull(point, "point of the bush");
    Objects.requireNonNull(stiffnessNPerMm, "stiffness of the bush");
  }
}
