package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Orders with stock on hand, through an installed copy. */
class RackIT {
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;
  private static final String HEAD = "kind,item,name,length,width,quantity\n";

  @TempDir static Path shop;
  private static InstalledCopy copy;

  @BeforeAll
  static void unpack() throws Exception {
    copy = InstalledCopy.unpackedInto(shop);
  }

  /** A shop with the demo pickup and this rack in its ledger. */
  private static Path shopWith(String name, String lines) throws Exception {
    Path folder = Files.createDirectories(shop.resolve(name));
    Files.copy(copy.demoJob("pickup"), folder.resolve("pickup.yaml"));
    Path rack = Files.writeString(shop.resolve(name + ".csv"), HEAD + lines);
    Launch.Ended taken =
        copy.run("ledger", "take", rack.toString(), "--apply", "--shop", folder.toString());
    assertEquals(0, taken.exitCode(), taken.err());
    return folder;
  }

  private static Tree order(Path folder, String... more) throws Exception {
    String[] options = Arrays.copyOf(more, more.length + 1);
    options[more.length] = "--rack";
    return copy.json(STOP, "order", folder.resolve("pickup.yaml"), options);
  }

  private static Tree rack(Path folder) throws Exception {
    return Tree.ofJson(copy.run("ledger", "--json", "--shop", folder.toString()).out());
  }

  /** Whatever a first order lists, put on the rack, leaves nothing to buy. */
  @Test
  void aJobOrderedWithAFullRackBuysNothing() throws Exception {
    Tree first = copy.json(STOP, "order", copy.demoJob("pickup"));
    StringBuilder full = new StringBuilder();
    int name = 0;
    for (Tree supplier : first.list("suppliers")) {
      for (Tree line : supplier.list("lines")) {
        name++;
        String item = line.text("item");
        String[] size = line.text("title").split(", ");
        String last = size[size.length - 1];
        switch (line.text("unit")) {
          case "stick" -> full.append("stick," + item + ",S" + name + "," + last + ",,\n");
          case "sheet" -> {
            String[] sides = last.split(" x ");
            full.append("drop," + item + ",S" + name + "," + sides[1] + "," + sides[0] + ",\n");
          }
          case "set" -> {
            String length = size[0].substring(size[0].lastIndexOf(" x ") + 3);
            full.append("bin," + item + ",," + length + ",,99\n");
          }
          default -> full.append("bin," + item + ",,,,99\n");
        }
      }
    }
    Tree second = order(shopWith("full", full.toString()), "--anyway");
    assertEquals(List.of(), second.list("suppliers"), full.toString());
    assertFalse(second.list("from_rack").isEmpty());
  }

  /** Bins lose what is taken, and what is bought and what is taken make up what is needed. */
  @Test
  void whatIsOnHandIsNotBoughtAgain() throws Exception {
    Path folder = shopWith("bolts", "bin,bolt-0.500-20,,3 1/2 in,,3\n");
    Tree with = order(folder, "--anyway");
    Tree without = copy.json(STOP, "order", copy.demoJob("pickup"));
    assertEquals(bolts(without) - 3, bolts(with), 1e-9);
    for (Tree bin : rack(folder).list("bins")) {
      assertFalse(bin.text("item").equals("bolt-0.500-20"), "the bin is empty");
    }
  }

  private static double bolts(Tree order) {
    double bolts = 0;
    for (Tree supplier : order.list("suppliers")) {
      for (Tree line : supplier.list("lines")) {
        if (line.text("item").equals("bolt-0.500-20") && line.text("title").contains("3 1/2")) {
          bolts += line.number("quantity");
        }
      }
    }
    return bolts;
  }

  /** Offcuts go back with names, and the next order finds them. */
  @Test
  void offcutsGoBackOnTheRackAndAreUsedNext() throws Exception {
    Path folder = shopWith("empty", "");
    Tree first = order(folder, "--anyway");
    assertFalse(first.list("back_to_rack").isEmpty());
    assertFalse(rack(folder).list("sticks").isEmpty());
    Tree second = order(folder, "--anyway");
    assertFalse(second.list("from_rack").isEmpty());
  }

  /** A check of the demo pickup says stop. */
  @Test
  void nothingIsTakenForAJobThatStopsUnlessAnyway() throws Exception {
    Path folder = shopWith("stops", "stick,dom-1.50x0.120,R1,20 ft,,\n");
    String job = folder.resolve("pickup.yaml").toString();
    Path out = folder.resolve("order");
    Launch.Ended held = copy.run("order", "--rack", "--out", out.toString(), job);
    assertEquals(STOP, held.exitCode(), held.err());
    assertTrue(held.err().contains("A check of D-101 says stop"), held.err());
    assertTrue(held.err().contains("--anyway"), held.err());
    assertFalse(Files.exists(out));
    assertEquals(1, rack(folder).list("sticks").size());
    assertEquals("R1", rack(folder).list("sticks").get(0).text("name"));
    Launch.Ended anyway = copy.run("order", "--rack", "--anyway", "--out", out.toString(), job);
    assertEquals(STOP, anyway.exitCode(), anyway.err());
    assertTrue(Files.exists(out.resolve("material-order.html")));
    for (Tree stick : rack(folder).list("sticks")) {
      assertFalse(stick.text("name").equals("R1"), "it is used");
    }
  }

