package trammel.plugins.antirollbar;

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
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.Verdict;
import trammel.engine.clearance.Box;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
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

/**
 * Facts of an anti-roll bar on the sample pickup: rails 18 1/2 in out, their underside 17 1/2 in
 * up, axle 14 1/2 in up, 3 in of bump and of droop, tyres 65 in less 9 in apart.
 */
class AxleAntiRollBarTest {
  private static final double INCH_MM = 25.4;
  private static final double POUND_N = 4.4482216152605;

  private static Catalog catalog;

  private final AxleAntiRollBar addition = new AxleAntiRollBar();
  private final Chassis pickup = SampleVehicle.pickup();

  @BeforeAll
  static void readCatalog() throws IOException {
    CatalogReader reader = CatalogReader.begin(Path.of("..", "..", "catalogs", "standard"));
    String own = Files.readString(Path.of("src/main/resources", PluginCatalog.FILE));
    assertEquals(Optional.empty(), reader.bring(new PluginCatalog("anti-roll-bar", own)));
    catalog = reader.finish(List.of());
  }

  private static Layout layout(Chassis chassis) {
    return new Layout(
        chassis,
        SampleVehicle.bars(chassis),
        SampleVehicle.springs(chassis),
        SampleVehicle.shocks(chassis));
  }

  private Site site(FieldValues options) {
    return new Site(pickup, options, catalog, UnitSystem.US);
  }

  private Layout with(FieldValues options) {
    return addition.onto(layout(pickup), site(options));
  }

  @SuppressWarnings("unchecked")
  private FieldValues choosing(String option, String key) {
    Field<?> field =
        addition.options(catalog).stream().filter(f -> f.key().equals(option)).findFirst().get();
    return FieldValues.none().with((Field<String>) field, key);
  }

  private LayoutAnalysis analysis(Layout layout) {
    return new LayoutAnalysis(layout, catalog.analysis());
  }

  @Test
  void keepsTheContract() {
    new AdditionContract(addition, catalog, pickup).verify();
  }

  /** Behind the housing, the arms beyond the rails; the bar turns with both wheels. */
  @Test
  void itStandsBehindTheHousingWithUprightLinksBesideTheRails() {
    AntiRollBar bar = with(FieldValues.none()).antiRollBar().orElseThrow();

    double housingMm = pickup.axle().takenHousingRadiusMm();
    assertTrue(
        Math.hypot(bar.barEnd().xMm(), pickup.axleCentre().zMm() - bar.barEnd().zMm())
            >= housingMm + 12.7 + 11,
        "clear of the housing: " + bar.barEnd());
    assertTrue(bar.linkTop().yMm() >= 18.5 * INCH_MM + 1.75 * INCH_MM - 1, "" + bar.linkTop());
    assertEquals(bar.linkTop().xMm(), bar.armEnd().xMm(), 1e-9);
    double topMm = bar.barEnd().zMm() + 3 * INCH_MM + 11;
    assertTrue(topMm < 17.5 * INCH_MM, "at full bump it stays under the rails: " + topMm);
  }

  /** By Hooke: rate times how far one wheel up and one down drive the arms' ends apart. */
  @Test
  void itsStrengthIsJudgedWithOneWheelUpAndOneDown() {
    Layout layout = with(FieldValues.none());
    AntiRollBar bar = layout.antiRollBar().orElseThrow();
    LimitedCheck limited = addition.checks(site(FieldValues.none())).get(0);
    Reading.Value value = (Reading.Value) limited.check().read(analysis(layout));

    double trackMm = pickup.axle().trackMm();
    double twistMm = 6 * INCH_MM * 2 * bar.armEnd().yMm() / trackMm;
    double forceN = bar.size().rateNPerMm() * twistMm;
    double diameterMm = 0.875 * INCH_MM;
    double shearMPa = 16 * forceN * 12 * INCH_MM / (Math.PI * Math.pow(diameterMm, 3));
    double yieldMPa = 150_000 * POUND_N / (INCH_MM * INCH_MM);
    double byHand = yieldMPa / Math.sqrt(3) / shearMPa;
    assertEquals(byHand, value.value(), 0.03 * byHand);
    assertTrue(value.where().mentions("left wheel at full"), value.where().toString());
    Limit limit = limited.limit();
    assertEquals(Verdict.GOOD, limit.verdict(1.5));
    assertEquals(Verdict.LOOK_AGAIN, limit.verdict(1.2));
    assertEquals(Verdict.STOP, limit.verdict(0.9));
  }

  /** A thicker bar is stiffer by the fourth power, as far as the arms do not bend. */
  @Test
  void aThickerBarIsStiffer() {
    AntiRollBar thin = with(choosing("bar", "anti-roll-bar-3-4")).antiRollBar().orElseThrow();
    AntiRollBar thick = with(choosing("bar", "anti-roll-bar-1")).antiRollBar().orElseThrow();

    double byPower = Math.pow(1 / 0.75, 4);
    double ratio = thick.size().torsionOnlyNPerMm() / thin.size().torsionOnlyNPerMm();
    double straight = thin.size().straightMm() / thick.size().straightMm();
    assertEquals(byPower * straight, ratio, 1e-6 * byPower);
  }

  /** One bar, two arms, bearings and links; a bolt an end of each link; all of it welded on. */
  @Test
  void everyPartOfItIsInThePlan() {
    Layout layout = with(FieldValues.none());
    WorkPlan plan = addition.plan(new Commission(layout, site(FieldValues.none())));

    assertEquals(
        List.of(1.0, 2.0, 2.0, 2.0), plan.parts().stream().map(part -> part.quantity()).toList());
    assertEquals(List.of(2, 2), plan.bolts().stream().map(bolt -> bolt.quantity()).toList());
    assertEquals(List.of(2, 2), plan.plates().stream().map(plate -> plate.quantity()).toList());
    assertEquals(0.75 * INCH_MM, plan.bolts().get(0).gripMm(), 1e-6);
    assertEquals(1.0 * INCH_MM, plan.bolts().get(1).gripMm(), 1e-6);
    // Two feet of 2 1/2 in on both faces; a saddle of 120 deg on 3 in; once round a shell of 1 5/8.
    assertEquals(10 * INCH_MM, plan.welds().get(0).totalLengthMm(), 1e-6);
    assertEquals(4 * Math.PI * INCH_MM, plan.welds().get(1).totalLengthMm(), 1e-3);
    assertEquals(4 * Math.PI * 1.625 * INCH_MM, plan.welds().get(2).totalLengthMm(), 1e-3);
  }

  /** A tank right behind the axle leaves no room for it. */
  @Test
  void whatIsInTheWayIsNamed() {
    Box tank = Box.between(-900, -100, -600, 600, 6 * INCH_MM, 17 * INCH_MM);
    Chassis crowded =
        pickup.withObstacles(List.of(new Obstacle("spare fuel tank", ObstacleKind.TANK, tank)));
    String refusal =
        assertThrows(
                UnworkableLayoutException.class,
                () -> addition.onto(layout(crowded), site(FieldValues.none()).at(crowded)))
            .reason()
            .in(new QuantityPrinter(UnitSystem.US));

    assertTrue(refusal.contains("spare fuel tank"), refusal);
    assertTrue(refusal.contains("leave the bar out"), refusal);
  }
}
