package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.material.BoltSize;
import trammel.engine.strength.BoltGrade;
import trammel.trade.steel.RoundTube;

/** The standard catalog by metric sizes. */
class MetricStockTest {
  private static final Path CATALOGS = Path.of("..", "..", "catalogs");
  private static final Catalog METRIC =
      CatalogReader.begin(CATALOGS.resolve("standard"), CATALOGS.resolve("metric"))
          .finish(List.of());

  /** Fine threads of ISO 262, table 1 (from memory), by diameter and pitch. */
  private static final Set<String> ISO_262 =
      Set.of("8x1.0", "10x1.25", "12x1.25", "14x1.5", "16x1.5", "18x1.5", "20x1.5", "24x2.0");

  @Test
  void boltsHaveThreadsOfIso262AndClassesOfIso8981() {
    assertEquals(5, METRIC.bolts().size());
    for (BoltSize bolt : METRIC.bolts().values()) {
      String thread = Math.round(bolt.diameterMm()) + "x" + bolt.thread().pitchMm();
      assertTrue(ISO_262.contains(thread), thread);
      assertEquals(BoltGrade.CLASS_10_9, bolt.grade());
      assertEquals(0, bolt.lengths().get(0).lengthMm() % 5, 1e-9);
    }
  }

  /** Outside diameters and walls of EN 10305-1, table of sizes (from memory). */
  @Test
  void tubeAndPlateAreInWholeMillimetres() {
    for (BarMaterial bar : METRIC.bars().values()) {
      if (bar.form() instanceof RoundTube tube) {
        assertTrue(Set.of(32.0, 38.0, 45.0, 50.0).contains(tube.outsideMm()), bar.title());
        assertTrue(Set.of(3.0, 5.0, 6.0).contains(tube.wallMm()), bar.title());
      }
    }
    METRIC
        .plates()
        .values()
        .forEach(
            plate ->
                assertTrue(
                    Set.of(3.0, 5.0, 6.0, 8.0, 10.0).contains(plate.form().thicknessMm()),
                    plate.title()));
  }

  @Test
  void nothingThatIsBoughtIsCalledByInches() {
    List<String> titles = new ArrayList<>();
    METRIC.items().values().forEach(item -> titles.add(item.title() + ", " + item.unit()));
    METRIC.bars().values().forEach(bar -> titles.add(bar.title()));
    METRIC.plates().values().forEach(plate -> titles.add(plate.title()));
    METRIC.bolts().values().forEach(bolt -> titles.add(bolt.title()));
    METRIC.ends().values().forEach(end -> titles.add(end.title()));
    for (String title : titles) {
      assertFalse(
          title.matches(".*(\\d in\\b|\\d/(2|4|8|16|32)\\b|\\bft\\d?\\b|\\blb\\b|grade).*"), title);
    }
  }

  /** The same things in both, so that a plan finds what it asks for whatever the stock. */
  @Test
  void whatHasNoSizeHasTheSameNameInBoth() {
    Catalog inch = CatalogReader.read(CATALOGS.resolve("standard"));
    for (String key : List.of("bump-stop", "air-supply-kit", "brake-hose", "wire-035")) {
      assertTrue(METRIC.items().containsKey(key) && inch.items().containsKey(key), key);
    }
    assertEquals(inch.operations().keySet(), METRIC.operations().keySet());
    assertEquals(inch.limits().keySet(), METRIC.limits().keySet());
  }

  @Test
  void aShopSaysWhichItIs(@TempDir Path shop) throws Exception {
    assertEquals(StandardStock.INCH, StandardStock.of(List.of(shop)));
    Files.writeString(
        shop.resolve("shop.yaml"), "format: trammel-catalog/1\nshop: {stock: metric}\n");
    assertEquals(StandardStock.METRIC, StandardStock.of(List.of(shop)));
  }
}
