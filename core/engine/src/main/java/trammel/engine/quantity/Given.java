package trammel.engine.quantity;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Checks a number on its way into a calculation. Every refusal says what was given, what is
 * allowed, and what to do. The outer limits also keep powers and quotients of accepted numbers
 * inside the range of a double, so that no accepted input can turn into NaN or infinity.
 */
public final class Given {
  /** Least value taken as over zero. */
  private static final double SMALLEST = 1e-6;

  /** Largest magnitude taken for anything that has no narrower limit. */
  private static final double LARGEST = 1e12;

  private Given() {}

  /**
   * Accepts a number between two limits, both included.
   *
   * @param what what the number is, to start the message with, for example {@code wire diameter}
   * @param value the number
   * @param least least value allowed
   * @param most largest value allowed
   * @param unit unit of all three, empty for a pure number
   * @param advice what to do when it is refused, a whole sentence
   * @return the number
   * @throws IllegalArgumentException if the number is outside the limits or not a number
   */
  public static double within(
      String what, double value, double least, double most, String unit, String advice) {
    if (value >= least && value <= most) {
      return value;
    }
    throw refusal(
        what,
        text(value) + unitText(unit),
        "from " + text(least) + " to " + text(most) + unitText(unit),
        advice);
  }

  /**
   * Accepts a number over zero (from 0.000001 to 10¹²).
   *
   * @param what what the number is
   * @param value the number
   * @param unit its unit, empty for a pure number
   * @param advice what to do when it is refused, a whole sentence
   * @return the number
   * @throws IllegalArgumentException if it is zero, negative, out of range or not a number
   */
  public static double positive(String what, double value, String unit, String advice) {
    if (value >= SMALLEST && value <= LARGEST) {
      return value;
    }
    throw refusal(
        what,
        text(value) + unitText(unit),
        "over 0 (from " + text(SMALLEST) + " to " + text(LARGEST) + unitText(unit) + ")",
        advice);
  }

  /**
   * Accepts zero or a number over zero (up to 10¹²).
   *
   * @param what what the number is
   * @param value the number
   * @param unit its unit, empty for a pure number
   * @param advice what to do when it is refused, a whole sentence
   * @return the number
   * @throws IllegalArgumentException if it is negative, out of range or not a number
   */
  public static double notNegative(String what, double value, String unit, String advice) {
    return within(what, value, 0.0, LARGEST, unit, advice);
  }

  /**
   * Accepts a number of either sign (magnitude up to 10¹²).
   *
   * @param what what the number is
   * @param value the number
   * @param unit its unit, empty for a pure number
   * @return the number
   * @throws IllegalArgumentException if it is out of range or not a number
   */
  public static double finite(String what, double value, String unit) {
    return within(what, value, -LARGEST, LARGEST, unit, "Check how this number was obtained.");
  }

  /**
   * Accepts an angle between two limits, both included; the message speaks in degrees.
   *
   * @param what what the angle is
   * @param valueRad the angle, rad
   * @param leastRad least angle allowed, rad
   * @param mostRad largest angle allowed, rad
   * @param advice what to do when it is refused, a whole sentence
   * @return the angle, rad
   * @throws IllegalArgumentException if the angle is outside the limits or not a number
   */
  public static double angle(
      String what, double valueRad, double leastRad, double mostRad, String advice) {
    if (valueRad >= leastRad && valueRad <= mostRad) {
      return valueRad;
    }
    throw refusal(
        what,
        text(Math.toDegrees(valueRad)) + "°",
        "from " + text(Math.toDegrees(leastRad)) + "° to " + text(Math.toDegrees(mostRad)) + "°",
        advice);
  }

  /**
   * Accepts a number over zero, up to a limit.
   *
   * @param what what the number is
   * @param value the number
   * @param most largest value allowed
   * @param unit unit of both, empty for a pure number
   * @param advice what to do when it is refused, a whole sentence
   * @return the number
   * @throws IllegalArgumentException if it is zero, negative, too large or not a number
   */
  public static double positive(
      String what, double value, double most, String unit, String advice) {
    if (value > 0 && value <= most) {
      return value;
    }
    throw refusal(
        what, text(value) + unitText(unit), "over 0, up to " + text(most) + unitText(unit), advice);
  }

