package trammel.app.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.planning.quantity.QuantityPrinter;
import trammel.planning.quantity.UnitSystem;
import trammel.planning.rack.Rack;
import trammel.planning.rack.RackReader;
import trammel.planning.work.PartNeed;
import trammel.planning.work.TubeNeed;
import trammel.planning.work.WorkPlan;

/** Orders against a rack, by processes that are killed and by several at once. */
class RackFileTest {
  /** More with -Dtrammel.kills=1000; every kill costs a start of Java. */
  private static final int KILLS = Integer.getInteger("trammel.kills", 100);

  private static final int WIRE = 100_000;
  private static final Path STANDARD = Path.of("..", "..", "catalogs", "standard");

  @TempDir Path folder;

  private Path rack(String name) throws IOException {
    return Files.writeString(
        folder.resolve(name),
        "format: trammel-rack/1\nitems:\n  wire-035: {quantity: " + WIRE + "}\n");
  }

  @Test
  void jsonStaysJson() throws IOException {
    Catalog catalog = CatalogReader.read(STANDARD);
    Path file = Files.writeString(folder.resolve("rack.json"), "{\"format\": \"trammel-rack/1\"}");
    try (RackFile rack = RackFile.open(file, catalog)) {
      rack.replace(rack.rack());
    }
    assertTrue(Files.readString(file).startsWith("{"));
    try (RackFile rack = RackFile.open(file, catalog)) {
      assertEquals(Rack.empty(UnitSystem.US), rack.rack());
    }
  }

  @Test
  void aFileThatIsNotThereIsSaidSo() {
    Path missing = folder.resolve("none.yaml");
    String message =
        assertThrows(CommandFailure.class, () -> RackFile.open(missing, null)).getMessage();
    assertTrue(message.contains("no rack file"), message);
  }

  /** Two processes take a pound of wire a time; every pound is taken once. */
  @Test
  void twoOrdersAtOnceLoseNothing() throws Exception {
    Path file = rack("rack.yaml");
    Process one = orders(file, folder.resolve("one"), 60);
    Process two = orders(file, folder.resolve("two"), 60);
    assertEquals(0, one.waitFor());
    assertEquals(0, two.waitFor());
    assertEquals(WIRE - 120, whole(file));
  }

  @Test
  void ordersKilledAtAnyMomentLeaveAWholeRack() throws Exception {
    Path file = rack("rack.yaml");
    Random random = new Random(7);
    int last = WIRE;
    for (int i = 0; i < KILLS; i++) {
      Path started = folder.resolve("started");
      Files.deleteIfExists(started);
      Process child = orders(file, started, Integer.MAX_VALUE);
      while (!Files.exists(started)) {
        assertTrue(child.isAlive(), "the ordering process ended by itself");
        Thread.sleep(1);
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(40_000));
      child.destroyForcibly().waitFor();
      int now = whole(file);
      assertTrue(now <= last, now + " lb after " + last);
      last = now;
    }
    assertTrue(last <= WIRE - KILLS, "only " + (WIRE - last) + " orders in all");
  }

  /** The pounds of wire that are left; each order that took one also put one offcut on. */
  private static int whole(Path file) throws IOException {
    Rack rack = RackReader.read(file, CatalogHolder.CATALOG);
    int wire = rack.items().getOrDefault("wire-035", BigDecimal.ZERO).intValueExact();
    int pieces = 0;
    for (Rack.Stick stick : rack.sticks().values()) {
      pieces += stick.count();
    }
    assertEquals(Math.min(WIRE - wire, Orders.MOST_PIECES), pieces, "offcuts on the rack");
    return wire;
  }

  private static final class CatalogHolder {
    static final Catalog CATALOG = CatalogReader.read(STANDARD);
  }

  private static Process orders(Path file, Path started, int count) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Orders.class.getName(),
            file.toString(),
            started.toString(),
            Integer.toString(count))
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  /** The process that is killed: it orders a pound of wire and saws one piece, again and again. */
  static final class Orders {
    /** With this many offcuts on the rack it stops to saw, so that the file stays small. */
    static final int MOST_PIECES = 50;

    public static void main(String[] arguments) throws IOException {
      Path file = Path.of(arguments[0]);
      Catalog catalog = CatalogReader.read(STANDARD);
      for (int i = 0; i < Integer.parseInt(arguments[2]); i++) {
        try (RackFile rack = RackFile.open(file, catalog)) {
          boolean full = rack.rack().sticks().size() >= MOST_PIECES;
          Ordering ordering = new Ordering(catalog, new QuantityPrinter(UnitSystem.US));
          OrderedJob job = new OrderedJob("J", plan(!full), Optional.empty());
          rack.replace(ordering.order(List.of(job), rack.rack()).rack());
        }
        if (i == 0) {
          Files.createFile(Path.of(arguments[1]));
        }
      }
    }

    /** The piece is as long as no offcut is, so each comes from a new stick. */
    private static WorkPlan plan(boolean saws) {
      WorkPlan.Builder plan = new WorkPlan.Builder().add(new PartNeed("wire-035", 1, "test"));
      if (saws) {
        plan.add(new TubeNeed("bar", "dom-1.50x0.120", 5400, 1, "square", "test"));
      }
      return plan.build();
    }
  }
}
