package trammel.trade.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class MoneyTest {

  /**
   * ISO 4217 minor units: OPC UA Part 3, section 8.61, for JPY and BHD; the rest from the standard,
   * from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "USD, 1.01",
    "EUR, 1.01",
    "GBP, 1.01",
    "AUD, 1.01",
    "INR, 1.01",
    "MRU, 1.01",
    "MGA, 1.01",
    "JPY, 1",
    "KRW, 1",
    "CLP, 1",
    "BHD, 1.005",
    "KWD, 1.005",
    "CLF, 1.0050"
  })
  void amountHasTheCoinsOfItsCurrency(String code, String rounded) {
    assertEquals(rounded, Money.of("1.0050", code).amount().toPlainString());
  }

  /** Half up, once: to the third place first would give 1.24 for 1.2348. */
  @ParameterizedTest
  @CsvSource({"8.950125, 8.95", ".0450, 0.05", ".0250, 0.03", "1.2348, 1.23", "-.005, -0.01"})
  void roundingIsHalfUpAndOnce(String raw, String rounded) {
    assertEquals(new BigDecimal(rounded), Money.of(raw, "USD").amount());
  }

  @Test
  void currenciesDoNotMix() {
    Money dollars = Money.of("1", "USD");
    Money euros = Money.of("1", "EUR");
    assertThrows(IllegalArgumentException.class, () -> dollars.plus(euros));
    assertThrows(IllegalArgumentException.class, () -> dollars.minus(euros));
    assertThrows(IllegalArgumentException.class, () -> dollars.compareTo(euros));
  }

  @Test
  void unreadableMoneyIsRefusedWithAnExample() {
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> Money.of("1,50", "USD"))
            .getMessage()
            .contains("1234.50"));
    assertTrue(
        assertThrows(IllegalArgumentException.class, () -> Money.of("1", "dollar"))
            .getMessage()
            .contains("ISO 4217"));
    assertThrows(IllegalArgumentException.class, () -> Money.of("1", "XAU"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "7824.93; USD; $7,824.93",
        "0.5; USD; $0.50",
        "-1234567; USD; -$1,234,567.00",
        "999; USD; $999.00",
        "1234; JPY; 1,234 JPY",
        "1234.5; EUR; 1,234.50 EUR"
      })
  void textIsReadable(String amount, String code, String text) {
    assertEquals(text, Money.of(amount, code).text());
  }

  /** Arithmetic: 25 % is a 20 % margin, 30 % 23.08, 40 % 28.57, 50 % 33.33, 100 % 50. */
  @ParameterizedTest
  @CsvSource({".25, .2000", ".30, .2308", ".40, .2857", ".50, .3333", "1, .5000"})
  void markupIsASmallerMargin(String markup, String margin) {
    Markup given = new Markup(new BigDecimal(markup));
    assertEquals(new BigDecimal("0" + margin), given.margin().setScale(4, RoundingMode.HALF_UP));
  }

  /** Arithmetic: margin 35 % is markup 53.85 %. */
  @Test
  void marginIsALargerMarkup() {
    BigDecimal markup = Markup.ofMargin(new BigDecimal("0.35")).fraction();
    assertEquals(new BigDecimal("0.5385"), markup.setScale(4, RoundingMode.HALF_UP));
  }

  @Seeds(200)
  void markupAndMarginGoBothWays(Draw draw) {
    long basisPoints = draw.whole(0, 9000);
    BigDecimal margin = BigDecimal.valueOf(basisPoints, 4);
    assertEquals(margin, Markup.ofMargin(margin).margin().setScale(4, RoundingMode.HALF_UP));
  }

  @Test
  void marginOfTheWholePriceIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Markup.ofMargin(BigDecimal.ONE));
    assertThrows(IllegalArgumentException.class, () -> new Markup(new BigDecimal("25")));
  }

  /** Constructed: 1,400 h, 108.80 an hour, 120.89 at a 10 % margin; overhead 60 an hour. */
  @Test
  void hourCostsWagesAndOverheadOverBillableHours() {
    HourlyCost shop =
        new HourlyCost(
            new BigDecimal("28"),
            new BigDecimal("0.22"),
            new BigDecimal("2000"),
            new BigDecimal("0.70"),
            new BigDecimal("84000"));
    assertEquals(0, new BigDecimal("1400").compareTo(shop.billableHours()));
    assertEquals(0, new BigDecimal("60").compareTo(shop.overheadPerHour()));
    assertEquals(0, new BigDecimal("108.80").compareTo(shop.costPerHour()));
    assertEquals(new BigDecimal("120.89"), shop.ratePerHour(new BigDecimal("0.10")));
  }
}
