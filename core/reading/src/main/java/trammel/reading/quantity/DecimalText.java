package trammel.reading.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Decimal numbers as text, with a fixed or a greatest number of places. */
public final class DecimalText {
  private static final int MOST_PLACES = 9;
  private static final double LONG_SAFE = 9e15;

  private DecimalText() {}

  /**
   * The number rounded half away from zero to a fixed number of places; never {@code -0}.
   *
   * @throws IllegalArgumentException if the number is not finite or places is not 0 to 9
   */
  public static String fixed(double number, int places) {
    if (!Double.isFinite(number) || places < 0 || places > MOST_PLACES) {
      throw new IllegalArgumentException(
          "The number ("
              + number
              + ") with places ("
              + places
              + ") cannot be printed: it must be finite, with 0 to 9 places.");
    }
    long ten = 1;
    for (int i = 0; i < places; i++) {
      ten *= 10;
    }
    double scaled = Math.abs(number) * ten;
    if (scaled >= LONG_SAFE) {
      return new BigDecimal(number).setScale(places, RoundingMode.HALF_UP).toPlainString();
    }
    long rounded = Math.round(scaled);
    StringBuilder text = new StringBuilder(24);
    if (number < 0 && rounded != 0) {
      text.append('-');
    }
    text.append(rounded / ten);
    if (places > 0) {
      String decimals = Long.toString(rounded % ten);
      text.append('.');
      for (int i = decimals.length(); i < places; i++) {
        text.append('0');
      }
      text.append(decimals);
    }
    return text.toString();
  }

  /** The number rounded to at most so many places, without zeros at the end. */
  public static String trimmed(double number, int mostPlaces) {
    String text = fixed(number, mostPlaces);
    if (text.indexOf('.') < 0) {
      return text;
    }
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    if (text.charAt(end - 1) == '.') {
      end--;
    }
    return text.substring(0, end);
  }
}
