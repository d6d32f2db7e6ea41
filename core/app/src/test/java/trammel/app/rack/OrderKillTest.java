package trammel.app.rack;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
import trammel.app.files.FileLock;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.planning.rack.Rack;
import trammel.planning.work.PartNeed;
import trammel.planning.work.TubeNeed;
import trammel.planning.work.WorkPlan;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** Processes that order from a rack are killed: what was taken and put back stays in balance. */
class OrderKillTest {
  /** More with -Dtrammel.kills=1000; every kill costs a start of Java. */
  private static final int KILLS = Integer.getInteger("trammel.kills", 200);

  private static final int NUTS = 100_000;
  private static final String NUT = "jam-nut-0.750-16";
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));

  @TempDir Path folder;

  @Test
  void ordersKilledAtAnyMomentLeaveAWholeRack() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("rack.csv"),
            "kind,item,name,length,width,quantity\r\nbin," + NUT + ",,,," + NUTS + "\r\n");
    Random random = new Random(7);
    int last = NUTS;
    for (int i = 0; i < KILLS; i++) {
      Path started = folder.resolve("started");
      Files.deleteIfExists(started);
      Process child = orders(file, started);
      while (!Files.exists(started)) {
        assertTrue(child.isAlive(), "the ordering process ended by itself");
        Thread.sleep(1);
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(40_000));
      child.destroyForcibly().waitFor();
      int now = nutsLeft(file);
      assertTrue(now <= last, now + " nuts after " + last);
      last = now;
    }
    assertTrue(last <= NUTS - KILLS, "only " + (NUTS - last) + " orders in all");
  }

  /** Each order took a nut and, while there were few, put one offcut on. */
  private static int nutsLeft(Path file) {
    Rack rack = new RackFile(file, CATALOG, UnitSystem.US).read();
    int nuts = rack.held(NUT, 0).intValueExact();
    assertEquals(Math.min(NUTS - nuts, Orders.MOST_PIECES), rack.sticks().size(), "offcuts");
    assertEquals(BigDecimal.valueOf(nuts), rack.bins().get(0).quantity());
    return nuts;
  }

  private static Process orders(Path file, Path started) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            Orders.class.getName(),
            file.toString(),
            started.toString())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  /** The process that is killed: it orders a nut and saws one piece, again and again. */
  static final class Orders {
    /** With this many offcuts on the rack it stops to saw, so that the file stays small. */
    static final int MOST_PIECES = 50;

    public static void main(String[] arguments) throws IOException {
      Path file = Path.of(arguments[0]);
      boolean first = true;
      while (true) {
        try (FileLock lock = FileLock.of(file)) {
          RackFile rack = new RackFile(file, CATALOG, UnitSystem.US);
          Rack before = rack.read();
          boolean full = before.sticks().size() >= MOST_PIECES;
          Ordering ordering = new Ordering(CATALOG, new QuantityPrinter(UnitSystem.US));
          OrderedJob job = new OrderedJob("J", plan(!full), Optional.empty());
          rack.write(ordering.order(List.of(job), before).rack().rack());
        }
        if (first) {
          Files.createFile(Path.of(arguments[1]));
          first = false;
        }
      }
    }

    /** The piece is as long as no offcut is, so each comes from a new stick. */
    private static WorkPlan plan(boolean saws) {
      WorkPlan.Builder plan = new WorkPlan.Builder().add(new PartNeed(NUT, 1, "test"));
      if (saws) {
        plan.add(new TubeNeed("bar", "dom-1.50x0.120", 5400, 1, "square", "test"));
      }
      return plan.build();
    }
  }
}
