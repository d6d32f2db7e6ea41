package trammel.planning.job;

import trammel.reading.quantity.Measurement;

/**
 * Wheelbase on each side, axle mark on the rail to front wheel centre, level.
 *
 * @param left left side
 * @param right right side
 */
public record Wheelbase(Measurement left, Measurement right) {
  /** Mean of both sides, mm. */
  public double meanMm() {
    return (left.meanMm() + right.meanMm()) / 2;
  }
}
