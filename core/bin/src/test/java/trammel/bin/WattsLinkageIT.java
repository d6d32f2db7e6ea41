package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration pickup with a Watt's linkage in place of its lateral bar, quoted. */
class WattsLinkageIT {
  /** Its slip yoke has too little room, whatever holds the axle sideways. */
  private static final int STOP = 1;

  private static final double INCH_MM = 25.4;

  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static Path job;

  /** The demo pickup's job with another linkage. */
  private static String onWattsLinkage(Path demos) throws IOException {
    String lateral = "linkage: four-link-lateral";
    String text = Files.readString(demos.resolve("pickup.yaml"));
    assertTrue(text.contains(lateral), "the demo's linkage is written otherwise now");
    return text.replace(lateral, "linkage: watts-linkage");
  }

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
    job =
        Files.writeString(
            shop.resolve("watts.yaml"), onWattsLinkage(copy.demoJob("pickup").getParent()));
  }

  /**
   * The lateral bar of 24.5626 in (docs/hand-worked-job.md) shifts the axle by L - sqrt(L2 -
   * 3.5^2), .24 in, at full bump; the rocker's pin keeps to its line within a tenth of that.
   */
  @Test
  void keepsTheAxleCentral() throws Exception {
    Tree checks = copy.json(STOP, "check", job);
    Tree shift = checks.entry("checks", "check", "lateral-shift");
    double barMm = (24.5626 - Math.sqrt(24.5626 * 24.5626 - 3.5 * 3.5)) * INCH_MM;
    assertTrue(shift.number("value") < 0.1 * barMm, shift.number("value") + " mm");
    for (String id :
        List.of("rocker-dead-point", "rocker-swing", "rocker-strength", "rocker-pivot-bolt")) {
      assertEquals("good", checks.entry("checks", "check", id).text("verdict"), id);
    }
    // What moves keeps clear of the rocker, its carrier and its links.
    for (String id : List.of("clearance-moving", "clearance-between")) {
      assertEquals("good", checks.entry("checks", "check", id).text("verdict"), id);
    }
  }

  /** The rocker is in the plan, its bush in the order, its work in the hours. */
  @Test
  void isPlannedQuotedAndOrdered() throws Exception {
    Tree plan = copy.json(STOP, "plan", job);
    assertEquals(2, plan.entry("plates", "name", "rocker plate").number("quantity"), 0);
    Launch.Ended quote = copy.run("quote", "--full", job.toString());
    assertEquals(STOP, quote.exitCode(), quote.err());
    assertTrue(quote.out().contains("fit rocker, its carrier and its two links"), quote.out());
    assertTrue(quote.out().contains("TOTAL"), quote.out());
    Launch.Ended order = copy.run("order", job.toString());
    assertEquals(STOP, order.exitCode(), order.err());
    assertTrue(order.out().contains("pivot bush"), order.out());
  }

  /** Every part has its place on the body that moves it. */
  @Test
  void partsOfTheRockerMoveWithIt() throws Exception {
    Tree plan = copy.json(STOP, "plan", job);
    assertEquals("rocker", carrier(plan, "rocker plate, front"));
    assertEquals("rocker", carrier(plan, "rocker pivot bush"));
    assertEquals("axle", carrier(plan, "rocker strap"));
  }

  private static String carrier(Tree plan, String part) {
    return plan.entry("assembly.parts", "id", part).text("carrier");
  }

  @Test
  void hasAFitUpSheet() throws Exception {
    Launch.Ended sheet = copy.run("fitup", job.toString());
    assertEquals(STOP, sheet.exitCode(), sheet.err());
    assertTrue(sheet.out().contains("watt-link-upper"), sheet.out());
  }
}
