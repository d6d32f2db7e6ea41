package trammel.trade.steel;

/** Sizes as the shop writes them in the name of a stock: 1-3/4, .120, 44.45. */
final class ShopLength {

  private static final double MM_PER_INCH = 25.4;

  /** Finest fraction in which stock is named, per inch. */
  private static final int PARTS = 64;

  /** A size counts as a fraction of an inch when it is this close to it, in. */
  private static final double FRACTION_TOLERANCE_IN = 0.0006;

  private ShopLength() {}

  /** Whole and fraction, or three decimals when the size is no 64th: 1-3/4, 2, 3/16, .120. */
  static String inches(double lengthMm) {
    double lengthIn = lengthMm / MM_PER_INCH;
    long parts = Math.round(lengthIn * PARTS);
    if (parts == 0 || Math.abs(lengthIn - (double) parts / PARTS) > FRACTION_TOLERANCE_IN) {
      return decimalInches(lengthMm);
    }
    long whole = parts / PARTS;
    long numerator = parts % PARTS;
    if (numerator == 0) {
      return Long.toString(whole);
    }
    long denominator = PARTS;
    while (numerator % 2 == 0) {
      numerator /= 2;
      denominator /= 2;
    }
    String fraction = numerator + "/" + denominator;
    return whole == 0 ? fraction : whole + "-" + fraction;
  }

  /** Three decimals without a leading zero: .120, 1.055. */
  static String decimalInches(double lengthMm) {
    return fixed(lengthMm / MM_PER_INCH, 1000, false);
  }

  /** At most two decimals, no trailing zero: 44.45, 6, 3.05. */
  static String millimetres(double lengthMm) {
    return fixed(lengthMm, 100, true);
  }

  private static String fixed(double value, int scale, boolean trimmed) {
    long scaled = Math.round(value * scale);
    String whole = Long.toString(scaled / scale);
    String decimals = Long.toString(scale + scaled % scale).substring(1);
    if (trimmed) {
      int end = decimals.length();
      while (end > 0 && decimals.charAt(end - 1) == '0') {
        end--;
      }
      return end == 0 ? whole : whole + "." + decimals.substring(0, end);
    }
    return (whole.equals("0") ? "" : whole) + "." + decimals;
  }
}
