package trammel.app.files;

import java.util.List;
import java.util.regex.Pattern;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.UnitSystem;

/** Reads numbers as people and spreadsheets write them into forms. */
public final class FilledNumber {
  private static final String APOSTROPHES = "'\u2019";

  /** So many digits behind a comma or a point may be a thousand as well as a decimal. */
  private static final int THOUSAND = 3;

  /** One number with its unit, no sign in it but one comma, and not three digits behind that. */
  private static final Pattern DECIMAL_COMMA =
      Pattern.compile("^([-+]?\\d+),(\\d{1,2}|\\d{4,})(?=[^\\d.,]*$)");

  private static final int MOST_DIGITS = 12;
  private static final String FORMULA_SIGNS = "=+-@";
  private static final String FRACTION_SIGNS = "\u00bd\u00bc\u00be\u215b\u215c\u215d\u215e";
  private static final List<String> FRACTIONS =
      List.of(" 1/2", " 1/4", " 3/4", " 1/8", " 3/8", " 5/8", " 7/8");
  private static final char FRACTION_SLASH = '\u2044';
  private static final String HYPHENS = "\u2010\u2011\u2013\u2212";

  private FilledNumber() {}

  /**
   * Hours: {@code 9.5}, {@code 9 1/2 h}, {@code 9:30}, {@code 45 min}; {@code 9,5} too.
   *
   * @param decimalCommas whether the form comes from where decimals are written with a comma
   * @throws QuantityFormatException if it may mean something else
   */
  public static double hours(String given, boolean decimalCommas) {
    String text = plain(given);
    int colon = text.indexOf(':');
    if (colon > 0 && isDigits(text.substring(0, colon))) {
      return clock(given, text, colon);
    }
    return Quantities.parse(
        withPoint(given, text, decimalCommas), QuantityKind.TIME, UnitSystem.US);
  }

  /**
   * A count of something, its unit behind it or not: {@code 2}, {@code 2.5 ft}.
   *
   * @param unit the unit that may stand behind it
   * @param decimalCommas whether the form comes from where decimals are written with a comma
   * @throws QuantityFormatException if it may mean something else
   */
  public static double count(String given, String unit, boolean decimalCommas) {
    String text = plain(given);
    if (text.endsWith(unit)) {
      text = text.substring(0, text.length() - unit.length()).strip();
    }
    String number = withPoint(given, text, decimalCommas);
    int point = number.indexOf('.');
    boolean plain =
        point < 0
            ? isDigits(number)
            : isDigits(number.substring(0, point)) && isDigits(number.substring(point + 1));
    if (!plain || number.length() > MOST_DIGITS) {
      throw refused(given, "Enter a plain number, or leave it empty.");
    }
    return Double.parseDouble(number);
  }

  /**
   * A number or a quantity as a keyboard would have it: without what marks it as a text in a
   * spreadsheet, and without the signs into which word processors turn fractions and hyphens.
   */
  public static String plain(String cell) {
    boolean marked = cell.length() > 1 && APOSTROPHES.indexOf(cell.charAt(0)) >= 0;
    StringBuilder plain = new StringBuilder();
    for (char c : cell.substring(marked ? 1 : 0).toCharArray()) {
      int fraction = FRACTION_SIGNS.indexOf(c);
      if (fraction >= 0) {
        plain.append(FRACTIONS.get(fraction));
      } else {
        plain.append(HYPHENS.indexOf(c) >= 0 ? '-' : c == FRACTION_SLASH ? '/' : c);
      }
    }
    // A fraction sign may stand behind a blank already.
    return plain.toString().replace("  ", " ").strip();
  }

  /**
   * A length, an angle or another quantity as a keyboard would have it: as {@link #plain}, and with
   * a point for a decimal comma where it can be nothing else.
   *
   * @param decimalCommas whether the form comes from where decimals are written with a comma
   */
  public static String quantity(String cell, boolean decimalCommas) {
    String text = plain(cell);
    return decimalCommas ? DECIMAL_COMMA.matcher(text).replaceFirst("$1.$2") : text;
  }

  /** A text that a form marked so that no spreadsheet takes it for a formula, without the mark. */
  public static String withoutFormulaMark(String text) {
    return text.length() > 1 && text.charAt(0) == '\'' && FORMULA_SIGNS.indexOf(text.charAt(1)) >= 0
        ? text.substring(1)
        : text;
  }

  private static double clock(String given, String text, int colon) {
    String minutes = text.substring(colon + 1);
    if (colon > 4 || minutes.length() != 2 || !isDigits(minutes) || minutes.charAt(0) > '5') {
      throw refused(given, "Write hours and minutes as 9:30, or hours as 9.5.");
    }
    return Integer.parseInt(text.substring(0, colon)) + Integer.parseInt(minutes) / 60.0;
  }

  private static String withPoint(String given, String text, boolean decimalCommas) {
    int comma = text.indexOf(',');
    if (comma < 0) {
      int point = text.indexOf('.');
      if (decimalCommas && point >= 0 && digitsFrom(text, point + 1) == THOUSAND) {
        throw refused(given, "A point can mean a thousand where decimals have a comma.");
      }
      return text;
    }
    int digits = digitsFrom(text, comma + 1);
    if (digits == THOUSAND || text.indexOf('.') >= 0 || text.indexOf(',', comma + 1) >= 0) {
      throw refused(given, "A comma can mean a thousand: write 1500 or 1.5 without one.");
    }
    return text.replace(',', '.');
  }

  private static int digitsFrom(String text, int from) {
    int at = from;
    while (at < text.length() && isDigit(text.charAt(at))) {
      at++;
    }
    return at - from;
  }

  private static boolean isDigits(String text) {
    return !text.isEmpty() && digitsFrom(text, 0) == text.length();
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  private static QuantityFormatException refused(String given, String remedy) {
    return new QuantityFormatException("'" + given + "'", "a number such as 9.5", remedy);
  }
}
