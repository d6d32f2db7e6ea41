package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a shop and a job set of their own, through the commands of an installed copy. */
class OwnNumbersIT {
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;

  @TempDir static Path installed;
  private static InstalledCopy copy;

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(installed);
  }

  /** The demonstration sedan with terms and a shop's catalog of its own. */
  private Path sedan(String terms, String shop) throws IOException {
    String text = Files.readString(copy.demoJob("sedan"));
    Path job = folder.resolve("sedan.yaml");
    Files.writeString(job, text.substring(0, text.indexOf("terms:")) + "terms:\n" + terms);
    if (!shop.isEmpty()) {
      Files.createDirectories(folder.resolve("catalog"));
      Files.writeString(
          folder.resolve("catalog/shop.json"), "{\"format\": \"trammel-catalog/1\", " + shop + "}");
    }
    return job;
  }

  private static Map<String, Tree> lines(Tree quote) {
    Map<String, Tree> lines = new HashMap<>();
    for (Tree line : quote.list("price.lines")) {
      lines.put(line.text("line"), line);
    }
    return lines;
  }

  /** What the quote's lines cost, freight and whole packs among it, is what the order comes to. */
  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void theQuotePaysForAllThatTheOrderBuys(String name) throws Exception {
    Path job = copy.demoJob(name);
    Tree order = copy.json(STOP, "order", job);
    BigDecimal ordered = BigDecimal.ZERO;
    for (Tree supplier : order.list("suppliers")) {
      ordered = ordered.add(supplier.amount("total"));
    }
    Set<String> bought =
        Set.of("steel", "parts", "shop supplies", "outside work", "freight and charges");
    BigDecimal quoted = BigDecimal.ZERO;
    for (Tree line : copy.json(STOP, "quote", job).list("price.lines")) {
      if (bought.contains(line.text("class")) && !line.text("line").equals("supplies-by-labour")) {
        quoted = quoted.add(line.amount("cost"));
      }
    }
    assertEquals(0, ordered.compareTo(quoted), ordered + " ordered, " + quoted + " quoted");
  }

  /** 11 lb for 38.50, of which the job uses a part: billed whole, or by the pound at 3.00. */
  @Test
  void aShopMayKeepTheRestsOfItsPacks() throws Exception {
    Tree whole = lines(copy.json(STOP, "quote", copy.demoJob("sedan"))).get("wire-035");
    assertEquals(new BigDecimal("38.50"), whole.amount("price"));
    Tree kept =
        lines(copy.json(STOP, "quote", sedan("  {}\n", "\"shop\": {\"pack_rests\": \"kept\"}")))
            .get("wire-035");
    double pounds = kept.amount("price").doubleValue() / 3.00;
    assertTrue(pounds > 0 && pounds < 11, kept.toString());
  }

  /** What a rear job brings besides; the sedan's rails are whole, so its body stays on. */
  @Test
  void thePlanHasTheWorkThatARearJobBrings() throws Exception {
    List<String> every = List.of("design", "fit-up-readings", "bench-welding");
    Map<String, Tree> pickup = lines(copy.json(STOP, "quote", copy.demoJob("pickup")));
    Map<String, Tree> sedan = lines(copy.json(STOP, "quote", copy.demoJob("sedan")));
    for (String key : every) {
      assertTrue(pickup.containsKey(key) && sedan.containsKey(key), key);
      assertFalse(pickup.get(key).text("why").isBlank());
    }
    for (String part : List.of("brake-fluid", "gear-oil", "parking-cable-kit")) {
      assertTrue(pickup.containsKey(part) && sedan.containsKey(part), part);
    }
    assertTrue(pickup.containsKey("bed-off"));
    assertFalse(sedan.containsKey("bed-off"));
    assertFalse(sedan.containsKey("cleaner-and-discs"), "billed with the shop supplies");
  }

  /**
   * The tank ends 20 in behind the axle, the nearest weld is the lateral bar's: moved up, it goes.
   */
  @Test
  void aTankNearAWeldComesOut() throws Exception {
    assertFalse(
        lines(copy.json(STOP, "quote", copy.demoJob("sedan"))).containsKey("move-fuel-tank"));
    Path near = sedan("  {}\n", "");
    Files.writeString(
        near,
        Files.readString(near).replace("forward: [-50 in, -26 in]", "forward: [-40 in, -14 in]"));
    Tree line = lines(copy.json(STOP, "quote", near)).get("move-fuel-tank");
    assertTrue(line.text("why").contains("weld"), line.toString());
  }

  /**
   * By hand on the sedan without markups: 2 h at 100.00, one part of 60.00 twice, outside work of
   * 250.00, 75.00 off, and a part of the customer's own that costs nothing but half an hour.
   */
  @Test
  void aJobHasLinesOfItsOwn() throws Exception {
    String shop =
        "\"shop\": {\"labour_rate\": 100, \"overhead\": \"in-rate\", \"supplies\": \"0 %\","
            + " \"contingency_flat\": \"0 %\", \"markup\": {\"parts\": \"0 %\", \"outside\": \"0"
            + " %\"}}";
    Tree plain = copy.json(STOP, "quote", sedan("  {}\n", shop));
    Tree more =
        copy.json(
            STOP,
            "quote",
            sedan(
                """
                  extras:
                    - {title: Wiring loom clear of the notch, kind: hours, hours: 2 h, why: found loose}
                    - {title: Hose clamp, kind: part, price: 60, quantity: 2, why: found rusted}
                    - {title: Powder coat, kind: outside-work, price: 250, why: asked for}
                    - {title: Old springs, kind: credit, price: 75, why: the shop keeps them}
                    - {title: Shocks, kind: customers-part, hours: 0.5 h, why: brought along}
                    - {title: Exhaust hung, kind: operation, operation: shim-transmission, why: asked for}
                """,
                shop));
    Map<String, Tree> lines = lines(more);
    assertEquals(
        0, new BigDecimal("200").compareTo(amount(lines, "extra-wiring-loom-clear-of-the-notch")));
    assertEquals(0, new BigDecimal("120").compareTo(amount(lines, "extra-hose-clamp")));
    assertEquals(0, new BigDecimal("250").compareTo(amount(lines, "extra-powder-coat")));
    assertEquals(0, new BigDecimal("-75").compareTo(amount(lines, "extra-old-springs")));
    assertEquals(0, BigDecimal.ZERO.compareTo(amount(lines, "extra-shocks")));
    assertTrue(lines.get("extra-shocks").text("why").contains("without warranty"));
    assertEquals(0, new BigDecimal("50").compareTo(amount(lines, "extra-shocks-fit")));
    BigDecimal shim = amount(lines, "shim-transmission");
    assertTrue(shim.signum() > 0);
    assertEquals(
        0,
        more.amount("price.subtotal")
            .subtract(plain.amount("price.subtotal"))
            .compareTo(new BigDecimal("545").add(shim)));
  }

  private static BigDecimal amount(Map<String, Tree> lines, String key) {
    return lines.get(key).amount("price");
  }

  /** 30.00 on every job, 12.00 for each of the pickup's two notched rails, 3 % for the card. */
  @Test
  void aShopBillsByItsOwnRules() throws Exception {
    Path job = folder.resolve("pickup.yaml");
    Files.copy(copy.demoJob("pickup"), job);
    Files.createDirectories(folder.resolve("catalog"));
    Files.writeString(
        folder.resolve("catalog/rules.json"),
        """
        {"format": "trammel-catalog/1", "currency": "USD", "prices": "made up for this test",
         "supplier": "shop", "lead_days": 0,
         "items": {
           "disposal": {"title": "waste disposal", "unit": "job", "price": 30, "bought": "supply"},
           "shield": {"title": "heat shield", "unit": "each", "price": 12, "bought": "supply"}},
         "extras": {
           "disposal": {"title": "waste disposal", "item": "disposal"},
           "shields": {"title": "heat shield", "per": "notch-rail", "item": "shield"},
           "card-fee": {"title": "card fee", "share": "3 %"}}}
        """);
    Tree quote = copy.json(STOP, "quote", job);
    Map<String, Tree> lines = lines(quote);
    assertEquals(0, new BigDecimal("30").compareTo(amount(lines, "disposal")));
    assertEquals(0, new BigDecimal("24").compareTo(amount(lines, "shield")));
    BigDecimal fee = amount(lines, "card-fee");
    BigDecimal before = quote.amount("price.subtotal").subtract(fee);
    assertEquals(before.doubleValue() * 0.03, fee.doubleValue(), 0.005 + 1e-9);
  }

  @Test
  void aJobLeavesWorkOutWithAReason() throws Exception {
    Tree quote =
        copy.json(
            STOP,
            "quote",
            sedan(
                """
                  left_out:
                    - {work: design, reason: the same car was drawn up last month}
                    - {work: gear-oil, reason: the customer fills it}
                """,
                ""));
    Map<String, Tree> lines = lines(quote);
    assertFalse(lines.containsKey("design") || lines.containsKey("gear-oil"));
    assertTrue(lines.containsKey("intake"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left_out: [{work: no-such-work, reason: r}] | no-such-work",
        "extras: [{title: T, kind: operation, operation: no-such-work, why: w}] | no-such-work",
        "extras: [{title: T, kind: hours, why: w}] | hours: 2 h",
        "extras: [{title: T, kind: part, hours: 2 h, price: 3, why: w}] | hours",
        "extras: [{title: T, kind: credit, why: w}] | price",
        "extras: [{title: T, kind: gift, why: w}] | gift",
        "extras: [{title: T, kind: hours, hours: 1 h, why: w}, {title: t, kind: hours, hours: 1 h,"
            + " why: w}] | second time"
      })
  void whatCannotBeMeantIsRefusedByName(String terms, String named) throws Exception {
    Launch.Ended ended = copy.run("quote", sedan("  " + terms + "\n", "").toString());
    assertEquals(BAD_INPUT, ended.exitCode(), ended.out());
    assertTrue(ended.err().contains(named), ended.err());
  }

  @Test
  void aLabourRateAloneAsks() throws Exception {
    Launch.Ended ended =
        copy.run("quote", sedan("  {}\n", "\"shop\": {\"labour_rate\": 120}").toString());
    assertEquals(BAD_INPUT, ended.exitCode(), ended.out());
    assertTrue(
        ended.err().contains("Does the rate have rent, power and tools in it?"), ended.err());
  }

  /** A shop says what its tax is called; none is told that it is sales tax. */
  @ParameterizedTest
  @CsvSource({"'', tax", "'\"name\": \"VAT\", ', VAT", "'\"name\": \"sales tax\", ', sales tax"})
  void theTaxIsCalledAsTheShopCallsIt(String name, String called) throws Exception {
    String tax =
        "\"shop\": {\"tax\": {"
            + name
            + "\"rate\": \"19 %\", \"taxable\": [\"parts\"], \"by\":"
            + " \"invoice\"}}";
    Launch.Ended quoted = copy.run("quote", sedan("  {}\n", tax).toString(), "--full");
    assertEquals(STOP, quoted.exitCode(), quoted.err());
    String line =
        quoted.out().lines().filter(one -> one.contains("19 % on")).findFirst().orElseThrow();
    assertTrue(line.strip().startsWith(called + "  "), line);
  }

  /** What is bought for a job of a shop with metric stock is called by millimetres. */
  @Test
  void aShopOfMetricStockBuysByMillimetres() throws Exception {
    Path job = sedan("  {}\n", "\"shop\": {\"stock\": \"metric\"}");
    Tree order = copy.json(STOP, "order", job, "--units", "metric");
    int lines = 0;
    for (Tree supplier : order.list("suppliers")) {
      for (Tree line : supplier.list("lines")) {
        String title = line.text("title");
        assertFalse(title.matches(".*(\\d in\\b|\\d/(2|4|8|16|32)\\b|grade).*"), title);
        lines++;
      }
    }
    assertTrue(lines > 15, lines + " lines");
  }

  /** Two at 60.00 from the hardware house stand on its order, and the quote pays for that order. */
  @Test
  void aPartOfTheJobsOwnIsOrderedAndNamedOnTheQuote() throws Exception {
    Path job =
        sedan(
            """
              extras:
                - {title: Hose clamp, kind: part, price: 60, quantity: 2, supplier: hardware house, why: rusted}
                - {title: Powder coat, kind: outside-work, price: 250, lead_days: 9, why: asked for}
                - {title: Shocks, kind: customers-part, hours: 0.5 h, why: brought along}
                - {title: Wiring loom, kind: hours, hours: 2 h, why: found loose}
            """,
            "");
    Tree order = copy.json(STOP, "order", job);
    Tree hardware = order.entry("suppliers", "supplier", "hardware house");
    Tree clamp = hardware.entry("lines", "item", "extra-hose-clamp");
    assertEquals(0, new BigDecimal("120").compareTo(clamp.amount("amount")));
    Tree unnamed = order.entry("suppliers", "supplier", "supplier to be named");
    assertEquals(1, unnamed.list("lines").size());
    assertEquals(9, unnamed.number("lead_days"));
    Path out = folder.resolve("out");
    copy.run("quote", job.toString(), "--quiet", "--out", out.toString());
    String quote = Files.readString(out.resolve("customer/quote.html"));
    for (String named :
        List.of(
            "2 x Hose clamp.", "Powder coat, done outside", "without warranty", "Wiring loom.")) {
      assertTrue(quote.contains(named), named);
    }
  }

  /** Sent out, nothing is cut in the shop; by hand, every hole is drilled. */
  @Test
  void platesAreCutAsTheShopSays() throws Exception {
    Map<String, Tree> table = lines(copy.json(STOP, "quote", copy.demoJob("sedan")));
    Set<String> keys = new HashSet<>(table.keySet());
    assertTrue(keys.contains("cut-plate") && !keys.contains("drill-plate"), keys.toString());
    Map<String, Tree> out =
        lines(
            copy.json(STOP, "quote", sedan("  {}\n", "\"plate_cutting\": {\"by\": \"sent-out\"}")));
    List<String> cutting = new ArrayList<>(out.keySet());
    cutting.removeIf(key -> !key.startsWith("cutting-to-") && !key.startsWith("pierce-to-"));
    assertTrue(cutting.size() >= 2, out.keySet().toString());
    assertFalse(out.containsKey("cut-plate"));
    Map<String, Tree> hand =
        lines(copy.json(STOP, "quote", sedan("  {}\n", "\"plate_cutting\": {\"by\": \"hand\"}")));
    assertTrue(hand.containsKey("cut-plate-by-hand") && hand.containsKey("drill-plate"));
  }

  private static double step(Tree explained, String text) {
    for (Tree step : explained.list("why").get(0).list("steps")) {
      if (step.text("step").startsWith(text)) {
        return Double.parseDouble(step.text("figure").replaceAll("[^0-9.]", ""));
      }
    }
    throw new AssertionError(text + " is not in " + explained);
  }

  /** Deposit over 94 % is wire; arc time times 30 ft3/h is gas; bolt, nut and washers are a set. */
  @Test
  void wireGasTorchTimeAndBoltsLeadBackToTheirOwnFigures() throws Exception {
    Path job = copy.demoJob("pickup");
    Tree wire = copy.json(0, "quote", job, "--why", "wire-035");
    assertEquals(step(wire, "weld metal") / 0.94, step(wire, "wire needed"), 0.002);
    Tree gas = copy.json(0, "quote", job, "--why", "welding-gas");
    assertEquals(30 * step(gas, "arc time"), step(gas, "gas needed"), 0.02);
    Tree torch = copy.json(0, "quote", job, "--why", "torch-time");
    assertEquals(
        step(torch, "weld metal") / step(torch, "over what"), step(torch, "arc time, all"), 0.001);
    Tree bolts = copy.json(0, "quote", job, "--why", "bolt-0.500-20-89");
    assertEquals(
        3.26, step(bolts, "bolt") + step(bolts, "lock nut") + step(bolts, "two washers"), 1e-9);
  }

  /** A screen is 60 lines here; papers and JSON stay whole. */
  @ParameterizedTest
  @ValueSource(strings = {"pickup", "sedan"})
  void aQuoteFitsAScreenAndSaysWhatToDoNext(String name) throws Exception {
    String brief = copy.run("quote", copy.demoJob(name).toString()).out();
    assertTrue(brief.lines().count() <= 60, brief.lines().count() + " lines");
    for (String needed :
        List.of(
            "LAYOUT", "STOP", "change: ", "labour", "eight of ten", "TOTAL", "NEXT", "--full")) {
      assertTrue(brief.contains(needed), needed);
    }
    String full = copy.run("quote", "--full", copy.demoJob(name).toString()).out();
    for (String needed : List.of("THROUGH THE TRAVEL", "WELDS", "COST BUILD-UP", "TOTAL")) {
      assertTrue(full.contains(needed), needed);
    }
  }

  /** Five lines and the rest add up to the difference of the prices. */
  @Test
  void aComparisonIsASentenceWithTheLinesThatMakeMostOfIt() throws Exception {
    String job = copy.demoJob("sedan").toString();
    String vary = "chosen.linkage_options.lower_length=24 in,26 in";
    Tree json = copy.json(STOP, "compare", copy.demoJob("sedan"), "--vary", vary);
    double change =
        json.list("variants").get(1).number("total") - json.list("variants").get(0).number("total");
    String brief = copy.run("compare", "--vary", vary, job).out();
    String sentence =
        brief.lines().filter(line -> line.contains(" costs ")).findFirst().orElseThrow();
    assertTrue(sentence.contains(String.format(Locale.ROOT, "$%,.2f", Math.abs(change))), sentence);
    double sum = 0;
    for (String line : brief.substring(brief.indexOf(sentence)).split("\n")) {
      if (line.startsWith("  ") && line.matches(".*[+-]\\$[0-9.,]+$")) {
        String amount = line.substring(Math.max(line.lastIndexOf('+'), line.lastIndexOf('-')));
        sum += Double.parseDouble(amount.replaceAll("[$,]", ""));
      }
    }
    assertEquals(change, sum, 0.001);
    assertTrue(brief.lines().count() < 40, brief);
  }

  @Test
  void aCheckBeginsWithWhatIsNotGood() throws Exception {
    String check = copy.run("check", copy.demoJob("pickup").toString()).out();
    assertTrue(check.indexOf("  STOP  ") < check.indexOf("LAYOUT at ride"), check);
  }
}
