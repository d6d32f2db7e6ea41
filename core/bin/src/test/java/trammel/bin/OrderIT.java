package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
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

  // --- The rack ---------------------------------------------------------------------------------

  @Test
  void aJobOrderedWithAFullRackBuysNothing() throws Exception {
    Path rack = fullRack(copy.demoJob("pickup"));
    Tree order = copy.json(STOP, "order", copy.demoJob("pickup"), "--rack", rack.toString());
    for (Tree supplier : order.list("suppliers")) {
      for (Tree line : supplier.list("lines")) {
        // Work done elsewhere cannot lie on a rack.
        assertTrue(
            List.of("alignment-check", "driveshaft-rework", "exhaust-rework")
                .contains(line.text("item")),
            line.toString());
      }
    }
    assertFalse(order.list("from_rack").isEmpty());
    Tree second = copy.json(STOP, "order", copy.demoJob("sedan"), "--rack", rack.toString());
    assertFalse(second.list("from_rack").isEmpty());
  }

  @Test
  void whatWasTakenIsNotThereForTheNextOrder() throws Exception {
    Path rack = copyOfDemoRack();
    Tree first = copy.json(STOP, "order", copy.demoJob("pickup"), "--rack", rack.toString());
    assertTrue(Files.readString(rack).contains("An invented rack"));
    Tree again = copy.json(STOP, "order", copy.demoJob("pickup"), "--rack", rack.toString());
    Tree fresh =
        copy.json(STOP, "order", copy.demoJob("pickup"), "--rack", copyOfDemoRack().toString());
    assertEquals(first.toString(), fresh.toString());
    // The four bolts and the one drop of quarter plate on the rack went into the first.
    assertTrue(first.list("from_rack").toString().contains("bolt-0.500-20"), first.toString());
    assertFalse(again.list("from_rack").toString().contains("bolt-0.500-20"), again.toString());
  }

  @Test
  void aDryRunAndAJobThatCannotBeReadLeaveTheRackAlone() throws Exception {
    Path rack = copyOfDemoRack();
    String before = Files.readString(rack);
    String job = copy.demoJob("pickup").toString();
    Launch.Ended dry = copy.run("order", "--dry-run", "--rack", rack.toString(), job);
    assertEquals(STOP, dry.exitCode(), dry.err());
    Path out = folder.resolve("out");
    Launch.Ended half =
        copy.run("order", "--out", out.toString(), "--rack", rack.toString(), job, "no-such.yaml");
    assertEquals(BAD_INPUT, half.exitCode(), half.err());
    assertTrue(half.err().contains("no-such.yaml"), half.err());
    assertFalse(Files.exists(out));
    assertEquals(before, Files.readString(rack));
  }

  @Test
  void aSpoiltRackIsRefusedWithItsLine() throws Exception {
    Path rack =
        Files.writeString(
            folder.resolve("rack.yaml"), "format: trammel-rack/1\nitems:\n  gold: {quantity: 1}\n");
    Launch.Ended ended =
        copy.run("order", "--rack", rack.toString(), copy.demoJob("pickup").toString());
    assertEquals(BAD_INPUT, ended.exitCode());
    assertTrue(ended.err().contains("line 3, items.gold"), ended.err());
  }

  /** The command itself is killed at random moments; a start of it takes about half a second. */
  @Test
  void aKilledOrderLeavesTheOldRackOrTheNewOne() throws Exception {
    Path rack = copyOfDemoRack();
    String before = Files.readString(rack);
    String job = copy.demoJob("pickup").toString();
    copy.run("order", "--rack", rack.toString(), job);
    String after = Files.readString(rack);
    Random random = new Random(3);
    for (int i = 0; i < 25; i++) {
      Files.writeString(rack, before);
      Process order =
          Launch.of(copy.home().resolve("bin/trammel"))
              .with("TRAMMEL_CLASS_ARCHIVE", "off")
              .start(
                  folder.resolve("killed.out"),
                  folder.resolve("killed.err"),
                  "order",
                  "--rack",
                  rack.toString(),
                  job);
      TimeUnit.MILLISECONDS.sleep(300 + random.nextInt(900));
      order.descendants().forEach(ProcessHandle::destroyForcibly);
      order.destroyForcibly().waitFor();
      String now = Files.readString(rack);
      assertTrue(now.equals(before) || now.equals(after), now);
    }
  }

  private Path copyOfDemoRack() throws IOException {
    Path rack = folder.resolve("rack.yaml");
    return Files.writeString(
        rack, Files.readString(copy.home().resolve("catalogs/demo/rack.yaml")));
  }

  /** Long sticks, whole sheets and more than enough of everything else that the job orders. */
  private Path fullRack(Path job) throws Exception {
    StringBuilder rack = new StringBuilder("format: trammel-rack/1\nsticks:\n");
    Tree order = copy.json(STOP, "order", job);
    Tree plan = copy.json(STOP, "plan", job);
    for (Tree section : plan.list("tubes")) {
      String key = section.text("section");
      rack.append("  " + key + ": {bar: " + key + ", length: 240 in, count: 9}\n");
    }
    rack.append("sheets:\n");
    for (String key : List.of("plate-0.188", "plate-0.250", "plate-0.375")) {
      rack.append("  " + key + ": {plate: " + key + ", width: 48 in, length: 96 in, count: 9}\n");
    }
    rack.append("items:\n");
    StringBuilder bolts = new StringBuilder("bolts:\n");
    for (Tree supplier : order.list("suppliers")) {
      for (Tree line : supplier.list("lines")) {
        String key = line.text("item");
        if (key.startsWith("bolt-")) {
          for (Tree bolt : plan.list("bolts")) {
            if (line.text("title").startsWith(bolt.text("size") + " ")) {
              bolts.append(
                  "  - {bolt: "
                      + key
                      + ", length: "
                      + bolt.number("length_mm")
                      + " mm, count: 90}\n");
            }
          }
        } else if (!key.startsWith("dom-")
            && !key.startsWith("box-")
            && !key.startsWith("plate-")
            && !List.of("alignment-check", "driveshaft-rework", "exhaust-rework").contains(key)) {
          rack.append("  " + key + ": {quantity: 900}\n");
        }
      }
    }
    return Files.writeString(folder.resolve("full.yaml"), rack.toString() + bolts);
  }

  // --- Files ------------------------------------------------------------------------------------

  @Test
  void everySupplierGetsATableTheSameForMachinesAndASheet() throws Exception {
    Path out = folder.resolve("out");
    Tree order = copy.json(STOP, "order", copy.demoJob("sedan"), "--out", out.toString());
    int suppliers = order.list("suppliers").size();
    try (Stream<Path> files = Files.list(out)) {
      assertEquals(3 * suppliers, files.count());
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
      assertEquals(
          command.equals("travel") ? 0 : STOP, copy.run(command, pickup, sedan).exitCode());
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
