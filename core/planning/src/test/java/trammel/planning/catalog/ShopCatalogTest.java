package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.brackets.material.BarMaterial;
import trammel.planning.job.Job;
import trammel.planning.job.JobReader;
import trammel.reading.tree.BadInputException;
import trammel.trade.money.Contingency;
import trammel.trade.money.CostClass;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.ProgressPayment;
import trammel.trade.money.SalesTax;

/** A shop's own folder over the standard catalog, and a job's terms over the shop's. */
class ShopCatalogTest {
  private static final Catalog STANDARD = CatalogReader.read(CatalogFolders.STANDARD);

  @TempDir private Path own;

  private Catalog with(String fileName, String text) {
    CatalogFolders.write(own.resolve(fileName), text);
    return CatalogReader.read(List.of(CatalogFolders.STANDARD, own));
  }

  @Test
  void shopChangesAPriceAndKeepsTheRestOfTheEntry() {
    Catalog catalog =
        with(
            "prices.json",
            """
            {"format": "trammel-catalog/1", "prices": "own list", "currency": "USD",
             "items": {"bump-stop": {"price": 9.75}},
             "coils": {"coil-12": {"rates": {"150": {"price": 61}}}}}
            """);
    Item before = STANDARD.item("bump-stop");
    Item after = catalog.item("bump-stop");
    assertEquals(new BigDecimal("9.75"), after.price());
    assertEquals(before.title(), after.title());
    assertEquals(before.supplier(), after.supplier());
    assertEquals(new BigDecimal("61"), catalog.item("coil-12-150").price());
    assertEquals(STANDARD.coil("coil-12-150"), catalog.coil("coil-12-150"));
    assertEquals(STANDARD.item("coil-12-160"), catalog.item("coil-12-160"));
    assertEquals(STANDARD.items().keySet(), catalog.items().keySet());
    assertTrue(catalog.priceSources().contains("own list"));
  }

  /** From 2026-08-01 ninety days lead to 2026-10-30. */
  @Test
  void pricesAreOldAfterTheDaysOfTheShop() {
    Catalog catalog =
        with(
            "prices.json",
            """
            {"format": "trammel-catalog/1", "prices": "own list", "currency": "USD",
             "priced_on": "2026-08-01", "items": {"bump-stop": {"price": 9.75}}}
            """);
    assertEquals(Map.of(), catalog.oldPrices(LocalDate.of(2026, 10, 30)));
    assertEquals(
        List.of(LocalDate.of(2026, 8, 1)),
        List.copyOf(catalog.oldPrices(LocalDate.of(2026, 10, 31)).values()));
    assertEquals(Map.of(), STANDARD.oldPrices(LocalDate.of(2050, 1, 1)));
  }

  /** The payments of a job stand in place of the shop's. */
  @Test
  void progressPaymentsAreTheJobsOrTheShops() {
    Catalog catalog =
        with(
            "shop.json",
            """
            {"format": "trammel-catalog/1",
             "shop": {"progress": [{"at": "tacked", "share": "25 %"}], "hands": 3}}
            """);
    assertEquals(
        List.of(new ProgressPayment("tacked", new BigDecimal("0.25"))),
        catalog.shop().terms().progress());
    assertEquals(3, catalog.shop().labour().hands());
    assertEquals(List.of(), STANDARD.shop().terms().progress());
  }

  /** The eight bytes with which every PNG begins (ISO/IEC 15948, 5.2). */
  @Test
  void theLetterheadIsTheShopsOwnWithItsMarkFromBesideTheCatalog() throws IOException {
    byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    Files.write(own.resolve("mark.png"), png);
    String text =
        """
        {"format": "trammel-catalog/1",
         "shop": {"name": "Corner Shop", "address": "1 Example Street", "phone": "555-0101",
                  "licence": "no. 7", "logo": "mark.png", "start_days": 10,
                  "warranty": "a year", "change_rule": "by letter"}}
        """;
    Shop shop = with("shop.json", text).shop();
    assertEquals("Corner Shop", shop.name());
    assertEquals(List.of("1 Example Street", "555-0101", "no. 7"), shop.letterhead().lines());
    assertEquals(Optional.of(own.resolve("mark.png")), shop.letterhead().logo());
    assertEquals(
        new Promises(Optional.of(10), Optional.of("a year"), Optional.of("by letter")),
        shop.promises());
    assertEquals(Promises.NONE, STANDARD.shop().promises());
    Path above = Files.write(own.resolveSibling(own.getFileName() + ".png"), png);
    for (String name : List.of("../" + above.getFileName(), above.toAbsolutePath().toString())) {
      String other = text.replace("mark.png", name.replace("\\", "/"));
      BadInputException away =
          assertThrows(BadInputException.class, () -> with("shop.json", other), name);
      assertTrue(away.getMessage().contains("beside the catalog"), away.getMessage());
    }
    Files.delete(above);
    Files.writeString(own.resolve("mark.png"), "<svg/>");
    BadInputException refused =
        assertThrows(BadInputException.class, () -> with("shop.json", text));
    assertEquals("shop.logo", refused.problems().get(0).field());
    assertTrue(refused.getMessage().contains("neither a PNG nor a JPEG"), refused.getMessage());
    Files.delete(own.resolve("mark.png"));
    refused = assertThrows(BadInputException.class, () -> with("shop.json", text));
    assertTrue(refused.getMessage().contains("no file"), refused.getMessage());
  }

