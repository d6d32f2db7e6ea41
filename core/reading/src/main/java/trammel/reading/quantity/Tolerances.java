package trammel.reading.quantity;

/**
 * How well the shop's instruments read: a single reading may be off by this much either way.
 *
 * @param tapeMm tolerance of a tape reading, mm, more than 0
 * @param angleFinderRad tolerance of the angle finder, rad, more than 0
 * @param scalesKg tolerance of one scale, kg, more than 0
 */
public record Tolerances(double tapeMm, double angleFinderRad, double scalesKg) {
  /** A tape to 1/16 in, an angle finder to 0.2°, scales to 5 lb: common practice, no source. */
  public static final Tolerances USUAL =
      new Tolerances(25.4 / 16, Math.toRadians(0.2), 5 * 0.45359237);

  /** Refuses tolerances that are not more than zero. */
  public Tolerances {
    if (!(tapeMm > 0 && angleFinderRad > 0 && scalesKg > 0)) {
      throw new IllegalArgumentException(
          "The tolerances (tape "
              + tapeMm
              + " mm, angle finder "
              + angleFinderRad
              + " rad, scales "
              + scalesKg
              + " kg) must each be more than 0: no instrument reads exactly.");
    }
  }

  /**
   * The tolerance of the instrument that reads a kind of quantity, in its inside unit.
   *
   * @throws IllegalArgumentException if no instrument is known for the kind
   */
  public double of(QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> tapeMm;
      case ANGLE -> angleFinderRad;
      case MASS -> scalesKg;
      default ->
          throw new IllegalArgumentException(
              "The kind ("
                  + kind
                  + ") has no instrument: tape, angle finder and scales read LENGTH, ANGLE, MASS.");
    };
  }
}
