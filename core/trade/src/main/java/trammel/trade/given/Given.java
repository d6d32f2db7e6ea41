package trammel.trade.given;

import java.math.BigDecimal;

/** Checks of a given value that hand the value back, so that a constructor checks and assigns. */
public final class Given {

  private Given() {}

  /**
   * Accepts a number in a closed range.
   *
   * @param value the number given
   * @param lowest smallest number allowed
   * @param highest largest number allowed
   * @param what what the number is, with its unit, for the message: "wall in mm"
   * @param advice what to do about a refused value, for the message
   * @return the value
   * @throws IllegalArgumentException outside the range, or not a number
   */
  public static double between(
      double value, double lowest, double highest, String what, String advice) {
    if (value >= lowest && value <= highest) {
      return value;
    }
    throw new IllegalArgumentException(
        what
            + " was given as "
            + value
            + "; allowed is "
            + lowest
            + " to "
            + highest
            + ". "
            + advice);
  }

  /**
   * Accepts a number above zero.
   *
   * @param value the number given
   * @param highest largest number allowed
   * @param what what the number is, with its unit, for the message
   * @param advice what to do about a refused value, for the message
   * @return the value
   * @throws IllegalArgumentException when zero, negative, too large or not a number
   */
  public static double positive(double value, double highest, String what, String advice) {
    if (value > 0 && value <= highest) {
      return value;
    }
    throw new IllegalArgumentException(
        what + " was given as " + value + "; allowed is above 0, up to " + highest + ". " + advice);
  }

  /**
   * Accepts a whole number in a closed range.
   *
   * @param value the number given
   * @param lowest smallest number allowed
   * @param highest largest number allowed
   * @param what what the number is, for the message
   * @param advice what to do about a refused value, for the message
   * @return the value
   * @throws IllegalArgumentException outside the range
   */
  public static int count(int value, int lowest, int highest, String what, String advice) {
    if (value >= lowest && value <= highest) {
      return value;
    }
    throw new IllegalArgumentException(
        what
            + " was given as "
            + value
            + "; allowed is "
            + lowest
            + " to "
            + highest
            + ". "
            + advice);
  }

  /**
   * Accepts an exact decimal in a closed range.
   *
   * @param value the number given
   * @param lowest smallest number allowed
   * @param highest largest number allowed
   * @param what what the number is, for the message
   * @param advice what to do about a refused value, for the message
   * @return the value
   * @throws IllegalArgumentException when it is missing or outside the range
   */
  public static BigDecimal decimal(
      BigDecimal value, long lowest, long highest, String what, String advice) {
    present(value, what, advice);
    if (value.compareTo(BigDecimal.valueOf(lowest)) >= 0
        && value.compareTo(BigDecimal.valueOf(highest)) <= 0) {
      return value;
    }
    throw new IllegalArgumentException(
        what
            + " was given as "
            + value.toPlainString()
            + "; allowed is "
            + lowest
            + " to "
            + highest
            + ". "
            + advice);
  }

  /**
   * Accepts a text that says something.
   *
   * @param text the text given
   * @param what what the text is, for the message
   * @param advice what to do about an empty text, for the message
   * @return the text
   * @throws IllegalArgumentException when it is missing or blank
   */
  public static String text(String text, String what, String advice) {
    if (text != null && !text.isBlank()) {
      return text;
    }
    throw new IllegalArgumentException(
        what
            + " was given as "
            + (text == null ? "nothing" : "an empty text")
            + "; it must say something. "
            + advice);
  }

  /**
   * Accepts anything that is there.
   *
   * @param <T> its type
   * @param value what was given
   * @param what what it is, for the message
   * @param advice what to do when it is missing, for the message
   * @return the value
   * @throws IllegalArgumentException when it is missing
   */
  public static <T> T present(T value, String what, String advice) {
    if (value != null) {
      return value;
    }
    throw new IllegalArgumentException(what + " is missing; it is needed. " + advice);
  }
}