  @Test
  void shopWeldsWithAWireOfItsOwn() {
    String wire =
        """
        {"format": "trammel-catalog/1", "prices": "own list", "currency": "USD",
         "supplier": "own", "lead_days": 1,
         "items": {"wire-1.0": {"title": "wire 1 mm", "unit": "kg", "price": 6.10,
                                "bought": "supply"}},
         "welding": {"wire_item": "wire-1.0"}}
        """;
    assertEquals("wire-1.0", with("wire.json", wire).welding().fillerItem());
    assertEquals("wire-035", STANDARD.welding().fillerItem());
    BadInputException refused =
        assertThrows(
            BadInputException.class,
            () -> with("wire.json", wire.replace("\"wire-1.0\"}}", "\"wire-2\"}}")));
    assertEquals("welding.wire_item", refused.problems().get(0).field());
  }

  @Test
  void shopAddsAMetricTubeInYaml() {
    Catalog catalog =
        with(
            "tubes.yaml",
            """
            format: trammel-catalog/1
            units: metric
            prices: own list
            supplier: the yard round the corner
            lead_days: 1
            bars:
              tube-42x4:
                title: round tube 42.4 x 4 mm
                shape: round
                outside: 42.4
                wall: 4
                steel: hrew-1010
                sticks: [{length: 6000, price: 58}]
            """);
    BarMaterial tube = catalog.bar("tube-42x4");
    assertEquals(42.4, tube.tube().outsideDiameterMm());
    assertEquals(6000, tube.sticks().get(0).lengthMm());
    assertEquals("the yard round the corner", tube.supplier());
  }

  @Test
  void changeInOtherUnitsIsRefused() {
    BadInputException refused =
        assertThrows(
            BadInputException.class,
            () ->
                with(
                    "cut.yaml",
                    "format: trammel-catalog/1\nunits: metric\ncutting: {saw_kerf: 2}\n"));
    assertEquals(1, refused.problems().size());
    assertEquals("cutting", refused.problems().get(0).field());
    assertTrue(refused.problems().get(0).remedy().contains("units: us"));
  }

  @Test
  void demonstrationShopChangesTermsOnly() {
    Catalog demo =
        CatalogReader.read(
            List.of(CatalogFolders.STANDARD, CatalogFolders.DEMO.resolve("catalog")));
    assertTrue(demo.shop().name().contains("invented"));
    PriceTerms terms = demo.shop().terms();
    assertEquals(new BigDecimal("105.00"), terms.rate().perHour());
    assertTrue(terms.rate().overheadInRate());
    assertEquals(0, new BigDecimal("0.0725").compareTo(terms.tax().rate()));
    assertEquals(Set.of(CostClass.PARTS, CostClass.STEEL), terms.tax().taxable());
    assertEquals(STANDARD.items(), demo.items());
    assertEquals(STANDARD.limits(), demo.limits());
  }

  @Test
  void jobThatSaysNothingHasTheShopsTerms() {
    Shop shop = STANDARD.shop();
    assertEquals(shop.terms(), shop.termsFor(job("terms: {}").terms()));
  }

  @Test
  void jobMovesTheTermsThatItNames() {
    Job job =
        job(
            """
            terms:
              labour_rate: 88.50
              markup: {steel: 12 %}
              contingency: 90
              tax: {rate: 8.25 %, taxable: [labour], by: item}
              valid_days: 10
            """);
    PriceTerms shop = STANDARD.shop().terms();
    PriceTerms terms = STANDARD.shop().termsFor(job.terms());
    assertEquals(new BigDecimal("88.50"), terms.rate().perHour());
    assertEquals(shop.rate().overheadPerHour(), terms.rate().overheadPerHour());
    assertEquals(shop.tax().name(), terms.tax().name());
    assertEquals(0, new BigDecimal("0.12").compareTo(terms.markup(CostClass.STEEL).fraction()));
    assertEquals(shop.markup(CostClass.PARTS), terms.markup(CostClass.PARTS));
    assertEquals(new Contingency.HoursToChance(0.9), terms.contingency());
    assertEquals(SalesTax.RoundedBy.BY_ITEM, terms.tax().rounding());
    // Taxable labour takes with it what is charged on labour.
    assertTrue(terms.tax().isDueOn(CostClass.OVERHEAD));
    assertTrue(terms.tax().isDueOn(CostClass.CONTINGENCY));
    assertEquals(10, terms.validDays());
    assertEquals(shop.depositFraction(), terms.depositFraction());
  }

