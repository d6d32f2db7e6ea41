package trammel.planning.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Currency;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.quantity.Phrase;
import trammel.planning.compare.PriceDifference.Cause;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;
import trammel.trade.money.Contingency;
import trammel.trade.money.CostClass;
import trammel.trade.money.CostLine;
import trammel.trade.money.LabourRate;
import trammel.trade.money.Markup;
import trammel.trade.money.Money;
import trammel.trade.money.PriceShare;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.ProgressPayment;
import trammel.trade.money.Rounding;
import trammel.trade.money.SalesTax;

/** Whatever makes two prices differ is named, and the parts are the difference to the cent. */
class PriceDifferencesTest {
  private static final int SEEDS = 400;
  private static final Currency USD = Currency.getInstance("USD");
  private static final CostClass[] BOUGHT = {
    CostClass.STEEL, CostClass.PARTS, CostClass.SUPPLIES, CostClass.OUTSIDE
  };

  private static BigDecimal number(String text) {
    return new BigDecimal(text);
  }

  /** Invented: 10 h of work, and steel for 200.00 of which the tax is due. */
  private static PricedWork work(PriceTerms terms) {
    return new PricedWork(List.of(steel("200.00")), tenHours(), terms);
  }

  private static CostLine steel(String price) {
    return new CostLine(
        "plate",
        "plate",
        CostClass.STEEL,
        BigDecimal.ONE,
        "1 sheet",
        number(price),
        USD,
        Phrase.of("tabs"));
  }

  private static HoursEstimate tenHours() {
    return hours(10);
  }

  private static HoursEstimate hours(double hours) {
    Operation weld =
        new Operation(
            "weld", "weld", "job", new ThreePoint(hours, hours, hours), List.of(), "invented");
    return new HoursEstimate(
        List.of(new OperationLine(weld, 1, Phrase.text("1 job"), List.of(), Phrase.of("all"))),
        0.3);
  }

  private static PriceTerms terms() {
    return PriceTerms.labourOnly(USD, number("85"))
        .withTax(
            new SalesTax(
                "sales tax",
                number("0.06875"),
                Set.of(CostClass.STEEL),
                SalesTax.RoundedBy.BY_INVOICE));
  }

  private static PriceDifference only(PricedWork first, PricedWork other) {
    List<PriceDifference> parts = PriceDifferences.between(first, other);
    assertEquals(1, parts.size(), parts.toString());
    return parts.get(0);
  }

  /** By hand: 10 h at 95 instead of 85 are 100.00 more, and no tax is due on labour. */
  @Test
  void anotherLabourRateIsNamedWithWhatItCosts() {
    PricedWork first = work(terms());
    PricedWork other = work(terms().withRate(LabourRate.door(number("95"))));
    assertEquals(
        new PriceDifference(
            Cause.TERMS, "labour rate an hour", "$85.00", "$95.00", Money.of("100.00", "USD")),
        only(first, other));
  }

  /** By hand: 200.00 x 6.875 % = 13.75; x 8.25 % = 16.50. */
  @Test
  void anotherTaxRateIsNamedAsItIsWritten() {
    PricedWork first = work(terms());
    PricedWork other = work(terms().withTax(terms().tax().withRate(number("0.0825"))));
    assertEquals(
        new PriceDifference(Cause.TERMS, "sales tax", "6.875 %", "8.25 %", Money.of("2.75", "USD")),
        only(first, other));
  }

  /** By hand: 25 % on 200.00 of steel are 50.00, and 6.875 % tax on these 3.44 (3.4375). */
  @Test
  void aMarkupBringsItsTaxAlong() {
    PricedWork other = work(terms().withMarkup(CostClass.STEEL, new Markup(number("0.25"))));
    PriceDifference part = only(work(terms()), other);
    assertEquals("markup on steel", part.name());
    assertEquals(Money.of("53.44", "USD"), part.change());
  }

  /**
   * By hand: 12.50 an hour for 10 h; 3.5 % and then 5 % of 850.00 of labour; half of it taxable.
   */
  @Test
  void overheadSuppliesContingencyAndWasteHavePartsOfTheirOwn() {
    PricedWork first = work(terms());
    assertEquals(
        Money.of("125.00", "USD"),
        only(
                first,
                work(terms().withRate(LabourRate.withOverheadOnTop(number("85"), number("12.50")))))
            .change());
    assertEquals(
        Money.of("29.75", "USD"),
        only(first, work(terms().withAdditions(BigDecimal.ZERO, number("0.035")))).change());
    PriceDifference contingency =
        only(first, work(terms().withContingency(new Contingency.PartOfLabour(number("0.05")))));
    assertEquals(Money.of("42.50", "USD"), contingency.change());
    assertEquals("none", contingency.first());
    assertEquals("5 % of labour", contingency.other());
    // 10 % of 200.00 is 20.00, with tax 21.38 (1.375 on top, 15.125 in all against 13.75).
    assertEquals(
        Money.of("21.38", "USD"),
        only(first, work(terms().withAdditions(number("0.10"), BigDecimal.ZERO))).change());
  }

  /** By hand: one hour of 85.00 more and 40.00 of steel with 2.75 of tax. */
  @Test
  void otherWorkIsNamedByClass() {
    PricedWork other = new PricedWork(List.of(steel("240.00")), hours(11), terms());
    List<PriceDifference> parts = PriceDifferences.between(work(terms()), other);
    assertEquals(
        List.of(
            new PriceDifference(
                Cause.WORK, "steel", "$200.00", "$240.00", Money.of("40.00", "USD")),
            new PriceDifference(
                Cause.WORK, "labour", "$850.00", "$935.00", Money.of("85.00", "USD")),
            new PriceDifference(
                Cause.WORK, "sales tax on the work", "$13.75", "$16.50", Money.of("2.75", "USD"))),
        parts);
  }

