package trammel.reading.quantity;

import java.math.BigDecimal;
import trammel.engine.quantity.ReaderUnits;

/**
 * Prints inside values in one unit system, number and unit: {@code 29 1/2 in}, {@code 749.3 mm}.
 *
 * <p>Every printed text is understood again by {@link Quantities#parse}. Values must be finite.
 *
 * @param system the units to print in
 */
public record QuantityPrinter(UnitSystem system) implements ReaderUnits {
  private static final int FRACTION = 32;
  private static final int FEET_IN_FRACTIONS = 12 * FRACTION;

  /** A length: inches to the nearest 1/32, or millimetres with one decimal. */
  @Override
  public String length(double lengthMm) {
    return isUs() ? inches(lengthMm) : DecimalText.fixed(lengthMm, 1) + " mm";
  }

  /** A length as a decimal: inches with so many places, or millimetres with one fewer. */
  @Override
  public String decimalLength(double lengthMm, int inchPlaces) {
    return isUs()
        ? DecimalText.fixed(lengthMm / 25.4, inchPlaces) + " in"
        : DecimalText.fixed(lengthMm, Math.max(0, inchPlaces - 1)) + " mm";
  }

  /** A length of line or cable: feet and inches, or millimetres. */
  @Override
  public String longLength(double lengthMm) {
    return isUs() ? feetAndInches(lengthMm) : length(lengthMm);
  }

  /** A length in feet and inches to the nearest 1/32, whatever the unit system. */
  public static String feetAndInches(double lengthMm) {
    long parts = fractionParts(lengthMm);
    StringBuilder text = new StringBuilder(16);
    appendSign(text, lengthMm, parts);
    long feet = parts / FEET_IN_FRACTIONS;
    long rest = parts % FEET_IN_FRACTIONS;
    if (feet > 0) {
      text.append(feet).append('\'').append(rest > 0 ? " " : "");
    }
    if (rest > 0 || feet == 0) {
      appendInches(text, rest);
      text.append('"');
    }
    return text.toString();
  }

  /** A length in inches to the nearest 1/32, reduced, whatever the unit system. */
  public static String inches(double lengthMm) {
    long parts = fractionParts(lengthMm);
    StringBuilder text = new StringBuilder(16);
    appendSign(text, lengthMm, parts);
    appendInches(text, parts);
    return text.append(" in").toString();
  }

  /** An angle in degrees with one decimal. */
  public String angle(double angleRad) {
    return angle(angleRad, 1);
  }

  /** An angle in degrees with so many decimals. */
  @Override
  public String angle(double angleRad, int places) {
    return DecimalText.fixed(Math.toDegrees(angleRad), places) + " deg";
  }

  /** A weight or mass: one decimal below 100, none above. */
  @Override
  public String mass(double massKg) {
    return inUnit(massKg, QuantityKind.MASS, 1);
  }

  /** A force: one decimal below 100, none above. */
  @Override
  public String force(double forceN) {
    return inUnit(forceN, QuantityKind.FORCE, 1);
  }

  /** A spring or wheel rate: one decimal below 100, none above. */
  @Override
  public String rate(double rateNPerMm) {
    return inUnit(rateNPerMm, QuantityKind.RATE, 1);
  }

  /** A roll stiffness, without decimals: lb-in or Nm for a degree. */
  public String rollStiffness(double newtonMetresPerDegree) {
    return isUs()
        ? DecimalText.fixed(Unit.POUND_INCH.fromInside(newtonMetresPerDegree * 1000), 0)
            + " lb-in/deg"
        : DecimalText.fixed(newtonMetresPerDegree, 0) + " Nm/deg";
  }

  /** A torque: one decimal below 100, none above. */
  @Override
  public String torque(double torqueNmm) {
    return inUnit(torqueNmm, QuantityKind.TORQUE, 1);
  }

  /** A pressure in psi or kPa: one decimal below 100, none above. */
  @Override
  public String pressure(double pressureMPa) {
    return inUnit(pressureMPa, QuantityKind.PRESSURE, 1);
  }

  /** A stress: ksi with one decimal, or MPa without. */
  public String stress(double stressMPa) {
    return isUs()
        ? DecimalText.fixed(Unit.KSI.fromInside(stressMPa), 1) + " ksi"
        : DecimalText.fixed(stressMPa, 0) + " MPa";
  }

  /** A speed in miles or kilometres per hour: one decimal below 100, none above. */
  public String speed(double speedMPerS) {
    return inUnit(speedMPerS, QuantityKind.SPEED, 1);
  }

  /** A shaft speed in whole revolutions per minute. */
  public String rotation(double speedRpm) {
    return DecimalText.fixed(speedRpm, 0) + " rpm";
  }

  /** A time in hours with one decimal. */
  public String hours(double timeHours) {
    return DecimalText.fixed(timeHours, 1) + " h";
  }

  /** A ratio that was worked out, as a percentage of at most two decimals: {@code 65.12 %}. */
  @Override
  public String percent(double ratio) {
    return DecimalText.trimmed(ratio * 100, 2) + " %";
  }

  /** A percentage that somebody gave, every decimal of it: 0.06875 is {@code 6.875 %}. */
  public static String percent(BigDecimal ratio) {
    BigDecimal shown = ratio.movePointRight(2).stripTrailingZeros();
    return (shown.signum() == 0 ? BigDecimal.ZERO : shown).toPlainString() + " %";
  }

  /** A value of any kind, in the form that its own method gives. */
  public String print(double inside, QuantityKind kind) {
    return switch (kind) {
      case LENGTH -> length(inside);
      case ANGLE -> angle(inside, 2);
      case ROTATION -> rotation(inside);
      case TIME -> hours(inside);
      case PERCENT -> percent(inside);
      case MASS, FORCE, RATE, TORQUE, PRESSURE, SPEED -> inUnit(inside, kind, 1);
    };
  }

  private boolean isUs() {
    return system == UnitSystem.US;
  }

  private String inUnit(double inside, QuantityKind kind, int places) {
    Unit unit = kind.bareUnit(system);
    double value = unit.fromInside(inside);
    return DecimalText.fixed(value, Math.abs(value) < 99.95 ? places : 0) + " " + unit.symbol();
  }

  private static long fractionParts(double lengthMm) {
    double parts = Math.abs(lengthMm) * FRACTION / 25.4;
    if (!(parts < 1e15)) {
      throw new IllegalArgumentException(
          "The length (" + lengthMm + " mm) cannot be printed: it must be a finite shop length.");
    }
    return Math.round(parts);
  }

  private static void appendSign(StringBuilder text, double lengthMm, long parts) {
    if (lengthMm < 0 && parts != 0) {
      text.append('-');
    }
  }

  private static void appendInches(StringBuilder text, long parts) {
    long whole = parts / FRACTION;
    int top = (int) (parts % FRACTION);
    if (whole > 0 || top == 0) {
      text.append(whole);
    }
    if (top > 0) {
      int halvings = Integer.numberOfTrailingZeros(top);
      text.append(whole > 0 ? " " : "").append(top >> halvings);
      text.append('/').append(FRACTION >> halvings);
    }
  }
}