  /** A rate on the door says nothing until it is known whether the overhead is in it. */
  @Test
  void aLabourRateAloneAsksWhetherTheOverheadIsInIt() {
    String rate =
        """
        {"format": "trammel-catalog/1", "shop": {"labour_rate": 120}}
        """;
    BadInputException asked = assertThrows(BadInputException.class, () -> with("shop.json", rate));
    assertEquals(1, asked.problems().size());
    assertEquals("shop.overhead", asked.problems().get(0).field());
    assertTrue(asked.problems().get(0).text().contains("in-rate"));
    String answered = rate.replace("120}", "120, \"overhead\": \"on-top\"}");
    PriceTerms terms = with("shop.json", answered).shop().terms();
    assertEquals(new BigDecimal("28.00"), terms.rate().overheadOnTop());
    assertEquals(new BigDecimal("148.00"), terms.rate().billedPerHour());
  }

  /** Arithmetic: a margin of 20 % of the price is a markup of 25 % on the cost. */
  @Test
  void aShopMayStateMarginsAndAFlatContingency() {
    PriceTerms terms =
        with(
                "shop.json",
                """
                {"format": "trammel-catalog/1",
                 "shop": {"markup": {"parts_margin": "20 %"}, "contingency_flat": "8 %",
                          "rounding": "half-even", "cash_rounding": 0.05,
                          "tax": {"name": "VAT"}}}
                """)
            .shop()
            .terms();
    assertEquals(0, new BigDecimal("0.25").compareTo(terms.markup(CostClass.PARTS).fraction()));
    assertEquals(0, new BigDecimal("0.25").compareTo(terms.markup(CostClass.STEEL).fraction()));
    assertEquals(new Contingency.PartOfLabour(new BigDecimal("0.08")), terms.contingency());
    assertEquals("half even", terms.rounding().word());
    assertEquals("VAT", terms.tax().name());
    PriceTerms ofJob =
        STANDARD.shop().termsFor(job("terms: {markup: {steel_margin: 50 %}}").terms());
    assertEquals(0, BigDecimal.ONE.compareTo(ofJob.markup(CostClass.STEEL).fraction()));
  }

  @Test
  void twoWaysToSayOneThingAreRefused() {
    BadInputException both =
        assertThrows(
            BadInputException.class,
            () ->
                job(
                    "terms: {markup: {parts: 10 %, parts_margin: 10 %}, contingency: 80,"
                        + " contingency_flat: 5 %}"));
    assertEquals(
        List.of("terms.markup.parts_margin", "terms.contingency_flat"),
        both.problems().stream().map(one -> one.field()).toList());
  }

  @Test
  void aRuleOfTheShopNamesOneThingToBill() {
    String rule =
        """
        {"format": "trammel-catalog/1",
         "extras": {"disposal": {"title": "waste steel and fluids", %s}}}
        """;
    Catalog catalog =
        with("rules.json", rule.formatted("\"per\": \"notch-rail\", \"item\": \"gear-oil\""));
    assertEquals("notch-rail", catalog.extras().get("disposal").per());
    for (String wrong :
        List.of(
            "\"per\": \"no-such-work\", \"item\": \"gear-oil\"",
            "\"item\": \"no-such-item\"",
            "\"item\": \"gear-oil\", \"share\": \"3 %\"",
            "\"per\": \"notch-rail\", \"share\": \"3 %\"")) {
      assertThrows(BadInputException.class, () -> with("rules.json", rule.formatted(wrong)), wrong);
    }
    assertEquals(Map.of(), STANDARD.extras());
  }

  @Test
  void jobInAnotherCurrencyIsRefused() {
    Job job = job("terms: {currency: EUR}");
    IllegalArgumentException refused =
        assertThrows(IllegalArgumentException.class, () -> STANDARD.shop().termsFor(job.terms()));
    assertTrue(refused.getMessage().contains("EUR"));
    assertTrue(refused.getMessage().contains("USD"));
  }

  private static Job job(String terms) {
    String text = CatalogFolders.text(CatalogFolders.DEMO.resolve("sedan.yaml"));
    return JobReader.read("job.yaml", text.substring(0, text.indexOf("terms:")) + terms);
  }
}
