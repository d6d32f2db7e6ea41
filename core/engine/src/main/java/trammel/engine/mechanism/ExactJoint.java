package trammel.engine.mechanism;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** A joint between two bodies that gives by nothing. */
public sealed interface ExactJoint {

  /** What the shop calls it; unlike every other joint. */
  String name();

  /** How many equations it holds the bodies by. */
  int equations();

  /**
   * A point of one body that keeps to a straight line of another. The travel along the line is not
   * limited.
   *
   * @param name what the shop calls it
   * @param point the point that slides
   * @param line a point of the line, on the body that carries it
   * @param direction direction of the line at ride, a unit vector; travel this way is positive
   */
  record Slide(String name, BodyPoint point, BodyPoint line, Vector3 direction)
      implements ExactJoint {
    public Slide {
      Objects.requireNonNull(name, "name of the slide");
      Objects.requireNonNull(point, "point of the slide");
      Objects.requireNonNull(line, "line of the slide");
      Objects.requireNonNull(direction, "direction of the slide");
    }

    @Override
    public int equations() {
      return 2;
    }
  }

  /**
   * A point that two bodies have in common.
   *
   * @param name what the shop calls it
   * @param first one body
   * @param second the other body
   * @param point the point at ride (mm)
   */
  record Ball(String name, String first, String second, Point3 point) implements ExactJoint {
    public Ball {
      Objects.requireNonNull(name, "name of the ball joint");
      Objects.requireNonNull(first, "first body of the ball joint");
      Objects.requireNonNull(second, "second body of the ball joint");
      Objects.requireNonNull(point, "point of the ball joint");
    }

    @Override
    public int equations() {
      return 3;
    }
  }
}
