package trammel.engine.springs;

import trammel.engine.quantity.Given;

/**
 * An air spring at one height, as its maker's chart or test gives it.
 *
 * @param heightMm height between the mounting faces, mm, 1 to 2000
 * @param effectiveAreaMm2 load over gauge pressure at this height, mm², 1 to 10⁷
 * @param volumeMm3 inner volume at this height, mm³, 1 to 10⁹
 */
public record AirSpringPoint(double heightMm, double effectiveAreaMm2, double volumeMm3) {
  /**
   * Checks the point.
   *
   * @throws IllegalArgumentException if a value is outside its range
   */
  public AirSpringPoint {
    Given.within("air spring height", heightMm, 1, 2000, "mm", "Measure between the faces.");
    Given.within(
        "effective area",
        effectiveAreaMm2,
        1,
        1e7,
        "mm²",
        "Divide the chart's load by its pressure.");
    Given.within("air spring volume", volumeMm3, 1, 1e9, "mm³", "Read it from the maker's chart.");
  }
}
