package trammel.planning.catalog;

import trammel.engine.checks.Measure;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.UnitSystem;

/**
 * A range as limits are written: {@code 1.0 to 2.0 Hz}, {@code at most 2 deg}, {@code at least 3
 * in}, {@code any}, or a bare amount that moves the one end at which a limit bites.
 */
public final class LimitText {
  private static final String AT_MOST = "at most ";
  private static final String AT_LEAST = "at least ";
  private static final String TO = " to ";

  private final Measure measure;
  private final UnitSystem units;

  /**
   * @param measure the kind of quantity that the limit bounds
   * @param units what a number without a unit means
   */
  public LimitText(Measure measure, UnitSystem units) {
    this.measure = measure;
    this.units = units;
  }

  /**
   * A range in engine units, an open end infinite.
   *
   * @param min the lower end
   * @param max the upper end
   */
  public record Range(double min, double max) {
    /** The range that bounds nothing. */
    public static final Range ANY = new Range(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  /**
   * The range that a text gives.
   *
   * @throws IllegalArgumentException if the text is no range or is a bare amount
   */
  public Range range(String text) {
    Range range = withoutBare(text.strip());
    if (range == null) {
      throw new IllegalArgumentException(
          "'" + text + "' does not say which way it limits; write " + example() + ".");
    }
    return range;
  }

  /**
   * The range that a text gives in place of another; a bare amount replaces its one closed end.
   *
   * @throws IllegalArgumentException if the text is no range, or a bare amount where the other has
   *     two closed ends or none
   */
  public Range range(String text, Range replaced) {
    Range range = withoutBare(text.strip());
    if (range != null) {
      return range;
    }
    boolean below = !Double.isInfinite(replaced.min());
    boolean above = !Double.isInfinite(replaced.max());
    if (below == above) {
      throw new IllegalArgumentException(
          "'" + text + "' does not say which end of the limit it moves; write " + example() + ".");
    }
    double amount = amount(text.strip());
    return below
        ? new Range(amount, Double.POSITIVE_INFINITY)
        : new Range(Double.NEGATIVE_INFINITY, amount);
  }

  private Range withoutBare(String text) {
    if (text.equals("any")) {
      return Range.ANY;
    }
    if (text.startsWith(AT_MOST)) {
      return new Range(Double.NEGATIVE_INFINITY, amount(text.substring(AT_MOST.length())));
    }
    if (text.startsWith(AT_LEAST)) {
      return new Range(amount(text.substring(AT_LEAST.length())), Double.POSITIVE_INFINITY);
    }
    int to = text.indexOf(TO);
    if (to < 0) {
      return null;
    }
    Range range = new Range(lowerEnd(text, to), amount(text.substring(to + TO.length())));
    if (range.min() > range.max()) {
      throw new IllegalArgumentException(
          "'" + text + "' runs from the greater to the less; write the lower end first.");
    }
    return range;
  }

  /** The lower end of a range, which borrows the unit of the upper end when it has none. */
  private double lowerEnd(String text, int to) {
    String lower = text.substring(0, to).strip();
    char last = lower.charAt(lower.length() - 1);
    if (last < '0' || last > '9') {
      return amount(lower);
    }
    String upper = text.substring(to + TO.length()).strip();
    int unit = upper.length();
    while (unit > 0 && !isDigit(upper.charAt(unit - 1))) {
      unit--;
    }
    return amount(lower + upper.substring(unit));
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private double amount(String text) {
    return switch (measure) {
      case LENGTH -> Quantities.parse(text, QuantityKind.LENGTH, units);
      case ANGLE -> Quantities.parse(text, QuantityKind.ANGLE, units);
      case SHARE -> Quantities.parse(text, QuantityKind.PERCENT, units);
      case FREQUENCY -> plain(text, "Hz");
      case ANGULAR_ACCELERATION -> plain(text, "rad/s2");
      case FACTOR, COUNT -> plain(text, "");
      case PRESSURE, STRESS -> Quantities.parse(text, QuantityKind.PRESSURE, units);
      case FORCE -> Quantities.parse(text, QuantityKind.FORCE, units);
      case TORQUE, ENERGY -> Quantities.parse(text, QuantityKind.TORQUE, units);
      case RATE -> Quantities.parse(text, QuantityKind.RATE, units);
      case MASS -> Quantities.parse(text, QuantityKind.MASS, units);
      case SPEED -> Quantities.parse(text, QuantityKind.SPEED, units);
      case ROTATION -> Quantities.parse(text, QuantityKind.ROTATION, units);
    };
  }

  private double plain(String text, String unit) {
    String number = text.strip();
    if (!unit.isEmpty() && number.endsWith(unit)) {
      number = number.substring(0, number.length() - unit.length()).strip();
    }
    try {
      double value = Double.parseDouble(number);
      if (Double.isFinite(value)) {
        return value;
      }
    } catch (NumberFormatException noNumber) {
      // Said below, with what is allowed.
    }
    throw new IllegalArgumentException(
        "'" + text + "' is no amount for this limit; write " + example() + ".");
  }

  private String example() {
    return switch (measure) {
      case LENGTH -> "'at most 1/8 in', 'at least 3 in' or '1 in to 2 in'";
      case ANGLE -> "'at most 2 deg' or '0.5 deg to 3 deg'";
      case SHARE -> "'at least 20 %' or '20 % to 140 %'";
      case FREQUENCY -> "'1.0 to 2.0 Hz'";
      case ANGULAR_ACCELERATION -> "'at most 300 rad/s2'";
      case FACTOR -> "'at least 2.0'";
      case COUNT -> "'at most 0'";
      case PRESSURE -> "'at most 100 psi'";
      case STRESS -> "'at most 20000 psi'";
      case FORCE -> "'at most 2000 lb'";
      case TORQUE, ENERGY -> "'at most 500 lb-ft'";
      case RATE -> "'at least 100 lb/in'";
      case MASS -> "'at most 2000 lb'";
      case SPEED -> "'at least 100 mph'";
      case ROTATION -> "'at most 3500 rpm'";
    };
  }
}
