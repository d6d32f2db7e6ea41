package trammel.plugins.limitingstraps;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.Travel;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PluginCatalog;
import trammel.planning.extension.Commission;
import trammel.planning.extension.LimitedCheck;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.AdditionContract;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.plates.RoundHole;

/**
 * Facts of limiting straps on the sample pickup, held to a sketch by hand: rail's outer face 469.9
 * mm from the centre plane, underside 444.5 mm and top 596.9 mm up, axle tube's top 406.4 mm up.
 * The upper hole is half way up the rail at 520.7 mm and 34.9 mm off it; the lower one is 45.6 mm
 * farther out, two noses of 1.5 hole diameters and 1/4 in.
 */
class LimitingStrapsTest {
  private static final double INCH_MM = 25.4;
  private static final double UPPER_UP_MM = 520.7;
  private static final double TUBE_TOP_MM = 406.4;
  private static final double PASSING_MM = 45.6;

  /** The lateral bar's arc shifts the axle by 5 to 8 mm, and tabs come in steps of 1/16 in. */
  private static final double SKETCH_MM = 3;

  private static Catalog catalog;

  private final LimitingStraps straps = new LimitingStraps();
  private final Chassis pickup = SampleVehicle.pickup();

  @BeforeAll
  static void readCatalog() throws IOException {
    CatalogReader reader = CatalogReader.begin(Path.of("..", "..", "catalogs", "standard"));
    String own = Files.readString(Path.of("src/main/resources", PluginCatalog.FILE));
    assertEquals(Optional.empty(), reader.bring(new PluginCatalog("limiting-straps", own)));
    catalog = reader.finish(List.of());
  }

  private static Layout layout(Chassis chassis, List<ShockUnit> shocks) {
    return new Layout(chassis, SampleVehicle.bars(chassis), SampleVehicle.springs(chassis), shocks);
  }

  private Site site(FieldValues options) {
    return new Site(pickup, options, catalog, UnitSystem.US);
  }

  private WorkPlan plan(Chassis chassis, FieldValues options) {
    Layout layout = layout(chassis, SampleVehicle.shocks(chassis));
    return straps.plan(new Commission(layout, site(options).at(chassis)));
  }

  private static double holeMm(WorkPlan plan, String tab) {
    for (PlateNeed need : plan.plates()) {
      if (need.plate().name().equals(tab)) {
        return ((RoundHole) need.plate().outline().holes().get(0)).centre().yMm();
      }
    }
    throw new AssertionError("no " + tab);
  }

  @Test
  void keepTheContract() {
    new AdditionContract(straps, catalog, pickup).verify();
  }

  /** A strap is tight at the end of the droop: by Pythagoras across the vehicle. */
  @Test
  void theLowerTabIsAsTallAsBringsTheShortestStrapTightAtTheEndOfTheDroop() {
    WorkPlan plan = plan(pickup, FieldValues.none());
    assertEquals("limiting-strap-6", plan.parts().get(0).itemKey());
    double droopMm = 3 * INCH_MM;
    double downMm = Math.sqrt(Math.pow(6 * INCH_MM, 2) - PASSING_MM * PASSING_MM);
    double holeMm = UPPER_UP_MM + droopMm - TUBE_TOP_MM - downMm;
    assertEquals(holeMm, holeMm(plan, "limiting strap axle tab"), SKETCH_MM);
    assertEquals(1.375 * INCH_MM, holeMm(plan, "limiting strap rail tab"), 0.1);
  }

  /** Nylon gives about a tenth under load (from memory); two straps share it. */
  @Test
  void whatIsLeftOfTheShockCountsTheStretchOfTheStraps() {
    double rideMm = 400;
    double hangingMm = hangingMm(plan(pickup, FieldValues.none()), 1.10);
    double leftMm = 12;
    Reading.Value one = room(rideMm, rideMm + hangingMm + leftMm, FieldValues.none());
    assertEquals(leftMm, one.value(), SKETCH_MM);
    assertTrue(one.where().mentions("both wheels hanging"), one.where().toString());

    FieldValues two = FieldValues.none().with(StrapOptions.PER_SIDE, 2);
    double lessMm = hangingMm - hangingMm(plan(pickup, two), 1.05);
    Reading.Value both = room(rideMm, rideMm + hangingMm + leftMm, two);
    assertEquals(lessMm, both.value() - one.value(), 0.5);
  }

