package trammel.engine.layout;

import java.util.Objects;
import trammel.engine.clearance.Shape;
import trammel.engine.quantity.Given;

/**
 * A part of the vehicle that stands still and could be in the way.
 *
 * @param name what the fabricator calls it
 * @param kind what it is
 * @param shape where it is at ride (mm)
 */
public record Obstacle(String name, ObstacleKind kind, Shape shape) {
  public Obstacle {
    Given.text("obstacle name", name);
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(shape, "shape");
  }
}
