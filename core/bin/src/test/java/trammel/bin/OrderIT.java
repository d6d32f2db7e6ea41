package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders from a rack, several jobs in one run, and quotes that explain themselves. */
class OrderIT {
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;

  @TempDir static Path shop;
  private static InstalledCopy copy;

  @TempDir Path folder;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
  }

  // --- Files ------------------------------------------------------------------------------------

  @Test
  void everySupplierGetsATableTheSameForMachinesAndASheet() throws Exception {
    Path out = folder.resolve("out");
    Tree order = copy.json(STOP, "order", copy.demoJob("sedan"), "--out", out.toString());
    int suppliers = order.list("suppliers").size();
    try (Stream<Path> files = Files.list(out)) {
      // The order as PDF and page, and the list of what was written.
      assertEquals(3 * suppliers + 3, files.count());
    }
    Tree steel = Tree.ofJson(Files.readString(out.resolve("order-steel-yard.json")));
    BigDecimal sum = BigDecimal.ZERO;
    List<String> rows = Files.readAllLines(out.resolve("order-steel-yard.csv"));
    for (Tree line : steel.list("lines")) {
      sum = sum.add(line.amount("amount"));
    }
    assertEquals(0, sum.compareTo(steel.amount("goods")));
    assertEquals(1 + steel.list("lines").size() + steel.list("charges").size(), rows.size());
    assertTrue(rows.get(0).startsWith("supplier,item,title,quantity,unit,price_each,amount"));
    assertTrue(Files.readString(out.resolve("order-steel-yard.txt")).contains("ordered by ____"));
    Path paper = out.resolve("material-order.pdf");
    assertEquals(List.of(), PdfPages.troubles(paper));
    String printed = PdfPages.text(paper);
    for (Tree supplier : order.list("suppliers")) {
      assertTrue(printed.contains(supplier.text("supplier")), printed);
      String total = String.format(Locale.ROOT, "%,.2f", supplier.amount("total"));
      assertTrue(printed.contains(total), printed);
    }
  }

  // --- Many jobs --------------------------------------------------------------------------------

  @Test
  void severalJobsEndWithATableAndOneBadFileDoesNotStopTheRest() throws Exception {
    String pickup = copy.demoJob("pickup").toString();
    String sedan = copy.demoJob("sedan").toString();
    for (String command : List.of("check", "plan", "quote", "travel", "compare")) {
      Launch.Ended all = copy.run(command, pickup, "no-such.yaml", sedan);
      assertEquals(BAD_INPUT, all.exitCode(), command + all.err());
      assertTrue(all.err().contains("no-such.yaml"), all.err());
      assertTrue(all.out().contains("ALL JOBS"), command);
      assertTrue(all.out().contains("D-101") && all.out().contains("D-102"), command);
      assertEquals(STOP, copy.run(command, pickup, sedan).exitCode(), command);
    }
  }

  /** Its prices would be left out without a word. */
  @Test
  void aLaterJobWithACatalogOfItsOwnIsLeftOutAndNothingIsWritten() throws Exception {
    Path other = Files.createDirectories(folder.resolve("other"));
    Files.createDirectory(other.resolve("catalog"));
    Path sedan = Files.copy(copy.demoJob("sedan"), other.resolve("sedan.yaml"));
    String pickup = copy.demoJob("pickup").toString();
    Path out = folder.resolve("out");

    Launch.Ended ended = copy.run("order", pickup, sedan.toString(), "--out", out.toString());

    assertEquals(BAD_INPUT, ended.exitCode(), ended.err());
    assertTrue(ended.err().contains(sedan + " has a catalog of its own beside it"), ended.err());
    assertTrue(ended.out().contains("D-101"), ended.out());
    assertTrue(!ended.out().contains("D-102"), ended.out());
    assertTrue(Files.notExists(out), "an order without one of its jobs was written");
  }

  /** What is wrong with a layout is said by every command that goes on from it, in one wording. */
  @Test
  void everyCommandSaysStopInTheWordsOfTheQuote() throws Exception {
    String pickup = copy.demoJob("pickup").toString();
    String quoted =
        copy.json(STOP, "quote", copy.demoJob("pickup")).list("stops").get(0).text("words");
    assertTrue(quoted.contains("room left in front of the slip yoke"), quoted);
    for (String command : List.of("plan", "order", "fitup", "travel")) {
      assertEquals(
          quoted,
          copy.json(STOP, command, copy.demoJob("pickup")).list("stops").get(0).text("words"),
          command);
      Launch.Ended ended = copy.run(command, pickup);
      assertEquals(STOP, ended.exitCode(), command);
      assertTrue(ended.out().replaceAll("\\s+", " ").contains("STOP " + quoted), ended.out());
    }
  }

  @Test
  void theTotalsAreTheSumsOfTheJobs() throws Exception {
    Launch.Ended ended =
        copy.run(
            "quote", "--json", copy.demoJob("pickup").toString(), copy.demoJob("sedan").toString());
    Tree both = Tree.ofJson(ended.out());
    BigDecimal sum = BigDecimal.ZERO;
    for (Tree job : both.list("jobs")) {
      sum = sum.add(job.amount("price.total"));
    }
    assertEquals(2, both.list("jobs").size());
    assertEquals(0, sum.compareTo(both.amount("totals.total")));
    BigDecimal alone = copy.json(STOP, "quote", copy.demoJob("sedan")).amount("price.total");
    assertEquals(0, alone.compareTo(both.list("jobs").get(1).amount("price.total")));
  }

  @Test
  void theSameJobTwiceIsRefused() throws Exception {
    String pickup = copy.demoJob("pickup").toString();
    Launch.Ended twice = copy.run("quote", pickup, pickup);
    assertEquals(BAD_INPUT, twice.exitCode());
    assertTrue(twice.err().contains("D-101"), twice.err());
  }

  // --- Where a figure comes from ----------------------------------------------------------------

  @Test
  void everyLineOfTheQuoteCanBeAskedFor() throws Exception {
    Path job = copy.demoJob("pickup");
    Tree quote = copy.json(STOP, "quote", job);
    Tree tax = copy.json(0, "quote", job, "--why", "tax").list("why").get(0);
    assertEquals(0, quote.amount("price.tax").compareTo(tax.amount("amount")));
    Tree labour = copy.json(0, "quote", job, "--why", "labour").list("why").get(0);
    BigDecimal sum = BigDecimal.ZERO;
    for (Tree line : quote.list("price.lines")) {
      if (line.text("class").equals("labour")) {
        sum = sum.add(line.amount("price"));
      }
    }
    assertEquals(0, sum.compareTo(labour.amount("amount")));
    Launch.Ended unknown = copy.run("quote", "--why", "unobtainium", job.toString());
    assertEquals(BAD_INPUT, unknown.exitCode());
    assertTrue(unknown.err().contains("strip-out"), unknown.err());
  }
}
