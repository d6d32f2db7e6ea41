package trammel.engine.mechanism;

import java.util.Objects;

/**
 * A body besides frame and axle, such as a rocker or an arm. It has no mass.
 *
 * @param name what the shop calls it; unlike every other body
 * @param pivot what it turns on
 */
public record FurtherBody(String name, Pivot pivot) {
  public FurtherBody {
    Objects.requireNonNull(name, "name of the body");
    Objects.requireNonNull(pivot, "pivot of the body");
  }
}