  @Test
  void aDryRunChangesNothing() throws Exception {
    Path folder = shopWith("dry", "stick,dom-1.50x0.120,R1,20 ft,,\n");
    assertFalse(order(folder, "--dry-run").list("from_rack").isEmpty());
    assertEquals(1, rack(folder).list("sticks").size());
  }

  @Test
  void aJobThatCannotBeReadLeavesTheRackAlone() throws Exception {
    Path folder = shopWith("half", "stick,dom-1.50x0.120,R1,20 ft,,\n");
    String job = folder.resolve("pickup.yaml").toString();
    Launch.Ended half = copy.run("order", "--rack", "--anyway", job, "no-such.yaml");
    assertEquals(BAD_INPUT, half.exitCode(), half.err());
    assertTrue(half.err().contains("no-such.yaml"), half.err());
    assertEquals("R1", rack(folder).list("sticks").get(0).text("name"));
  }

  /** The command itself is killed at random moments; a start of it takes about half a second. */
  @Test
  void aKilledOrderLeavesTheRackAsItWasOrAsItWillBe() throws Exception {
    Path folder = shopWith("killed", "stick,dom-1.50x0.120,R1,20 ft,,\n");
    Path ledger = folder.resolve("ledger.sqlite");
    byte[] before = Files.readAllBytes(ledger);
    String was = sticks(folder);
    order(folder, "--anyway");
    String willBe = sticks(folder);
    assertNotEquals(was, willBe);
    Random random = new Random(3);
    for (int i = 0; i < 10; i++) {
      Files.write(ledger, before);
      Process order =
          copy.launcher()
              .start(
                  shop.resolve("killed.out"),
                  shop.resolve("killed.err"),
                  "order",
                  "--rack",
                  "--anyway",
                  folder.resolve("pickup.yaml").toString());
      TimeUnit.MILLISECONDS.sleep(300 + random.nextInt(900));
      order.descendants().forEach(ProcessHandle::destroyForcibly);
      order.destroyForcibly().waitFor();
      String now = sticks(folder);
      assertTrue(now.equals(was) || now.equals(willBe), "kill " + i + ": " + now);
      Launch.Ended check = copy.run("ledger", "check", "--shop", folder.toString());
      assertEquals(0, check.exitCode(), "kill " + i + ": " + check.out());
    }
  }

  private static String sticks(Path folder) throws Exception {
    StringBuilder sticks = new StringBuilder();
    for (Tree stick : rack(folder).list("sticks")) {
      sticks.append(stick.text("name")).append(' ');
    }
    return sticks.toString();
  }

  /** The rack was a file once: that of the shop's folder is taken over, another one is told of. */
  @Test
  void aRackFileOfBeforeIsTakenOver() throws Exception {
    Path folder = Files.createDirectories(shop.resolve("before"));
    Files.copy(copy.demoJob("pickup"), folder.resolve("pickup.yaml"));
    Path file =
        Files.writeString(folder.resolve("rack.csv"), HEAD + "stick,dom-1.50x0.120,R1,20 ft,,\n");
    String job = folder.resolve("pickup.yaml").toString();
    Launch.Ended asBefore = copy.run("order", "--rack", file.toString(), job);
    assertEquals(BAD_INPUT, asBefore.exitCode());
    assertTrue(asBefore.err().contains("ledger take"), asBefore.err());
    assertTrue(Files.exists(file));
    Launch.Ended order = copy.run("order", "--rack", "--anyway", job);
    assertTrue(order.err().contains("rack-taken-over.csv"), order.err());
    assertTrue(order.out().contains("R1"), order.out());
    assertFalse(Files.exists(file));
  }

  @Test
  void aWrongRackIsRefusedAndNotTakenIn() throws Exception {
    Path folder = Files.createDirectories(shop.resolve("wrong"));
    Path rack =
        Files.writeString(shop.resolve("wrong.csv"), HEAD + "stick,no-such-tube,R1,3 ft,,\n");
    Launch.Ended taken =
        copy.run("ledger", "take", rack.toString(), "--apply", "--shop", folder.toString());
    assertEquals(BAD_INPUT, taken.exitCode());
    assertTrue(taken.err().contains("wrong.csv, line 2, item"), taken.err());
    Launch.Ended shown = copy.run("ledger", "--shop", folder.toString());
    assertEquals(BAD_INPUT, shown.exitCode(), shown.out());
    assertTrue(shown.err().contains("no ledger yet"), shown.err());
  }
}
