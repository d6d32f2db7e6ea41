package trammel.reading.quantity;

import java.util.List;

/**
 * One thing measured once or several times with the same instrument.
 *
 * @param kind what was measured; all values are in its inside unit
 * @param readings the readings in the order they were taken; at least one, all finite
 * @param tolerance how far one reading of the instrument may be off either way; more than 0
 */
public record Measurement(QuantityKind kind, List<Double> readings, double tolerance) {
  /** Refuses an empty list, readings that are not numbers, and a tolerance that is not positive. */
  public Measurement {
    readings = List.copyOf(readings);
    boolean finite = !readings.isEmpty() && tolerance > 0;
    for (double reading : readings) {
      finite = finite && Double.isFinite(reading);
    }
    if (!finite) {
      throw new IllegalArgumentException(
          "The readings ("
              + readings
              + ") with tolerance ("
              + tolerance
              + ") are not a measurement: give one or more finite numbers and a tolerance above 0.");
    }
  }

  /** A single length reading, mm. */
  public static Measurement ofLengthMm(double lengthMm, double tapeMm) {
    return new Measurement(QuantityKind.LENGTH, List.of(lengthMm), tapeMm);
  }

  /** A single angle reading, rad. */
  public static Measurement ofAngleRad(double angleRad, double angleFinderRad) {
    return new Measurement(QuantityKind.ANGLE, List.of(angleRad), angleFinderRad);
  }

  /** How many readings were taken. */
  public int count() {
    return readings.size();
  }

  /** Arithmetic mean of the readings, in the inside unit of the kind. */
  public double mean() {
    double first = readings.get(0);
    double sum = 0;
    for (double reading : readings) {
      sum += reading - first;
    }
    return first + sum / readings.size();
  }

  /** Greatest less least reading, in the inside unit of the kind; 0 for a single reading. */
  public double spread() {
    double least = readings.get(0);
    double greatest = least;
    for (double reading : readings) {
      least = Math.min(least, reading);
      greatest = Math.max(greatest, reading);
    }
    return greatest - least;
  }

  /** True if the readings differ by more than the instrument's tolerance. */
  public boolean needsMeasuringAgain() {
    // A spread written as exactly the tolerance must not fail on the last bit of the subtraction.
    return spread() > tolerance * (1 + 1e-9);
  }

  /** Mean length, mm. */
  public double meanMm() {
    return meanOf(QuantityKind.LENGTH);
  }

  /** Mean angle, rad. */
  public double meanRad() {
    return meanOf(QuantityKind.ANGLE);
  }

  /** Mean mass, kg. */
  public double meanKg() {
    return meanOf(QuantityKind.MASS);
  }

  private double meanOf(QuantityKind wanted) {
    if (kind != wanted) {
      throw new IllegalArgumentException(
          "The measurement is " + kind.noun() + "; asked for " + wanted.noun() + ".");
    }
    return mean();
  }
}
