package trammel.trade.money;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.quantity.Phrase;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;

class CostBuildUpTest {

  private static final Currency USD = Currency.getInstance("USD");

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  private static Money usd(String amount) {
    return Money.of(amount, "USD");
  }

  private static CostLine line(String key, CostClass costClass, String quantity, String unitCost) {
    return new CostLine(
        key,
        key,
        costClass,
        number(quantity),
        quantity,
        number(unitCost),
        USD,
        Phrase.of("invented"));
  }

  private static HoursEstimate hours(ThreePoint... hours) {
    List<OperationLine> lines = new ArrayList<>();
    for (ThreePoint one : hours) {
      Operation operation =
          new Operation("op-" + lines.size(), "Operation", "job", one, List.of(), "invented");
      lines.add(
          new OperationLine(operation, 1, Phrase.text("1 job"), List.of(), Phrase.of("invented")));
    }
    return new HoursEstimate(lines, 0.3);
  }

  private static PriceTerms constructedTerms() {
    return new PriceTerms(
        USD,
        LabourRate.door(number("95.00")),
        Map.of(
            CostClass.PARTS,
            new Markup(number("0.25")),
            CostClass.STEEL,
            new Markup(number("0.20"))),
        BigDecimal.ZERO,
        number("0.035"),
        new Contingency.PartOfLabour(number("0.08")),
        List.of(),
        new SalesTax(
            "sales tax",
            number("0.0725"),
            Set.of(CostClass.PARTS, CostClass.STEEL),
            SalesTax.RoundedBy.BY_INVOICE),
        number("0.50"),
        List.of(),
        30,
        Rounding.USUAL);
  }

  private static List<CostLine> constructedCosts() {
    return List.of(
        line("parts", CostClass.PARTS, "1", "1862.40"),
        line("steel", CostClass.STEEL, "1", "312.85"));
  }

  /** Constructed quote, worked apart from this project, to the cent. */
  @Test
  void constructedQuoteIsRightToTheCent() {
    CostBuildUp quote =
        new Pricing(constructedTerms()).price(constructedCosts(), hours(ThreePoint.exactly(46.5)));
    assertEquals(usd("4417.50"), quote.total(CostClass.LABOUR).price());
    assertEquals(usd("2328.00"), quote.total(CostClass.PARTS).price());
    assertEquals(usd("375.42"), quote.total(CostClass.STEEL).price());
    assertEquals(usd("154.61"), quote.total(CostClass.SUPPLIES).price());
    assertEquals(usd("353.40"), quote.total(CostClass.CONTINGENCY).price());
    assertEquals(usd("7628.93"), quote.subtotal());
    assertEquals(usd("2703.42"), quote.taxable());
    assertEquals(usd("196.00"), quote.tax());
    assertEquals(usd("7824.93"), quote.total());
    assertEquals(usd("3912.47"), quote.payments().deposit());
    assertEquals(usd("3912.46"), quote.payments().balance());
  }

  /** Streamlined Sales and Use Tax Agreement, section 324: half a cent goes up. Arithmetic. */
  @ParameterizedTest
  @CsvSource({"123.45, .0725, 8.95", ".75, .06, .05", ".50, .05, .03", "17.64, .07, 1.23"})
  void taxIsRoundedHalfUp(String base, String rate, String tax) {
    SalesTax law = SalesTax.NONE.withRate(number(rate));
    assertEquals(usd(tax), law.on(usd(base)));
  }

  /** The same section: by item .24, by invoice .25 on three items of .99 at 8.25 %. */
  @ParameterizedTest
  @CsvSource({"BY_ITEM, .24", "BY_INVOICE, .25"})
  void taxIsRoundedWhereTheSellerSays(SalesTax.RoundedBy rounding, String tax) {
    SalesTax law = new SalesTax("sales tax", number("0.0825"), Set.of(CostClass.PARTS), rounding);
    PriceTerms terms = PriceTerms.labourOnly(USD, number("95")).withTax(law);
    List<CostLine> items =
        List.of(
            line("a", CostClass.PARTS, "1", ".99"),
            line("b", CostClass.PARTS, "1", ".99"),
            line("c", CostClass.PARTS, "1", ".99"));
    CostBuildUp quote = new Pricing(terms).price(items, hours());
    assertEquals(usd(tax), quote.tax());
    assertEquals(usd("2.97"), quote.subtotal());
  }

