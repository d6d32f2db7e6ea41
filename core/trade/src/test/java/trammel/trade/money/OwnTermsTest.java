package trammel.trade.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.quantity.Phrase;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;

/** What a shop sets in its own way. Every expected value is arithmetic by hand. */
class OwnTermsTest {
  private static final Currency USD = Currency.getInstance("USD");
  private static final HoursEstimate NO_HOURS = new HoursEstimate(List.of(), 0);

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  private static Money usd(String amount) {
    return Money.of(amount, "USD");
  }

  private static CostLine part(String price) {
    return new CostLine(
        "part",
        "part",
        CostClass.PARTS,
        BigDecimal.ONE,
        "1 each",
        number(price),
        USD,
        Phrase.of("test"));
  }

  private static HoursEstimate tenHours() {
    Operation work =
        new Operation("work", "Work", "job", ThreePoint.exactly(10), List.of(), "test");
    return new HoursEstimate(
        List.of(new OperationLine(work, 1, Phrase.text("1 job"), List.of(), Phrase.of("test"))), 0);
  }

  private static PriceTerms terms() {
    return PriceTerms.labourOnly(USD, number("105"));
  }

  /** 80.00 at a margin of 20 % of the price is 80 / 0.8 = 100.00. */
  @Test
  void aMarginIsAShareOfThePrice() {
    PriceTerms terms = terms().withMarkup(CostClass.PARTS, Markup.ofMargin(number("0.20")));
    CostBuildUp price = new Pricing(terms).price(List.of(part("80.00")), NO_HOURS);
    assertEquals(usd("100.00"), price.total());
    assertEquals(usd("20.00"), price.total(CostClass.PARTS).profit());
  }

  /** 10 h at 105 with 28 of overhead within and 41.50 of wage cost 695.00 and leave 355.00. */
  @Test
  void anHourWithTheOverheadWithinCostsWageAndOverhead() {
    PriceTerms terms =
        terms().withRate(new LabourRate(number("105"), number("28"), true, number("41.50")));
    ClassTotal labour = new Pricing(terms).price(List.of(), tenHours()).total(CostClass.LABOUR);
    assertEquals(usd("1050.00"), labour.price());
    assertEquals(usd("695.00"), labour.cost());
    assertEquals(usd("355.00"), labour.profit());
  }

  /** The same on top: labour costs its wage, overhead is a line that costs what it says. */
  @Test
  void overheadOnTopIsALineOfItsOwn() {
    PriceTerms terms =
        terms().withRate(new LabourRate(number("105"), number("28"), false, number("41.50")));
    CostBuildUp price = new Pricing(terms).price(List.of(), tenHours());
    assertEquals(usd("1330.00"), price.total());
    assertEquals(usd("415.00"), price.total(CostClass.LABOUR).cost());
    assertEquals(usd("280.00"), price.total(CostClass.OVERHEAD).cost());
    assertEquals(usd("695.00"), price.cost());
  }

  /** 2.125 lies between 2.12 and 2.13, 2.135 between 2.13 and 2.14. */
  @ParameterizedTest
  @CsvSource({
    "2.125, HALF_UP, 2.13",
    "2.125, HALF_EVEN, 2.12",
    "2.135, HALF_UP, 2.14",
    "2.135, HALF_EVEN, 2.14"
  })
  void halfACentGoesWhereTheShopSays(String price, RoundingMode mode, String rounded) {
    PriceTerms terms = terms().withRounding(new Rounding(mode, Optional.empty()));
    assertEquals(usd(rounded), new Pricing(terms).price(List.of(part(price)), NO_HOURS).total());
  }

  /** A total in steps of 0.05, as where the smallest coin is that: from memory, no source. */
  @ParameterizedTest
  @CsvSource({"12.32, 12.30", "12.33, 12.35", "12.35, 12.35", "12.38, 12.40"})
  void theTotalCanBePaidInCash(String exact, String paid) {
    Rounding cash = new Rounding(RoundingMode.HALF_UP, Optional.of(number("0.05")));
    PriceTerms terms = terms().withRounding(cash).withPayments(number("0.5"), List.of());
    CostBuildUp price = new Pricing(terms).price(List.of(part(exact)), NO_HOURS);
    assertEquals(usd(paid), price.total());
    assertEquals(usd(exact), price.subtotal());
    assertEquals(usd(paid), price.payments().deposit().plus(price.payments().balance()));
  }

  /** 3 % of 1,000.00 before it, taxed at 10 % where fees are taxable. */
  @Test
  void aCardFeeIsAShareOfAllOtherLines() {
    PriceShare card = new PriceShare("card-fee", "Card fee", number("0.03"), "paid by card");
    PriceTerms terms =
        terms()
            .withShares(List.of(card))
            .withTax(
                new SalesTax(
                    "tax", number("0.10"), Set.of(CostClass.FEES), SalesTax.RoundedBy.BY_INVOICE));
    CostBuildUp price = new Pricing(terms).price(List.of(part("1000.00")), NO_HOURS);
    assertEquals(usd("30.00"), price.total(CostClass.FEES).price());
    assertEquals(usd("3.00"), price.tax());
    assertEquals(usd("1033.00"), price.total());
  }

  /** A credit of 50.00 takes off 50.00, whatever the markup of its class, and no cost. */
  @Test
  void aCreditCarriesNoMarkup() {
    PriceTerms terms = terms().withMarkup(CostClass.PARTS, new Markup(number("0.25")));
    CostBuildUp price = new Pricing(terms).price(List.of(part("100.00"), part("-50.00")), NO_HOURS);
    assertEquals(usd("75.00"), price.total());
    assertEquals(usd("100.00"), price.cost());
  }

  @Test
  void otherRoundingIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> new Rounding(RoundingMode.DOWN, Optional.empty()));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Rounding(RoundingMode.HALF_UP, Optional.of(BigDecimal.ZERO)));
  }
}
