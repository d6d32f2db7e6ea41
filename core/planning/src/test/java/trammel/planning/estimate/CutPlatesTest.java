package trammel.planning.estimate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.assembly.Assembly;
import trammel.assembly.Held;
import trammel.assembly.Place;
import trammel.brackets.material.MissingEntryException;
import trammel.brackets.work.OperationNeed;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Outline;
import trammel.trade.plates.Plate;
import trammel.trade.plates.Point2;
import trammel.trade.plates.RoundHole;
import trammel.trade.plates.Straight;

/**
 * Two plates 10 x 10 in of 1/4 in, each with two holes of 1/2 in and one of 1/4 in, by hand at the
 * standard catalog's speeds: 60 in a minute, 0.007 min a pierce, 1/4 in of lead-in, and holes from
 * 1.5 thicknesses on cut with the plate.
 */
class CutPlatesTest {
  private static final double INCH_MM = 25.4;
  private static final Path STANDARD = Path.of("..", "..", "catalogs", "standard");

  @TempDir Path shop;

  private Catalog cutBy(String way) throws IOException {
    Files.writeString(
        shop.resolve("shop.json"),
        "{\"format\": \"trammel-catalog/1\", \"plate_cutting\": {\"by\": \"" + way + "\"}}");
    return CatalogReader.read(List.of(STANDARD, shop));
  }

  private static WorkPlan plan(double thicknessIn) {
    Outline outline =
        new Outline(square(10 * INCH_MM), List.of(hole(2, 0.5), hole(5, 0.5), hole(8, 0.25)));
    Plate plate = new Plate("test plate", outline, thicknessIn * INCH_MM, "plate");
    return new WorkPlan.Builder()
        .add(
            new PlateNeed(
                plate,
                thicknessIn == 0.25 ? "plate-0.250" : "plate-0.188",
                Collections.nCopies(2, new Held(Assembly.FRAME, Place.RIDE)),
                Phrase.of("test")))
        .add(new OperationNeed("drill-plate", 6, "6 holes", Phrase.of("bolt holes")))
        .build();
  }

  private static Loop square(double sideMm) {
    Point2 a = new Point2(0, 0);
    Point2 b = new Point2(sideMm, 0);
    Point2 c = new Point2(sideMm, sideMm);
    Point2 d = new Point2(0, sideMm);
    return new Loop(
        List.of(new Straight(a, b), new Straight(b, c), new Straight(c, d), new Straight(d, a)));
  }

  private static RoundHole hole(double atIn, double diameterIn) {
    return new RoundHole(new Point2(atIn * INCH_MM, 5 * INCH_MM), diameterIn * INCH_MM);
  }

  private static Optional<OperationNeed> operation(WorkPlan plan, String key) {
    return plan.operations().stream().filter(one -> one.operationKey().equals(key)).findFirst();
  }

  private static double quantity(WorkPlan plan, String key) {
    return operation(plan, key).orElseThrow().quantity();
  }

  /** Each 40 + 2 x 1.5708 = 43.142 in of cut and 3 pierces: 2 x (43.892 / 60 + 0.021) min. */
  @Test
  void theTableBillsLengthAndPiercesAndDrillsOnlyTheSmallHoles() throws IOException {
    WorkPlan cut = CutPlates.addedTo(plan(0.25), cutBy("table"));
    assertEquals(2 * (43.892 / 60 + 0.021) / 60, quantity(cut, "cut-plate"), 1e-5);
    assertEquals(1, quantity(cut, "set-up-table"));
    assertEquals(2, quantity(cut, "drill-plate"));
    assertTrue(operation(cut, "drill-plate").orElseThrow().why().mentions("4 holes more are cut"));
  }

  /** Two outlines of 40 in are 80 / 12 ft; all six holes are drilled as before. */
  @Test
  void byHandTheOutlinesAreCutAndEveryHoleIsDrilled() throws IOException {
    WorkPlan cut = CutPlates.addedTo(plan(0.25), cutBy("hand"));
    assertEquals(80 / 12.0, quantity(cut, "cut-plate-by-hand"), 1e-9);
    assertEquals(6, quantity(cut, "drill-plate"));
    assertTrue(operation(cut, "cut-plate").isEmpty());
  }

  /** 2 x 43.142 / 12 ft of cut and 2 x 3 pierces are bought, at the prices up to 3/8 in. */
  @Test
  void sentOutIsBoughtByLengthAndPierce() throws IOException {
    WorkPlan cut = CutPlates.addedTo(plan(0.25), cutBy("sent-out"));
    assertEquals(2, cut.parts().size());
    assertEquals("cutting-to-0.375", cut.parts().get(0).itemKey());
    assertEquals(2 * 43.1416 / 12, cut.parts().get(0).quantity(), 1e-4);
    assertEquals("pierce-to-0.375", cut.parts().get(1).itemKey());
    assertEquals(6, cut.parts().get(1).quantity());
    assertTrue(operation(cut, "cut-plate").isEmpty());
    assertEquals(2, quantity(cut, "drill-plate"));
  }

  /** In 3/16 in plate the hole of 1/4 in is 1.33 thicknesses: it is drilled there too. */
  @Test
  void aThinnerPlateIsCutFaster() throws IOException {
    WorkPlan cut = CutPlates.addedTo(plan(0.1875), cutBy("table"));
    assertEquals(2 * ((43.1416 + 3 * 0.1875) / 90 + 0.018) / 60, quantity(cut, "cut-plate"), 1e-5);
  }

  @Test
  void aPlateThickerThanAnySpeedIsRefusedByName() {
    assertTrue(
        assertThrows(
                MissingEntryException.class,
                () -> CatalogReader.read(STANDARD).plateCutting().setup(25.4))
            .getMessage()
            .contains("plate_cutting.speeds"));
  }

  @Test
  void aPlanWithoutPlatesNeedsNoCutting() throws IOException {
    assertEquals(WorkPlan.NONE, CutPlates.addedTo(WorkPlan.NONE, cutBy("table")));
  }
}
