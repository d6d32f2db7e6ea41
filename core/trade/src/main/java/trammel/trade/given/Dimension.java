package trammel.trade.given;

/**
 * Refuses impossible dimensions in one form of words: what was given, what is allowed, what to do.
 */
public final class Dimension {
  private static final double MM_PER_INCH = 25.4;
  private static final double THOUSANDTHS = 1000.0;

  /** Beyond this a number says more with an exponent. */
  private static final double LARGEST_PLAIN = 1e12;

  private Dimension() {}

  /** Returns the length when it is finite and more than nothing. */
  public static double positiveMm(String what, double valueMm) {
    if (!(valueMm > 0.0) || Double.isInfinite(valueMm)) {
      throw refuse(what, lengthText(valueMm), "more than 0 mm", "Measure or choose it again.");
    }
    return valueMm;
  }

  /** Returns the length when it is finite and not negative. */
  public static double notNegativeMm(String what, double valueMm) {
    if (!(valueMm >= 0.0) || Double.isInfinite(valueMm)) {
      throw refuse(what, lengthText(valueMm), "0 mm or more", "Measure or choose it again.");
    }
    return valueMm;
  }

  /** Returns the length when it is finite, of either sign. */
  public static double finiteMm(String what, double valueMm) {
    if (!Double.isFinite(valueMm)) {
      throw refuse(what, lengthText(valueMm), "any finite length", "Measure or choose it again.");
    }
    return valueMm;
  }

  /** Returns the length when it is at least the given least. */
  public static double atLeastMm(String what, double valueMm, double leastMm, String remedy) {
    if (!(valueMm >= leastMm) || Double.isInfinite(valueMm)) {
      throw refuse(what, lengthText(valueMm), lengthText(leastMm) + " or more", remedy);
    }
    return valueMm;
  }

  /** Returns the length when it is at most the given most. */
  public static double atMostMm(String what, double valueMm, double mostMm, String remedy) {
    if (!(valueMm <= mostMm) || Double.isInfinite(valueMm)) {
      throw refuse(what, lengthText(valueMm), lengthText(mostMm) + " or less", remedy);
    }
    return valueMm;
  }

  /** Returns the angle when it lies between the two limits, both included. */
  public static double angleRad(
      String what, double valueRad, double leastRad, double mostRad, String remedy) {
    if (!(valueRad >= leastRad && valueRad <= mostRad)) {
      String allowed = degreesText(leastRad) + " to " + degreesText(mostRad);
      throw refuse(what, degreesText(valueRad), allowed, remedy);
    }
    return valueRad;
  }

  /** Returns the count when it lies between the two limits, both included. */
  public static int count(String what, int value, int least, int most) {
    if (value < least || value > most) {
      throw refuse(
          what, Integer.toString(value), least + " to " + most, "Choose a number in that range.");
    }
    return value;
  }

  /** Returns the text when it has something in it. */
  public static String text(String what, String value) {
    if (value == null || value.isBlank()) {
      throw refuse(what, "nothing", "a short name", "Write one.");
    }
    return value;
  }

  /** The refusal itself, for rules that need their own words. */
  public static IllegalArgumentException refuse(
      String what, String given, String allowed, String remedy) {
    return new IllegalArgumentException(
        "The " + what + " is " + given + "; allowed is " + allowed + ".\n" + remedy);
  }

  /** A length as the shop reads it: millimetres, and inches in brackets. */
  public static String lengthText(double valueMm) {
    if (!Double.isFinite(valueMm)) {
      return "not a number";
    }
    return numberText(valueMm) + " mm (" + numberText(valueMm / MM_PER_INCH) + " in)";
  }

  /** An angle in degrees. */
  public static String degreesText(double valueRad) {
    if (!Double.isFinite(valueRad)) {
      return "not a number";
    }
    return numberText(Math.toDegrees(valueRad)) + "\u00b0";
  }

  /** A finite number to three decimals at most, without trailing zeros. */
  public static String numberText(double value) {
    if (Math.abs(value) >= LARGEST_PLAIN) {
      return Double.toString(value);
    }
    double rounded = Math.rint(value * THOUSANDTHS) / THOUSANDTHS;
    if (rounded == Math.rint(rounded)) {
      return Long.toString((long) rounded);
    }
    return Double.toString(rounded);
  }
}