  /** How far the axle hangs below ride on straps of 6 in that are so much longer (mm). */
  private static double hangingMm(WorkPlan plan, double stretched) {
    double lengthMm = 6 * INCH_MM * stretched;
    double downMm = Math.sqrt(lengthMm * lengthMm - PASSING_MM * PASSING_MM);
    return downMm - (UPPER_UP_MM - TUBE_TOP_MM - holeMm(plan, "limiting strap axle tab"));
  }

  /** The check's value with upright shocks of a length at ride and fully extended (mm). */
  private Reading.Value room(double rideMm, double openMm, FieldValues options) {
    // Over the axle's line, so that the pinion's turning over the travel does not move them.
    Point3 axle = new Point3(0, 250, pickup.axleCentre().zMm());
    Point3 frame = new Point3(0, 250, axle.zMm() + rideMm);
    List<ShockUnit> shocks =
        List.of(
            new ShockUnit("shock-left", frame, axle, 25, 250, openMm),
            new ShockUnit("shock-right", frame.mirrored(), axle.mirrored(), 25, 250, openMm));
    LayoutAnalysis analysis = new LayoutAnalysis(layout(pickup, shocks), catalog.analysis());
    LimitedCheck limited = straps.checks(site(options)).get(0);
    return (Reading.Value) limited.check().read(analysis);
  }

  /** A strap comes tight before the shock is fully extended: common practice, no source. */
  @Test
  void aShockThatEndsFirstIsAStopAndOneWithTheReserveIsGood() {
    Limit limit = straps.checks(site(FieldValues.none())).get(0).limit();
    assertEquals(Verdict.GOOD, limit.verdict(0.375 * INCH_MM));
    assertEquals(Verdict.LOOK_AGAIN, limit.verdict(0.25 * INCH_MM));
    assertEquals(Verdict.STOP, limit.verdict(-0.1));
  }

  /** Two feet of 2 in a line, welded on both faces; the bolt clamps a tab and the straps' ends. */
  @Test
  void tabsAreWeldedAllAlongTheirFeetAndBoltsClampTabAndStraps() {
    WorkPlan one = plan(pickup, FieldValues.none());
    assertEquals(2, one.welds().size());
    one.welds().forEach(weld -> assertEquals(8 * INCH_MM, weld.totalLengthMm(), 1e-6));
    assertEquals(2, one.parts().get(0).quantity());
    assertEquals(0.5 * INCH_MM, one.bolts().get(0).gripMm(), 1e-6);
    assertEquals(4, one.bolts().get(0).quantity());
    WorkPlan two = plan(pickup, FieldValues.none().with(StrapOptions.PER_SIDE, 2));
    assertEquals(4, two.parts().get(0).quantity());
    assertEquals(0.75 * INCH_MM, two.bolts().get(0).gripMm(), 1e-6);
    assertEquals(4, two.bolts().get(0).quantity());
  }

  @Test
  void aStrapThatWouldHoldTheAxleUpIsRefusedWithWhatIsMissing() {
    Field<?> strap =
        straps.options(catalog).stream().filter(f -> f.key().equals("strap")).findFirst().get();
    @SuppressWarnings("unchecked")
    FieldValues shortest = FieldValues.none().with((Field<String>) strap, "limiting-strap-6");
    Chassis farDown = pickup.withTravel(new Travel(76.2, 6 * INCH_MM));
    String refusal =
        assertThrows(UnworkableLayoutException.class, () -> plan(farDown, shortest))
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(refusal.contains("6 in of droop"), refusal);
    assertTrue(refusal.contains("limiting strap 6 in"), refusal);
    assertTrue(refusal.contains("Ask for less droop"), refusal);
  }

  /** A foot of 2 in with 1/4 in at each end does not stand on the 2 in that a deep notch leaves. */
  @Test
  void aNotchThatLeavesNoRoomForATabIsNamed() {
    Chassis notched = pickup.withRails(pickup.rails().withNotchDepth(4 * INCH_MM));
    String refusal =
        assertThrows(UnworkableLayoutException.class, () -> plan(notched, FieldValues.none()))
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));
    assertTrue(refusal.contains("above the notch"), refusal);
  }
}
