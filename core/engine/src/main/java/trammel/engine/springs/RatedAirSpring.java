package trammel.engine.springs;

import java.util.Objects;
import trammel.engine.quantity.Given;

/**
 * An air spring with the highest pressure that it may be used at.
 *
 * @param size effective area and volume by height
 * @param highestGaugeMPa highest working pressure above the atmosphere, MPa, above 0 to 10
 */
public record RatedAirSpring(AirSpringSize size, double highestGaugeMPa) {
  /**
   * Checks the rating.
   *
   * @throws IllegalArgumentException if the pressure is outside its range
   */
  public RatedAirSpring {
    Objects.requireNonNull(size, "size");
    Given.within(
        "highest pressure of air spring " + size.name(),
        highestGaugeMPa,
        1e-3,
        10,
        "MPa",
        "Read it from the maker's data.");
  }
}
