package trammel.engine.mechanism;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** What a further body turns on. It is exact: the body leaves it by nothing. */
public sealed interface Pivot {

  /** Name of the body that carries the pivot. */
  String on();

  /** Centre of the pivot at ride (mm). */
  Point3 point();

  /** How many turns it leaves free. */
  int turns();

  /**
   * A pin: one turn, right-handed about an axis that moves with the body that carries it.
   *
   * @param on name of the body that carries it
   * @param point a point of the axis at ride (mm)
   * @param axis direction of the axis at ride, a unit vector
   */
  record Pin(String on, Point3 point, Vector3 axis) implements Pivot {
    public Pin {
      Objects.requireNonNull(on, "body that carries the pivot");
      Objects.requireNonNull(point, "point of the pivot");
      Objects.requireNonNull(axis, "axis of the pivot");
    }

    @Override
    public int turns() {
      return 1;
    }
  }

  /**
   * A ball: turns every way.
   *
   * @param on name of the body that carries it
   * @param point its centre at ride (mm)
   */
  record Ball(String on, Point3 point) implements Pivot {
    public Ball {
      Objects.requireNonNull(on, "body that carries the pivot");
      Objects.requireNonNull(point, "point of the pivot");
    }

    @Override
    public int turns() {
      return 3;
    }
  }
}
