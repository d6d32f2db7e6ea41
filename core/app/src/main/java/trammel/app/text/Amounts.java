package trammel.app.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import trammel.cutting.CuttingStatus;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Measure;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Prints the values of checks and their limits in the units of the reader. */
public final class Amounts {
  private static final int GIVEN_PLACES = 6;

  private final QuantityPrinter printer;
  private final boolean us;

  /**
   * @param units the units of the reader
   */
  public Amounts(UnitSystem units) {
    printer = new QuantityPrinter(units);
    us = units == UnitSystem.US;
  }

  /** The printer of plain quantities. */
  public QuantityPrinter printer() {
    return printer;
  }

  /** Whether the reader thinks in inches. */
  boolean us() {
    return us;
  }

  /** A value of a check. */
  public String value(Measure measure, double value) {
    return switch (measure) {
      case LENGTH -> length(value);
      case ANGLE -> printer.angle(value, 2);
      case FREQUENCY -> fixed(value, 2) + " Hz";
      case ANGULAR_ACCELERATION -> fixed(value, 0) + " rad/s2";
      case SHARE -> fixed(100 * value, 1) + " %";
      case FACTOR -> fixed(value, 2);
      case COUNT -> fixed(value, 0);
      case PRESSURE -> printer.pressure(value);
      case STRESS -> printer.stress(value);
      case FORCE -> printer.force(value);
      case TORQUE -> printer.torque(value);
      case RATE -> printer.rate(value);
      case MASS -> printer.mass(value);
      case SPEED -> printer.speed(value);
      case ROTATION -> printer.rotation(value);
      case ENERGY -> printer.torque(value).replace("lb-ft", "ft-lb").replace("Nm", "J");
    };
  }

  /** A length; small ones in thousandths, which a fraction would hide. */
  private String length(double lengthMm) {
    return us ? printer.decimalLength(lengthMm, 3) : printer.length(lengthMm);
  }

  /** The range in which a value is good. */
  public String good(Measure measure, Limit limit) {
    return range(measure, limit.goodMin(), limit.goodMax());
  }

  /** What a value must be to say stop. */
  public String stop(Measure measure, Limit limit) {
    boolean below = !Double.isInfinite(limit.stopMin());
    boolean above = !Double.isInfinite(limit.stopMax());
    if (below && above) {
      return "stop outside " + range(measure, limit.stopMin(), limit.stopMax());
    }
    if (below) {
      return "stop under " + limit(measure, limit.stopMin());
    }
    return above ? "stop over " + limit(measure, limit.stopMax()) : "never a stop by itself";
  }

  /** A limit is printed as it was given; a share keeps every decimal of its percentage. */
  private String limit(Measure measure, double limit) {
    return measure == Measure.SHARE ? given(limit) : value(measure, limit);
  }

  private static String given(double share) {
    String whole = DecimalText.trimmed(100 * share, GIVEN_PLACES);
    return (whole.indexOf('.') < 0 ? whole + ".0" : whole) + " %";
  }

  private String range(Measure measure, double min, double max) {
    if (Double.isInfinite(min) && Double.isInfinite(max)) {
      return "any";
    }
    if (Double.isInfinite(min)) {
      return "at most " + limit(measure, max);
    }
    if (Double.isInfinite(max)) {
      return "at least " + limit(measure, min);
    }
    return limit(measure, min) + " to " + limit(measure, max);
  }

  /** A number with a fixed count of decimals. */
  public static String fixed(double value, int places) {
    return BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).toPlainString();
  }

  /** How good a cutting plan is known to be. */
  public static String proven(CuttingStatus status, BigDecimal lowerBound) {
    return status == CuttingStatus.PROVEN_OPTIMAL
        ? "no cheaper one exists (proven)"
        : "a cheaper one may exist; none costs less than " + lowerBound.toPlainString();
  }

  /** A count or a quantity without needless zeros. */
  public static String plain(double quantity) {
    return BigDecimal.valueOf(quantity)
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
