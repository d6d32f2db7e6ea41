package trammel.app.prices;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;

/** Reads a price as it stands in a supplier's list. What could mean two amounts is refused. */
final class ListedAmount {
  private static final int MOST_DECIMALS = 4;
  private static final int THOUSAND = 3;

  /** The most that a catalog takes for a price. */
  private static final BigDecimal MOST = new BigDecimal(10_000_000);

  private static final String SIGNS = "$\u00a3\u20ac\u00a5";

  private ListedAmount() {}

  /**
   * The price of a cell: {@code 1,234.50}, {@code 1.234,50 EUR}, {@code $ 12.5}, {@code 12,50}.
   *
   * @param decimalCommas whether the list comes from where decimals are written with a comma
   * @throws IllegalArgumentException if it is none, could be two, or is in another currency; the
   *     message says what to do
   */
  static BigDecimal read(String cell, Currency currency, boolean decimalCommas) {
    String digits = withoutCurrency(cell, currency).replaceAll("[\\s\u00a0\u202f'\u2019]", "");
    if (!digits.matches("\\d[\\d.,]*")) {
      throw new IllegalArgumentException("Write a price such as 12.50, or leave the line out.");
    }
    BigDecimal price = new BigDecimal(withPoint(digits, decimalCommas));
    if (price.scale() > MOST_DECIMALS) {
      throw new IllegalArgumentException("Round it to " + MOST_DECIMALS + " decimals.");
    }
    if (price.compareTo(MOST) > 0) {
      throw new IllegalArgumentException(
          "A price is at most " + MOST.toPlainString() + ": write it without further digits.");
    }
    return price;
  }

  private static String withoutCurrency(String cell, Currency currency) {
    String code = currency.getCurrencyCode();
    String text = cell.strip();
    String letters = text.replaceAll("[^\\p{L}]", "").toUpperCase(Locale.ROOT);
    if (!letters.isEmpty() && !letters.equals(code)) {
      throw new IllegalArgumentException("The catalog's prices are in " + code + ": write it so.");
    }
    for (char sign : SIGNS.toCharArray()) {
      boolean own = currency.getSymbol(Locale.US).indexOf(sign) >= 0;
      if (text.indexOf(sign) >= 0 && !own) {
        throw new IllegalArgumentException(
            "The catalog's prices are in " + code + ": write it so.");
      }
      text = text.replace(String.valueOf(sign), "");
    }
    return text.replaceAll("\\p{L}", "").strip();
  }

  private static String withPoint(String digits, boolean decimalCommas) {
    int comma = digits.lastIndexOf(',');
    int point = digits.lastIndexOf('.');
    if (comma >= 0 && point >= 0) {
      char decimal = comma > point ? ',' : '.';
      char thousand = decimal == ',' ? '.' : ',';
      return grouped(digits, thousand, decimal);
    }
    if (comma < 0 && point < 0) {
      return digits;
    }
    char sign = comma >= 0 ? ',' : '.';
    boolean once = digits.indexOf(sign) == digits.lastIndexOf(sign);
    boolean thousands = digits.length() - digits.lastIndexOf(sign) - 1 == THOUSAND;
    if (!once) {
      return grouped(digits, sign, sign == ',' ? '.' : ',');
    }
    if (thousands && (sign == ',' || decimalCommas)) {
      throw new IllegalArgumentException(
          "It can be a thousand or a decimal: write 1500 or 1.50 without another sign.");
    }
    return digits.replace(',', '.');
  }

  /** Groups of three before the decimals, or it is no number. */
  private static String grouped(String digits, char thousand, char decimal) {
    String group = thousand == '.' ? "\\." : ",";
    String end = decimal == '.' ? "\\." : ",";
    if (!digits.matches("\\d{1,3}(" + group + "\\d{3})+(" + end + "\\d+)?")) {
      throw new IllegalArgumentException("Write a price such as 1234.50.");
    }
    return digits.replace(String.valueOf(thousand), "").replace(decimal, '.');
  }
}
