package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Limit;
import trammel.engine.checks.Reading;
import trammel.engine.checks.Verdict;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.BracketPlate;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.catalog.PlanCheck;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

class BracketChecksTest {
  private static final double KSI_MPA = 6.894757293168361;
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final Chassis CHASSIS = SampleVehicle.pickup();

  /** A linkage whose only bracket is held by the given weld. */
  private record OneFoot(WeldedFoot foot) implements AxleLinkage {
    @Override
    public String id() {
      return "one-foot";
    }

    @Override
    public String title() {
      return "one foot";
    }

    @Override
    public String summary() {
      return "One bracket.";
    }

    @Override
    public List<Field<?>> options(Catalog catalog) {
      return List.of();
    }

    @Override
    public AxleGuide propose(Site site) {
      return AxleGuide.of(SampleVehicle.bars(site.chassis()));
    }

    @Override
    public WorkPlan plan(Commission commission) {
      return new WorkPlan.Builder().add(foot).build();
    }
  }

  /**
   * Two plates of A36, 1/4 in, about a 1/2 in bolt. AISC 360-10 J7: a pin bears 1.8 Fy d t, here
   * 1.8 x 36 ksi x 0.5 in x 2 x 0.25 in = 16.2 kip, over the factor of 2.00 it is 8.1 kip. Tear-out
   * and the metal beside the hole (D5) bear more where 1 1/2 hole diameters are left to the edge.
   */
  @Test
  void theHoleCrushesBeforeTheEdgeTears() {
    Joint joint = new Joint("bushed end", 12_000, 0.12, 12.7, 50.8, 25.4, 35_000);
    BracketPlate plate = new BracketPlate(6.35, 36 * KSI_MPA, 58 * KSI_MPA);
    assertEquals(8.1 * 4448.2216, BracketTabs.allowedN(joint, plate), 2);
    assertEquals(
        1.25 * BracketTabs.allowedN(joint, plate),
        BracketTabs.allowedN(joint, plate.thickerBy(6.35 / 4)),
        2,
        "bearing goes with the thickness");
  }

  @Test
  void barsWithoutKnownBracketsAreNotJudged() {
    Layout layout = layout();
    assertTrue(
        new BracketTabs().read(new LayoutAnalysis(layout, CATALOG.analysis()))
            instanceof Reading.NotApplicable);
  }

  /**
   * Two upright welds of length d, pulled square to their middle plane at an arm L: shear flow F/2d
   * and bending flow 3FL/d2, added at right angles. Source: Blodgett, Design of Welded Structures,
   * section 7.4 table 5, and Shigley, Mechanical Engineering Design, table 9-2 row 2 (unit second
   * moment d3/6), both from memory. Fillet throat 0.707 leg; 0.30 x 70 ksi allowed.
   */
  @Test
  void aPairOfUprightWeldsIsLoadedAsInTheHandbook() {
    Layout layout = layout();
    Bar bar = layout.bar("lower-left").orElseThrow();
    double lengthMm = 80;
    double armMm = 60;
    double legMm = 5;
    Vector3 pull = bar.frame().to(bar.axle()).normalized();
    assertEquals(0, pull.z(), 1e-9, "the bar is level");
    // The weld stands on a face beside the bar: its X runs square to the bar, the arm along Z up.
    Vector3 along = new Vector3(-pull.y(), pull.x(), 0);
    Vector3 up = pull;
    Point3 origin = bar.frame().plus(along.cross(up).scaled(-armMm));
    WeldedFoot foot =
        new WeldedFoot(
            "bracket to face",
            List.of("lower-left"),
            End.FRAME,
            new FootWelds()
                .line(1, -20, -lengthMm / 2, -20, lengthMm / 2)
                .line(1, 20, -lengthMm / 2, 20, lengthMm / 2)
                .group(),
            origin,
            along,
            up,
            legMm);
    LayoutAnalysis analysis = new LayoutAnalysis(layout, CATALOG.analysis());
    BracketWelds welds = new BracketWelds(new OneFoot(foot), site());

    Reading.Value usual = (Reading.Value) welds.read(analysis);
    double expected = handbookShare(analysis, lengthMm, armMm, legMm);
    assertEquals(expected, usual.value(), 1e-4 * expected);
    assertTrue(usual.where().toString().startsWith("bracket to face, "), usual.where().toString());

    WorkUnderBlows hard = new WorkUnderBlows(PlanCheck.WELDS_HARD, welds);
    Reading.Value blow = (Reading.Value) hard.read(analysis);
    double harder = handbookShare(analysis.underBlows().orElseThrow(), lengthMm, armMm, legMm);
    assertEquals(harder, blow.value(), 1e-4 * harder);
    assertTrue(blow.value() != usual.value(), "blows are cases of their own");
    assertEquals(usual, welds.read(analysis), "and the usual cases stay what they were");
  }

  private static double handbookShare(
      LayoutAnalysis analysis, double lengthMm, double armMm, double legMm) {
    List<Bar> bars = analysis.layout().bars();
    int index = bars.indexOf(analysis.layout().bar("lower-left").orElseThrow());
    BarForces forces = analysis.barForces();
    double largestN = 0;
    for (int i = 0; i < forces.cases().size(); i++) {
      largestN = Math.max(largestN, Math.abs(forces.tensionN(i, index)));
    }
    double shear = largestN / (2 * lengthMm);
    double bending = 3 * largestN * armMm / (lengthMm * lengthMm);
    return Math.hypot(shear, bending) / (0.7071 * legMm) / (0.30 * 70 * KSI_MPA);
  }

  /** AISC 360: what it allows is half of the nominal strength, so at twice that the metal gives. */
  @Test
  void underABlowABracketMayNotReachItsNominalStrength() {
    for (PlanCheck check : List.of(PlanCheck.TABS_HARD, PlanCheck.WELDS_HARD)) {
      Limit limit = CATALOG.limits().get(check.id());
      assertEquals(Verdict.GOOD, limit.verdict(1.49), check.id());
      assertEquals(Verdict.LOOK_AGAIN, limit.verdict(1.9), check.id());
      assertEquals(Verdict.STOP, limit.verdict(2.01), check.id());
    }
  }

  @Test
  void directionsThatAreNotSquareAreRefused() {
    IllegalArgumentException refused =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                new WeldedFoot(
                    "foot",
                    List.of("lower-left"),
                    End.FRAME,
                    new FootWelds().line(1, 0, 0, 10, 0).group(),
                    new Point3(0, 0, 0),
                    new Vector3(1, 0, 0),
                    new Vector3(1, 0, 0),
                    5));
    assertTrue(refused.getMessage().contains("square to each other"), refused.getMessage());
  }

  private static Layout layout() {
    return new Layout(
        CHASSIS, SampleVehicle.bars(CHASSIS), SampleVehicle.springs(CHASSIS), List.of());
  }

  private static Site site() {
    return new Site(CHASSIS, FieldValues.none(), CATALOG, UnitSystem.US);
  }
}
