package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

  private static Tree order(Path rack) throws Exception {
    return copy.json(STOP, "order", copy.demoJob("pickup"), "--rack", rack.toString());
  }

  /** Whatever a first order lists, put on the rack, leaves nothing to buy. */
  @Test
  void aJobOrderedWithAFullRackBuysNothing() throws Exception {
    Tree first = copy.json(STOP, "order", copy.demoJob("pickup"));
    StringBuilder full = new StringBuilder(HEAD);
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
    Path rack = Files.writeString(shop.resolve("full.csv"), full.toString());
    Tree second = order(rack);
    assertEquals(List.of(), second.list("suppliers"), full.toString());
    assertFalse(second.list("from_rack").isEmpty());
  }

  /** Bins lose what is taken, and what is bought and what is taken make up what is needed. */
  @Test
  void whatIsOnHandIsNotBoughtAgain() throws Exception {
    Path rack =
        Files.writeString(shop.resolve("bolts.csv"), HEAD + "bin,bolt-0.500-20,,3 1/2 in,,3\n");
    Tree with = order(rack);
    Tree without = copy.json(STOP, "order", copy.demoJob("pickup"));
    assertEquals(bolts(without) - 3, bolts(with), 1e-9);
    assertFalse(Files.readString(rack).contains("bin,bolt-0.500-20"), "the bin is empty");
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
    Path rack = Files.writeString(shop.resolve("empty.csv"), HEAD);
    Tree first = order(rack);
    assertFalse(first.list("back_to_rack").isEmpty());
    String afterFirst = Files.readString(rack);
    assertTrue(afterFirst.contains("stick,"), afterFirst);
    Tree second = order(rack);
    assertFalse(second.list("from_rack").isEmpty());
  }

  @Test
  void aWrongRackIsRefusedAndNotTouched() throws Exception {
    String wrong = HEAD + "stick,no-such-tube,R1,3 ft,,\n";
    Path rack = Files.writeString(shop.resolve("wrong.csv"), wrong);
    Launch.Ended order =
        copy.run("order", "--rack", rack.toString(), copy.demoJob("pickup").toString());
    assertEquals(BAD_INPUT, order.exitCode());
    assertTrue(order.err().contains("wrong.csv, line 2, item"), order.err());
    assertEquals(wrong, Files.readString(rack));
  }
}