  /** By hand: the price of 1,063.75 is paid by 319.13 and 744.62, or by halves of 531.88. */
  @Test
  void anotherDepositChangesWhatIsPaidWhenAndNotThePrice() {
    PricedWork first = work(terms().withPayments(number("0.30"), List.of()));
    PricedWork other =
        work(
            terms()
                .withPayments(
                    BigDecimal.ZERO,
                    List.of(
                        new ProgressPayment("bars tacked", number("0.5")),
                        new ProgressPayment("on the road", number("0.5")))));
    assertEquals(List.of(), PriceDifferences.between(first, other));
    List<String> changes = new ArrayList<>();
    for (PriceDifference part : PriceDifferences.ofPayments(first.price(), other.price())) {
      changes.add(part.name() + " " + part.change().text());
    }
    assertEquals(
        List.of(
            "deposit with the order -$319.13",
            "balance on delivery -$744.62",
            "when: bars tacked $531.88",
            "when: on the road $531.87"),
        changes);
  }

  /** ISO 4217: no coins below the yen, cents, a thousand fils to the dinar. */
  @ParameterizedTest
  @ValueSource(strings = {"JPY", "USD", "KWD"})
  void thePartsAreTheDifferenceToTheSmallestCoin(String code) {
    Currency currency = Currency.getInstance(code);
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      PricedWork first = drawn(random, currency);
      PricedWork other = drawn(random, currency);
      Money difference = other.price().total().minus(first.price().total());
      String where = code + ", seed " + seed;
      assertEquals(difference, sum(currency, PriceDifferences.between(first, other)), where);
      assertEquals(
          difference,
          sum(currency, PriceDifferences.ofPayments(first.price(), other.price())),
          where);
      assertTrue(PriceDifferences.between(first, first).isEmpty(), where);
    }
  }

  private static Money sum(Currency currency, List<PriceDifference> parts) {
    Money sum = Money.zero(currency);
    for (PriceDifference part : parts) {
      sum = sum.plus(part.change());
    }
    return sum;
  }

  private static PricedWork drawn(Random random, Currency currency) {
    List<CostLine> bought = new ArrayList<>();
    for (int i = 0; i < random.nextInt(6); i++) {
      CostClass costClass = BOUGHT[random.nextInt(BOUGHT.length)];
      BigDecimal price = BigDecimal.valueOf(random.nextInt(200_000), 3);
      bought.add(
          new CostLine(
              "line-" + i,
              "line",
              costClass,
              BigDecimal.ONE,
              "1",
              price,
              currency,
              Phrase.of("drawn")));
    }
    double likely = 1 + 40 * random.nextDouble();
    Operation operation =
        new Operation(
            "work",
            "work",
            "job",
            new ThreePoint(likely / 2, likely, 3 * likely),
            List.of(),
            "drawn");
    OperationLine line =
        new OperationLine(operation, 1, Phrase.text("1 job"), List.of(), Phrase.of("drawn"));
    return new PricedWork(
        bought, new HoursEstimate(List.of(line), 0.3), drawnTerms(random, currency));
  }

  private static PriceTerms drawnTerms(Random random, Currency currency) {
    Map<CostClass, Markup> markups = new EnumMap<>(CostClass.class);
    for (CostClass costClass : BOUGHT) {
      if (random.nextBoolean()) {
        markups.put(costClass, new Markup(BigDecimal.valueOf(random.nextInt(5000), 4)));
      }
    }
    Set<CostClass> taxable = EnumSet.noneOf(CostClass.class);
    for (CostClass costClass : CostClass.values()) {
      if (random.nextBoolean()) {
        taxable.add(costClass);
      }
    }
    SalesTax.RoundedBy[] roundings = SalesTax.RoundedBy.values();
    return new PriceTerms(
        currency,
        new LabourRate(
            BigDecimal.valueOf(random.nextInt(20_000), 2),
            BigDecimal.valueOf(random.nextInt(3_000), 2),
            random.nextBoolean(),
            BigDecimal.valueOf(random.nextInt(6_000), 2)),
        markups,
        BigDecimal.valueOf(random.nextInt(2000), 4),
        BigDecimal.valueOf(random.nextInt(1000), 4),
        contingency(random),
        random.nextBoolean()
            ? List.of()
            : List.of(new PriceShare("card-fee", "card fee", number("0.03"), "paid by card")),
        new SalesTax(
            "sales tax",
            BigDecimal.valueOf(random.nextInt(12_000), 5),
            taxable,
            roundings[random.nextInt(2)]),
        BigDecimal.valueOf(random.nextInt(5001), 4),
        List.of(
            new ProgressPayment("bars tacked", BigDecimal.valueOf(random.nextInt(2500), 4)),
            new ProgressPayment(
                random.nextBoolean() ? "welded" : "on the road", new BigDecimal("0.25"))),
        1 + random.nextInt(90),
        new Rounding(
            random.nextBoolean() ? RoundingMode.HALF_UP : RoundingMode.HALF_EVEN,
            random.nextBoolean() ? Optional.empty() : Optional.of(number("0.05"))));
  }

  private static Contingency contingency(Random random) {
    return switch (random.nextInt(3)) {
      case 0 -> new Contingency.None();
      case 1 -> new Contingency.PartOfLabour(BigDecimal.valueOf(random.nextInt(1000), 4));
      default -> new Contingency.HoursToChance(0.5 + random.nextInt(46) / 100.0);
    };
  }
}