  /** Arithmetic: 100.00 of steel, 10 % waste, then 20 % markup: 132.00. */
  @Test
  void wasteComesBeforeMarkupAndOnlyOnSteel() {
    PriceTerms terms =
        new PriceTerms(
            USD,
            LabourRate.withOverheadOnTop(number("100"), number("20")),
            Map.of(
                CostClass.STEEL, new Markup(number("0.20")),
                CostClass.PARTS, new Markup(number("0.20"))),
            number("0.10"),
            BigDecimal.ZERO,
            new Contingency.None(),
            List.of(),
            SalesTax.NONE,
            BigDecimal.ZERO,
            List.of(),
            30,
            Rounding.USUAL);
    CostBuildUp quote =
        new Pricing(terms)
            .price(
                List.of(
                    line("tube", CostClass.STEEL, "10", "10.00"),
                    line("shock", CostClass.PARTS, "2", "50.00")),
                hours(ThreePoint.exactly(3)));
    assertEquals(usd("132.00"), quote.total(CostClass.STEEL).price());
    assertEquals(usd("120.00"), quote.total(CostClass.PARTS).price());
    assertEquals(usd("60.00"), quote.total(CostClass.OVERHEAD).price());
    assertEquals(usd("612.00"), quote.total());
    assertEquals(
        "10 at 10.00, waste $10.00, markup $22.00", quote.lines(CostClass.STEEL).get(0).how());
    assertEquals(4, quote.classTotals().size());
    assertEquals(usd("0"), quote.payments().deposit());
  }

  /** Contingency to P80 is the hours from the mean to P80 at the labour rate. */
  @Test
  void contingencyToAChanceIsTheMissingHours() {
    HoursEstimate job = hours(new ThreePoint(4, 6, 14));
    PriceTerms terms =
        PriceTerms.labourOnly(USD, number("100"))
            .withContingency(new Contingency.HoursToChance(0.8));
    CostBuildUp quote = new Pricing(terms).price(List.of(), job);
    // Beta-PERT 4, 6, 14: mean 7.000, P80 8.503 h.
    assertEquals(usd("700.00"), quote.total(CostClass.LABOUR).price());
    assertEquals(usd("150.00"), quote.total(CostClass.CONTINGENCY).price());
    assertTrue(quote.lines(CostClass.CONTINGENCY).get(0).line().why().mentions("P80"));
  }

  @Test
  void priceHoldsForItsDays() {
    assertEquals(
        LocalDate.of(2027, 1, 14), constructedTerms().validUntil(LocalDate.of(2026, 12, 15)));
  }

