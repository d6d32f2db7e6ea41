package trammel.engine.layout;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.mechanism.BodyPoint;
import trammel.engine.mechanism.ExactJoint;
import trammel.engine.quantity.Given;

/**
 * A point of one body that keeps to a straight line of another, such as the front eye of a torque
 * arm in its guide.
 *
 * @param name what the shop calls it
 * @param body the body whose point slides
 * @param point the point at ride, which is on the line (mm)
 * @param on the body that carries the line
 * @param direction direction of the line at ride, a unit vector; travel this way is positive
 */
public record Slider(String name, String body, Point3 point, String on, Vector3 direction) {
  public Slider {
    Given.text("name of a slider", name);
    Given.text("body of a slider", body);
    Objects.requireNonNull(point, "point");
    Given.text("body that carries a slider's line", on);
    Objects.requireNonNull(direction, "direction");
  }

  /** The same as the engine sees it. */
  public ExactJoint.Slide slide() {
    return new ExactJoint.Slide(
        name, new BodyPoint(body, point), new BodyPoint(on, point), direction);
  }
}
