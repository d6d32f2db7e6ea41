package trammel.assembly;

import java.util.Objects;
import trammel.engine.quantity.Given;

/**
 * Where one of several equal parts stands and what carries it.
 *
 * @param mark what tells it from its equals, such as {@code outer}; empty where it is the only one
 * @param carrier the body that moves it
 * @param place its place at ride
 */
public record Held(String mark, String carrier, Place place) {
  public Held {
    Objects.requireNonNull(mark, "mark");
    Given.text("carrier of a part", carrier, "Say which body moves it.");
    Objects.requireNonNull(place, "place");
  }

  /** The only one of its name. */
  public Held(String carrier, Place place) {
    this("", carrier, place);
  }

  /** The id of a part of a name that stands here. */
  public String id(String name) {
    return id(name, mark);
  }

  /** The id of the part of a name with a mark. */
  public static String id(String name, String mark) {
    return mark.isEmpty() ? name : name + ", " + mark;
  }
}
