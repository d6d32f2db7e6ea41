package trammel.trade.money;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import trammel.engine.quantity.Given;

/**
 * An amount in one currency, rounded once, half up, to the currency's smallest coin by ISO 4217.
 * Prices for a pound or an hour are no amounts yet; they stay plain decimals until multiplied.
 *
 * @param amount amount; it is rounded here
 * @param currency its currency
 */
public record Money(BigDecimal amount, Currency currency) implements Comparable<Money> {

  public Money {
    Given.present("an amount of money", amount, "Give a number.");
    if (currency == null) {
      // The words are put together only for who needs them: a quote makes hundreds of amounts.
      Given.present("currency of the amount " + amount, currency, "Give a code such as USD.");
    }
    if (currency.getDefaultFractionDigits() < 0) {
      throw new IllegalArgumentException(
          "Currency was given as "
              + currency.getCurrencyCode()
              + ", which has no coins; allowed is the currency of a country. "
              + "Give a code such as USD.");
    }
    amount = amount.setScale(currency.getDefaultFractionDigits(), RoundingMode.HALF_UP);
  }

  /**
   * An amount written as a number and a currency code.
   *
   * @param amount number, for example "7824.93"
   * @param currencyCode ISO 4217 code, for example "USD"
   * @throws IllegalArgumentException when either cannot be read
   */
  public static Money of(String amount, String currencyCode) {
    return new Money(decimal(amount), currency(currencyCode));
  }

  /**
   * An amount rounded to the smallest coin in a way of the shop's own.
   *
   * @param amount number
   * @param currency its currency, one with coins
   * @param mode where half a coin goes
   */
  static Money rounded(BigDecimal amount, Currency currency, RoundingMode mode) {
    Given.present("an amount of money", amount, "Give a number.");
    int digits = Math.max(0, currency.getDefaultFractionDigits());
    return new Money(amount.setScale(digits, mode), currency);
  }

  /** Nothing, in a currency. */
  public static Money zero(Currency currency) {
    return new Money(BigDecimal.ZERO, currency);
  }

  /**
   * Currency of a code.
   *
   * @param code ISO 4217 code, for example "USD"
   * @throws IllegalArgumentException when there is no such currency
   */
  public static Currency currency(String code) {
    try {
      return Currency.getInstance(code);
    } catch (IllegalArgumentException unknown) {
      throw new IllegalArgumentException(
          "Currency was given as '"
              + code
              + "'; allowed is a three-letter ISO 4217 code. Give a code such as USD.",
          unknown);
    }
  }

  private static BigDecimal decimal(String amount) {
    try {
      return new BigDecimal(amount);
    } catch (NumberFormatException unreadable) {
      throw new IllegalArgumentException(
          "An amount of money was given as '"
              + amount
              + "'; allowed is digits with a decimal point. Write 1234.50.",
          unreadable);
    }
  }

  /** Sum with an amount in the same currency. */
  public Money plus(Money other) {
    return new Money(amount.add(sameCurrency(other)), currency);
  }

  /** Difference to an amount in the same currency. */
  public Money minus(Money other) {
    return new Money(amount.subtract(sameCurrency(other)), currency);
  }

  /** Product with a plain number, rounded once. */
  public Money times(BigDecimal factor) {
    return new Money(amount.multiply(factor), currency);
  }

  /** Whether it is nothing. */
  public boolean isZero() {
    return amount.signum() == 0;
  }

  @Override
  public int compareTo(Money other) {
    return amount.compareTo(sameCurrency(other));
  }

  private BigDecimal sameCurrency(Money other) {
    if (!currency.equals(other.currency)) {
      throw new IllegalArgumentException(
          "Amounts of money were given in "
              + currency.getCurrencyCode()
              + " and "
              + other.currency.getCurrencyCode()
              + "; allowed is one currency in a job. Convert one of them first.");
    }
    return other.amount;
  }

  /** As it stands on a document: $7,824.93, or 7,824.93 EUR for other currencies. */
  public String text() {
    String digits = grouped(amount.abs().toPlainString());
    String sign = amount.signum() < 0 ? "-" : "";
    String code = currency.getCurrencyCode();
    return code.equals("USD") ? sign + "$" + digits : sign + digits + " " + code;
  }

  /** As a difference stands on a document: with a plus where it is more. */
  public String signedText() {
    return amount.signum() > 0 ? "+" + text() : text();
  }

  private static String grouped(String digits) {
    int point = digits.indexOf('.');
    int whole = point < 0 ? digits.length() : point;
    StringBuilder text = new StringBuilder(digits);
    for (int place = whole - 3; place > 0; place -= 3) {
      text.insert(place, ',');
    }
    return text.toString();
  }
}
