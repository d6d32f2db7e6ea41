package trammel.engine.quantity;

import java.util.Locale;
import java.util.Objects;

/**
 * A quantity in a {@link Phrase}, which gets its unit where the phrase is read.
 *
 * @param kind what kind of quantity it is
 * @param value the quantity in the unit that the engine has for its kind, finite
 * @param places decimals of an angle or of an inch; 0 where the kind has its own
 */
public record Amount(Kind kind, double value, int places) {
  /** What kind of quantity an amount is, and the unit that its value is in. */
  public enum Kind {
    /** mm. */
    LENGTH,
    /** mm, printed as a decimal. */
    DECIMAL_LENGTH,
    /** mm, of line or cable. */
    LONG_LENGTH,
    /** rad. */
    ANGLE,
    /** kg. */
    MASS,
    /** N. */
    FORCE,
    /** N/mm. */
    RATE,
    /** Nmm. */
    TORQUE,
    /** MPa. */
    PRESSURE,
    /** A share, 1 being 100 %. */
    PERCENT
  }

  private static final int USUAL_ANGLE_PLACES = 1;
  private static final int MOST_PLACES = 6;

  public Amount {
    Objects.requireNonNull(kind, "kind");
    Given.finite(kind.name().toLowerCase(Locale.ROOT) + " in a phrase", value);
    Given.count("decimals in a phrase", places, 0, MOST_PLACES, "Leave out what nobody measures.");
  }

  /** A length. */
  public static Amount length(double lengthMm) {
    return new Amount(Kind.LENGTH, lengthMm, 0);
  }

  /** A length as a decimal, for what a fraction would hide: so many places of an inch. */
  public static Amount decimalLength(double lengthMm, int inchPlaces) {
    return new Amount(Kind.DECIMAL_LENGTH, lengthMm, inchPlaces);
  }

  /** A length of line or cable. */
  public static Amount longLength(double lengthMm) {
    return new Amount(Kind.LONG_LENGTH, lengthMm, 0);
  }

  /** An angle, to a tenth of a degree. */
  public static Amount angle(double angleRad) {
    return angle(angleRad, USUAL_ANGLE_PLACES);
  }

  /** An angle in degrees with so many decimals. */
  public static Amount angle(double angleRad, int places) {
    return new Amount(Kind.ANGLE, angleRad, places);
  }

  /** A weight or mass. */
  public static Amount mass(double massKg) {
    return new Amount(Kind.MASS, massKg, 0);
  }

  /** A force. */
  public static Amount force(double forceN) {
    return new Amount(Kind.FORCE, forceN, 0);
  }

  /** A spring or wheel rate. */
  public static Amount rate(double rateNPerMm) {
    return new Amount(Kind.RATE, rateNPerMm, 0);
  }

  /** A torque. */
  public static Amount torque(double torqueNmm) {
    return new Amount(Kind.TORQUE, torqueNmm, 0);
  }

  /** A pressure. */
  public static Amount pressure(double pressureMPa) {
    return new Amount(Kind.PRESSURE, pressureMPa, 0);
  }

  /** A ratio, as a percentage. */
  public static Amount percent(double ratio) {
    return new Amount(Kind.PERCENT, ratio, 0);
  }

  /** Number and unit. */
  public String in(ReaderUnits units) {
    return switch (kind) {
      case LENGTH -> units.length(value);
      case DECIMAL_LENGTH -> units.decimalLength(value, places);
      case LONG_LENGTH -> units.longLength(value);
      case ANGLE -> units.angle(value, places);
      case MASS -> units.mass(value);
      case FORCE -> units.force(value);
      case RATE -> units.rate(value);
      case TORQUE -> units.torque(value);
      case PRESSURE -> units.pressure(value);
      case PERCENT -> units.percent(value);
    };
  }

  @Override
  public String toString() {
    return in(InsideUnits.INSIDE);
  }
}
