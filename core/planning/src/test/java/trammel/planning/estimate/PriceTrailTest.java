package trammel.planning.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import trammel.engine.quantity.Phrase;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.labour.LabourFactor;
import trammel.trade.labour.Operation;
import trammel.trade.labour.OperationLine;
import trammel.trade.labour.ThreePoint;
import trammel.trade.money.Contingency;
import trammel.trade.money.CostClass;
import trammel.trade.money.CostLine;
import trammel.trade.money.LabourRate;
import trammel.trade.money.Markup;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.Pricing;
import trammel.trade.money.ProgressPayment;
import trammel.trade.money.Rounding;
import trammel.trade.money.SalesTax;

/** A small price worked by hand: every figure leads back to figures that stand here. */
class PriceTrailTest {
  private static final Currency USD = Currency.getInstance("USD");

  private static PriceTrail trail() {
    return trail(List.of());
  }

  private static PriceTrail trail(List<ProgressPayment> progress) {
    Operation strip =
        new Operation(
            "strip-out", "strip out", "job", new ThreePoint(2, 4, 8), List.of("rust"), "invented");
    HoursEstimate hours =
        new HoursEstimate(
            List.of(
                new OperationLine(
                    strip,
                    1,
                    Phrase.text("1 job"),
                    List.of(new LabourFactor("rust", "rust", 1.15, "terms.hours.rust")),
                    Phrase.of("old springs"))),
            0.3);
    PriceTerms terms =
        new PriceTerms(
            USD,
            LabourRate.door(new BigDecimal("100")),
            Map.of(CostClass.STEEL, new Markup(new BigDecimal("0.25"))),
            BigDecimal.ZERO,
            BigDecimal.ZERO,
            new Contingency.None(),
            List.of(),
            new SalesTax(
                "sales tax",
                new BigDecimal("0.0725"),
                Set.of(CostClass.STEEL),
                SalesTax.RoundedBy.BY_INVOICE),
            new BigDecimal("0.5"),
            progress,
            30,
            Rounding.USUAL);
    List<CostLine> bought =
        List.of(
            steel("plate-a", "A36 plate 3/16 in, 24 in x 24 in", "67.50"),
            steel("plate-b", "A36 plate 3/16 in, 12 in x 12 in", "23.00"));
    return new PriceTrail(
        new Pricing(terms).price(bought, hours), hours, new QuantityPrinter(UnitSystem.US));
  }

  private static CostLine steel(String key, String title, String price) {
    return new CostLine(
        key,
        title,
        CostClass.STEEL,
        BigDecimal.ONE,
        "1 sheet",
        new BigDecimal(price),
        USD,
        Phrase.of("brackets"));
  }

  private static String figure(Explanation explanation, String step) {
    for (Explanation.Step one : explanation.steps()) {
      if (one.text().startsWith(step)) {
        return one.figure();
      }
    }
    throw new AssertionError(step + " is not in " + explanation.steps());
  }

  /** 67.50 x 1.25 = 84.38 and 23.00 x 1.25 = 28.75 (half up); 113.13 x 7.25 % = 8.201925. */
  @Test
  void taxLeadsBackToWhatIsTaxable() {
    Explanation tax = trail().find("tax").get(0);
    assertEquals("$8.20", tax.amount().text());
    assertEquals("$113.13", figure(tax, "taxable: steel"));
    assertEquals("7.25 %", figure(tax, "times the rate"));
    assertEquals("8.201925", figure(tax, "unrounded"));
    assertEquals("0", figure(tax, "not taxable: labour"));
  }

  /** (2 + 16 + 8) / 6 x 1.15 = 4.983 h, billed as 4.98 h. */
  @Test
  void labourLeadsBackToLowLikelyHighAndItsFactor() {
    Explanation strip = trail().find("STRIP-OUT").get(0);
    assertEquals("2 / 4 / 8", figure(strip, "hours a job"));
    assertEquals("1.15", figure(strip, "times rust"));
    assertEquals("4.983 h", figure(strip, "mean"));
    assertEquals("4.98 h", figure(strip, "quantity"));
    assertEquals("$498.00", strip.amount().text());
  }

  /**
   * 113.13 + 498.00 + 8.20 = 619.33. Half of it is 309.665, half up 309.67; 33.3 % are 206.23689,
   * so 206.24; what makes 100 % takes the rest, 619.33 - 309.67 - 206.24 = 103.42.
   */
  @Test
  void everyPaymentLeadsBackToTheTotalAndToThoseBeforeIt() {
    PriceTrail trail =
        trail(
            List.of(
                new ProgressPayment("tacked", new BigDecimal("0.333")),
                new ProgressPayment("painted", new BigDecimal("0.167"))));
    Explanation deposit = trail.find("deposit").get(0);
    assertEquals("$309.67", deposit.amount().text());
    assertEquals("309.665", figure(deposit, "unrounded"));
    Explanation tacked = trail.find("payment-1").get(0);
    assertEquals("$206.24", tacked.amount().text());
    assertEquals("33.3 %", figure(tacked, "times its share"));
    assertEquals("206.23689", figure(tacked, "unrounded"));
    Explanation painted = trail.find("payment-2").get(0);
    assertEquals("$103.42", painted.amount().text());
    assertEquals("16.7 %", figure(painted, "its share, with which the whole price is reached"));
    assertEquals("$309.67", figure(painted, "less the deposit"));
    assertEquals("$206.24", figure(painted, "less payment-1, due when: tacked"));
  }

  @Test
  void someWordsOfATitleFindAllLinesThatHaveThem() {
    List<Explanation> plates = trail().find("3/16 in plate");
    assertEquals(2, plates.size());
    assertEquals("$16.88", figure(plates.get(0), "markup"));
  }

  @Test
  void nonsenseFindsNothingAndTheNamesAreThere() {
    assertEquals(List.of(), trail().find("flux capacitor"));
    assertEquals(List.of(), trail().find("  "));
    assertTrue(trail().names().containsAll(List.of("total", "tax", "labour", "plate-a")));
  }

  @Test
  void everyNameFindsItself() {
    for (String name : trail().names()) {
      assertEquals(name, trail().find(name).get(0).name());
      assertEquals(1, trail().find(name).size(), name);
    }
  }
}
