package trammel.engine;

/**
 * Conditions on the numbers of a domain value. Each returns its argument, so that a constructor
 * checks and keeps it in one line, and each message says what was given, what is allowed and what
 * to do.
 */
public final class Require {
  private Require() {}

  /**
   * A number above zero.
   *
   * @throws IllegalArgumentException if {@code value} is not finite or not above zero
   */
  public static double positive(String name, double value) {
    if (!(value > 0) || Double.isInfinite(value)) {
      throw refuse(name, value, "a number above 0", "Measure it again and enter it with its unit.");
    }
    return value;
  }

  /**
   * A number of zero or more.
   *
   * @throws IllegalArgumentException if {@code value} is not finite or below zero
   */
  public static double notNegative(String name, double value) {
    if (!(value >= 0) || Double.isInfinite(value)) {
      throw refuse(name, value, "0 or more", "Check the sign and the datum it is measured from.");
    }
    return value;
  }

  /**
   * A number that is neither infinite nor undefined.
   *
   * @throws IllegalArgumentException if {@code value} is not finite
   */
  public static double finite(String name, double value) {
    if (Double.isNaN(value) || Double.isInfinite(value)) {
      throw refuse(name, value, "a finite number", "Check the measurement it comes from.");
    }
    return value;
  }

  /**
   * A number within a closed range.
   *
   * @throws IllegalArgumentException if {@code value} lies outside {@code min..max}
   */
  public static double within(String name, double value, double min, double max) {
    if (!(value >= min && value <= max)) {
      throw refuse(name, value, min + " to " + max, "Check the figure and its unit.");
    }
    return value;
  }

  /**
   * A text with at least one character that is not white space.
   *
   * @throws IllegalArgumentException if {@code text} is null or blank
   */
  public static String text(String name, String text) {
    if (text == null || text.isBlank()) {
      throw new IllegalArgumentException(
          name + " is empty; a name or a few words are needed. Fill it in.");
    }
    return text;
  }

  private static IllegalArgumentException refuse(
      String name, double value, String allowed, String remedy) {
    return new IllegalArgumentException(
        name + " is " + value + "; allowed is " + allowed + ". " + remedy);
  }
}
