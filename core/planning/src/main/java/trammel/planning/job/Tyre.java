package trammel.planning.job;

import java.util.Optional;
import trammel.reading.quantity.Measurement;

/**
 * Rear tyre and wheel.
 *
 * @param size the code on the sidewall, if it was given
 * @param diameterMm unloaded diameter, mm: from the code or measured
 * @param widthMm section width, mm: from the code or measured
 * @param rimWidthMm width of the rim between the beads, mm, if it was given
 * @param wheelOffsetMm mounting face outboard of the rim's middle, mm; negative if inboard
 * @param loadedRadius wheel centre above the ground at ride weight
 * @param loadIndex load index on the sidewall, if it was given
 * @param passengerOnTruck a passenger tyre on a truck, whose load counts divided by 1.10
 */
public record Tyre(
    Optional<String> size,
    double diameterMm,
    double widthMm,
    Optional<Double> rimWidthMm,
    double wheelOffsetMm,
    Measurement loadedRadius,
    Optional<Integer> loadIndex,
    boolean passengerOnTruck) {
  /** Refuses sizes that are not more than zero. */
  public Tyre {
    if (!(diameterMm > 0 && widthMm > 0)) {
      throw new IllegalArgumentException(
          "The tyre's diameter ("
              + diameterMm
              + " mm) and width ("
              + widthMm
              + " mm) must be more than 0.");
    }
  }
}
