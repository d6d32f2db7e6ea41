package trammel.reading.quantity;

import static java.util.Objects.requireNonNull;

/**
 * An angle with what it was read against.
 *
 * @param reading the angle, one or several readings
 * @param from the datum of all its readings
 */
public record MeasuredAngle(Measurement reading, Datum from) {
  /** Refuses a measurement that is not an angle. */
  public MeasuredAngle {
    requireNonNull(from, "from");
    if (reading.kind() != QuantityKind.ANGLE) {
      throw new IllegalArgumentException(
          "The reading is " + reading.kind().noun() + "; allowed: an angle.");
    }
  }

  /** Mean angle against its datum, rad. */
  public double meanRad() {
    return reading.meanRad();
  }
}
