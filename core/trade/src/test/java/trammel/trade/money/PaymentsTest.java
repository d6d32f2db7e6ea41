package trammel.trade.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** When a price is paid: the payments are the price, no cent more and none less. */
class PaymentsTest {
  private static final int SEEDS = 2000;

  private static PriceTerms terms(Currency currency, String deposit, String... progress) {
    List<ProgressPayment> payments = new ArrayList<>();
    for (String share : progress) {
      payments.add(new ProgressPayment("event " + payments.size(), new BigDecimal(share)));
    }
    return PriceTerms.labourOnly(currency, BigDecimal.TEN)
        .withPayments(new BigDecimal(deposit), payments);
  }

  /** By hand: half of an odd cent is rounded up once; the other half takes what is left. */
  @ParameterizedTest
  @CsvSource({"0.01, 0.01, 0.00", "100.01, 50.01, 50.00", "22190.63, 11095.32, 11095.31"})
  void twoHalvesLeaveNothingToPay(String price, String first, String second) {
    Money total = Money.of(price, "USD");
    Payments payments = Payments.of(total, terms(total.currency(), "0", "0.5", "0.5"));
    assertEquals(Money.of("0", "USD"), payments.deposit());
    assertEquals(List.of(Money.of(first, "USD"), Money.of(second, "USD")), payments.progress());
    assertTrue(payments.balance().isZero(), "left over: " + payments.balance().text());
  }

  /** ISO 4217: the yen has no smaller coin, the Kuwaiti dinar a thousand fils. */
  @Test
  void thirdsOfAPriceComeOutInEveryCurrency() {
    PriceTerms yen = terms(Currency.getInstance("JPY"), "0.3333", "0.3333", "0.3334");
    Payments inYen = Payments.of(Money.of("100", "JPY"), yen);
    assertEquals(Money.of("33", "JPY"), inYen.deposit());
    assertEquals(List.of(Money.of("33", "JPY"), Money.of("34", "JPY")), inYen.progress());
    PriceTerms dinar = terms(Currency.getInstance("KWD"), "0.3333", "0.3333", "0.3334");
    Payments inDinar = Payments.of(Money.of("0.100", "KWD"), dinar);
    assertEquals(Money.of("0.033", "KWD"), inDinar.deposit());
    assertEquals(Money.of("0.034", "KWD"), inDinar.progress().get(1));
  }

  /** Twenty payments of a twentieth of 10 cents would each be rounded up to a cent. */
  @Test
  void noPaymentIsMoreThanWhatIsLeft() {
    String[] shares = new String[19];
    java.util.Arrays.fill(shares, "0.05");
    Money total = Money.of("0.10", "USD");
    Payments payments = Payments.of(total, terms(total.currency(), "0.05", shares));
    Money sum = payments.deposit();
    for (Money payment : payments.progress()) {
      assertTrue(payment.amount().signum() >= 0);
      sum = sum.plus(payment);
    }
    assertEquals(total, sum);
    assertTrue(payments.balance().isZero());
  }

  @ParameterizedTest
  @ValueSource(strings = {"JPY", "USD", "KWD"})
  void thePaymentsAreThePriceWhateverTheSharesAre(String code) {
    Currency currency = Currency.getInstance(code);
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Money total =
          new Money(
              BigDecimal.valueOf(random.nextInt(3_000_000), currency.getDefaultFractionDigits()),
              currency);
      PriceTerms terms = drawn(random, currency);
      Payments payments = Payments.of(total, terms);
      String where = code + ", seed " + seed + ": " + payments;
      Money sum = payments.deposit().plus(payments.balance());
      BigDecimal share = terms.depositFraction();
      for (int i = 0; i < payments.progress().size(); i++) {
        sum = sum.plus(payments.progress().get(i));
        share = share.add(terms.progress().get(i).fraction());
        assertTrue(payments.progress().get(i).amount().signum() >= 0, where);
      }
      assertEquals(total, sum, where);
      assertTrue(payments.deposit().amount().signum() >= 0, where);
      assertTrue(payments.balance().amount().signum() >= 0, where);
      if (share.compareTo(BigDecimal.ONE) == 0) {
        assertTrue(payments.balance().isZero(), where);
      }
    }
  }

  /** Shares of 1/100 % that make up the whole price on every other draw. */
  private static PriceTerms drawn(Random random, Currency currency) {
    int left = 10_000;
    int deposit = random.nextInt(left + 1);
    left -= deposit;
    List<ProgressPayment> progress = new ArrayList<>();
    int count = random.nextInt(5);
    for (int i = 0; i < count; i++) {
      boolean last = i == count - 1 && random.nextBoolean();
      int share = last ? left : random.nextInt(left + 1);
      left -= share;
      progress.add(new ProgressPayment("event " + i, BigDecimal.valueOf(share, 4)));
    }
    return PriceTerms.labourOnly(currency, BigDecimal.TEN)
        .withPayments(BigDecimal.valueOf(deposit, 4), progress);
  }
}