  @Test
  void costInAnotherCurrencyIsRefusedByName() {
    CostLine euros =
        new CostLine(
            "shock",
            "Shock",
            CostClass.PARTS,
            BigDecimal.ONE,
            "1",
            BigDecimal.TEN,
            Currency.getInstance("EUR"),
            Phrase.of("invented"));
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> new Pricing(constructedTerms()).price(List.of(euros), hours()))
            .getMessage();
    assertTrue(message.contains("shock") && message.contains("EUR") && message.contains("USD"));
  }

  private static List<CostLine> costs(Draw draw) {
    return draw.listOf(0, 12, CostBuildUpTest::cost);
  }

  private static CostLine cost(Draw draw) {
    CostClass kind =
        draw.oneOf(CostClass.STEEL, CostClass.PARTS, CostClass.SUPPLIES, CostClass.OUTSIDE);
    String quantity = draw.decimal("0", "60", 3).toPlainString();
    return line("line", kind, quantity, draw.decimal("0", "900", 4).toPlainString());
  }

  private static PriceTerms terms(int taxBasisPoints, SalesTax.RoundedBy rounding, int deposit) {
    return new PriceTerms(
        USD,
        LabourRate.withOverheadOnTop(number("117.35"), number("12.40")),
        Map.of(
            CostClass.STEEL,
            new Markup(number("0.333")),
            CostClass.PARTS,
            new Markup(number("0.275"))),
        number("0.07"),
        number("0.0375"),
        new Contingency.HoursToChance(0.8),
        List.of(),
        new SalesTax(
            "sales tax",
            BigDecimal.valueOf(taxBasisPoints, 4),
            EnumSet.of(CostClass.STEEL, CostClass.PARTS, CostClass.SUPPLIES),
            rounding),
        BigDecimal.valueOf(deposit, 2),
        List.of(),
        30,
        Rounding.USUAL);
  }

  /** Conservation: no cent is lost or made between lines, classes, tax, deposit and balance. */
  @Seeds(150)
  void everyCentIsAccountedFor(Draw draw) {
    List<CostLine> costs = costs(draw);
    double likely = draw.between(0, 60);
    int taxBasisPoints = draw.whole(0, 1200);
    int deposit = draw.whole(0, 100);
    SalesTax.RoundedBy rounding = draw.oneOf(SalesTax.RoundedBy.class);
    HoursEstimate job = hours(new ThreePoint(likely * 0.7, likely, likely * 2));
    CostBuildUp quote = new Pricing(terms(taxBasisPoints, rounding, deposit)).price(costs, job);
    Money lines = Money.zero(USD);
    for (PriceLine line : quote.lines()) {
      assertEquals(line.price(), line.amount().plus(line.waste()).plus(line.markup()));
      lines = lines.plus(line.price());
    }
    Money classes = Money.zero(USD);
    int count = 0;
    for (ClassTotal total : quote.classTotals()) {
      classes = classes.plus(total.price());
      count += total.lines().size();
    }
    assertEquals(quote.lines().size(), count);
    assertEquals(lines, quote.subtotal());
    assertEquals(classes, quote.subtotal());
    assertEquals(quote.total(), quote.subtotal().plus(quote.tax()));
    assertEquals(quote.total(), quote.payments().deposit().plus(quote.payments().balance()));
  }

  /**
   * A different tax rate changes tax and total and nothing else; a higher one never lowers them.
   */
  @Seeds(100)
  void taxRateTouchesTaxAndTotalOnly(Draw draw) {
    List<CostLine> costs = costs(draw);
    int lower = draw.whole(0, 1000);
    int rise = draw.whole(1, 1000);
    SalesTax.RoundedBy rounding = draw.oneOf(SalesTax.RoundedBy.class);
    HoursEstimate job = hours(new ThreePoint(3, 5, 9));
    CostBuildUp low = new Pricing(terms(lower, rounding, 50)).price(costs, job);
    CostBuildUp high = new Pricing(terms(lower + rise, rounding, 50)).price(costs, job);
    assertEquals(low.lines(), high.lines());
    assertEquals(low.subtotal(), high.subtotal());
    assertEquals(low.taxable(), high.taxable());
    assertTrue(low.tax().compareTo(high.tax()) <= 0);
    assertEquals(high.tax().minus(low.tax()), high.total().minus(low.total()));
  }

  /** Tax by item and by invoice differ by at most half a cent an item. */
  @Seeds(100)
  void roundingPlacesDifferByHalfACentAnItem(Draw draw) {
    List<CostLine> costs = costs(draw);
    int rate = draw.whole(0, 1200);
    HoursEstimate job = hours(new ThreePoint(3, 5, 9));
    CostBuildUp item = new Pricing(terms(rate, SalesTax.RoundedBy.BY_ITEM, 0)).price(costs, job);
    CostBuildUp invoice =
        new Pricing(terms(rate, SalesTax.RoundedBy.BY_INVOICE, 0)).price(costs, job);
    BigDecimal difference = item.tax().minus(invoice.tax()).amount().abs();
    BigDecimal most =
        new BigDecimal("0.005").multiply(BigDecimal.valueOf(item.taxableLines().size() + 1L));
    assertTrue(difference.compareTo(most) <= 0, difference + " over " + most);
  }

  /** Arithmetic: thirds of the constructed quote's 7,824.93 do not round to the total by luck. */
  @Test
  void depositProgressAndBalanceAddUpToTheTotal() {
    PriceTerms terms =
        PriceTerms.labourOnly(USD, number("95.00"))
            .withPayments(
                number("0.3333"),
                List.of(
                    new ProgressPayment("frame back on its stands", number("0.2222")),
                    new ProgressPayment("bars tacked", number("0.1111"))));
    CostBuildUp quote = new Pricing(terms).price(constructedCosts(), hours());
    assertEquals(usd("2175.25"), quote.total());
    assertEquals(usd("725.01"), quote.payments().deposit());
    assertEquals(List.of(usd("483.34"), usd("241.67")), quote.payments().progress());
    assertEquals(usd("725.23"), quote.payments().balance());
  }

  @Test
  void paymentsOverTheWholePriceAreRefused() {
    PriceTerms terms = PriceTerms.labourOnly(USD, number("95.00"));
    List<ProgressPayment> half = List.of(new ProgressPayment("tacked", number("0.5")));
    String message =
        assertThrows(IllegalArgumentException.class, () -> terms.withPayments(number("0.6"), half))
            .getMessage();
    assertTrue(message.contains("110 %"), message);
  }
}