  /**
   * Accepts a whole number between two limits, both included.
   *
   * @param what what the number is
   * @param value the number
   * @param least least value allowed
   * @param most largest value allowed
   * @param advice what to do when it is refused, a whole sentence
   * @return the number
   * @throws IllegalArgumentException if the number is outside the limits
   */
  public static int count(String what, int value, int least, int most, String advice) {
    if (value >= least && value <= most) {
      return value;
    }
    throw refusal(what, Integer.toString(value), "from " + least + " to " + most, advice);
  }

  /**
   * Accepts an exact decimal between two limits, both included.
   *
   * @param what what the number is
   * @param value the number
   * @param least least value allowed
   * @param most largest value allowed
   * @param advice what to do when it is refused, a whole sentence
   * @return the number
   * @throws IllegalArgumentException if the number is missing or outside the limits
   */
  public static BigDecimal decimal(
      String what, BigDecimal value, long least, long most, String advice) {
    present(what, value, advice);
    if (value.compareTo(BigDecimal.valueOf(least)) >= 0
        && value.compareTo(BigDecimal.valueOf(most)) <= 0) {
      return value;
    }
    throw refusal(what, value.toPlainString(), "from " + least + " to " + most, advice);
  }

  /**
   * Accepts a text that says something.
   *
   * @param what what the text is
   * @param text the text
   * @param advice what to do when it is refused, a whole sentence
   * @return the text
   * @throws IllegalArgumentException if it is missing or blank
   */
  public static String text(String what, String text, String advice) {
    if (text != null && !text.isBlank()) {
      return text;
    }
    throw refusal(what, text == null ? "nothing" : "an empty text", "some words", advice);
  }

  /**
   * Accepts a phrase that says something.
   *
   * @param what what it is
   * @param words the phrase
   * @param advice what to do when it is refused, a whole sentence
   * @return the phrase
   * @throws IllegalArgumentException if it is missing or blank
   */
  public static Phrase text(String what, Phrase words, String advice) {
    if (words != null && !words.isBlank()) {
      return words;
    }
    throw refusal(what, words == null ? "nothing" : "an empty text", "some words", advice);
  }

  /**
   * Accepts anything that is there.
   *
   * @param <T> its type
   * @param what what it is
   * @param value what was given, or null
   * @param advice what to do when it is missing, a whole sentence
   * @return the value
   * @throws IllegalArgumentException if it is missing
   */
  public static <T> T present(String what, T value, String advice) {
    if (value != null) {
      return value;
    }
    throw new IllegalArgumentException("The " + what + " is missing. " + advice);
  }

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

  /**
   * Refuses an input in the common form.
   *
   * @param what what the input is
   * @param given what was given, with its unit
   * @param allowed what is allowed, to follow the words "must be"
   * @param advice what to do, a whole sentence
   * @return the exception to throw
   */
  public static IllegalArgumentException refusal(
      String what, String given, String allowed, String advice) {
    return new IllegalArgumentException(
        "The " + what + " (" + given + ") must be " + allowed + ". " + advice);
  }

  /**
   * A number as people write it: six significant digits, no exponent.
   *
   * @param value any number
   * @return its text
   */
  public static String text(double value) {
    if (Double.isNaN(value)) {
      return "not a number";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "infinite" : "minus infinite";
    }
    if (Math.abs(value) >= 1e15 || (value != 0 && Math.abs(value) < 1e-9)) {
      return Double.toString(value);
    }
    BigDecimal rounded = new BigDecimal(value).round(new MathContext(6));
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }

  private static IllegalArgumentException refuse(
      String name, double value, String allowed, String remedy) {
    return new IllegalArgumentException(
        name + " is " + value + "; allowed is " + allowed + ". " + remedy);
  }

  private static String unitText(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }
}
