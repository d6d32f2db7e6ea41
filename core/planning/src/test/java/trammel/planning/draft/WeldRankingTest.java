package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.brackets.work.FootWelds;
import trammel.brackets.work.WeldedFoot;
import trammel.brackets.work.WorkPlan;
import trammel.engine.checks.BarForces;
import trammel.engine.checks.Detail;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.checks.Reading;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CatalogReader;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.Commission;
import trammel.planning.extension.Site;
import trammel.planning.extension.kit.SampleVehicle;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/** Welds in the order in which repeated loads damage them. */
class WeldRankingTest {
  private static final Catalog CATALOG =
      CatalogReader.read(Path.of("..", "..", "catalogs", "standard"));
  private static final Chassis CHASSIS = SampleVehicle.pickup();
  private static final Layout LAYOUT =
      new Layout(CHASSIS, SampleVehicle.bars(CHASSIS), SampleVehicle.springs(CHASSIS), List.of());
  private static final double APART_MM = 20;
  private static final double LEG_MM = 4;

  /** A linkage of brackets that are each held by the given weld. */
  private record Feet(List<WeldedFoot> feet) implements AxleLinkage {
    @Override
    public String id() {
      return "feet";
    }

    @Override
    public String title() {
      return "feet";
    }

    @Override
    public String summary() {
      return "Brackets.";
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
      WorkPlan.Builder plan = new WorkPlan.Builder();
      feet.forEach(plan::add);
      return plan.build();
    }
  }

  /** Two welds along a level bar that pulls through their middle: nothing but shear. */
  private static WeldedFoot foot(String name, String barName, double lengthMm) {
    Bar bar = LAYOUT.bar(barName).orElseThrow();
    Vector3 pull = bar.frame().to(bar.axle()).normalized();
    return new WeldedFoot(
        name,
        List.of(barName),
        End.FRAME,
        new FootWelds()
            .line(1, 0, -APART_MM, lengthMm, -APART_MM)
            .line(1, 0, APART_MM, lengthMm, APART_MM)
            .group(),
        bar.frame().plus(pull.scaled(-lengthMm / 2)),
        pull,
        new Vector3(-pull.y(), pull.x(), 0),
        LEG_MM);
  }

  /** A bar's force over two throats of 0.707 leg; cases a year as often as the catalog says. */
  private static double damage(LayoutAnalysis analysis, String barName, double lengthMm) {
    BarForces forces = analysis.barForces();
    int bar = LAYOUT.bars().indexOf(LAYOUT.bar(barName).orElseThrow());
    double sum = 0;
    for (int i = 0; i < forces.cases().size(); i++) {
      double rangeMPa = Math.abs(forces.tensionN(i, bar)) / (2 * lengthMm * 0.7071068 * LEG_MM);
      double times =
          CATALOG.analysis().timesAYear().getOrDefault(forces.cases().get(i).name(), 0.0);
      sum += times / stood(rangeMPa);
    }
    return sum;
  }

  /**
   * EN 1993-1-9, root of a fillet that carries load, category 36 (from memory): 36 MPa is stood 2
   * million times, by the cube down to 5 million at 26.52, by the fifth power to 100 million at
   * 14.57.
   */
  private static double stood(double rangeMPa) {
    if (rangeMPa >= 26.5246) {
      return 2e6 * Math.pow(36 / rangeMPa, 3);
    }
    return rangeMPa > 14.5695 ? 5e6 * Math.pow(26.5246 / rangeMPa, 5) : Double.POSITIVE_INFINITY;
  }

  /** Miner's rule, EN 1993-1-9: each weld's share of the damage of both. */
  @Test
  void theWeldThatIsDamagedMostComesFirst() {
    LayoutAnalysis analysis = new LayoutAnalysis(LAYOUT, CATALOG.analysis());
    double strong = damage(analysis, "lower-left", 60);
    double weak = damage(analysis, "upper-left", 30);
    assertTrue(strong > 0 && weak > strong, "both are damaged: " + weak + " and " + strong);

    WeldRanking ranking = ranking(foot("strong", "lower-left", 60), foot("weak", "upper-left", 30));
    Reading.Value value = (Reading.Value) ranking.read(analysis);

    assertEquals("weak", value.where().toString());
    assertEquals(weak / (weak + strong), value.value(), 1e-3);
    Detail second = value.details().get(0);
    assertTrue(second.words().startsWith("strong"), second.words());
    assertEquals(strong / (weak + strong), second.value(), 1e-3);
  }

  /** A third off a weld's length raises its stress by half: 1.5 cubed is 3.375 times the damage. */
  @Test
  void aShorterWeldIsDamagedByTheCubeOfItsStress() {
    LayoutAnalysis analysis = new LayoutAnalysis(LAYOUT, CATALOG.analysis());

    WeldRanking ranking = ranking(foot("long", "lower-left", 15), foot("short", "lower-left", 10));
    Reading.Value value = (Reading.Value) ranking.read(analysis);

    assertEquals("short", value.where().toString());
    double byTheCube = 3.375 / 4.375;
    assertEquals(byTheCube, value.value(), 0.01);
  }

  private static WeldRanking ranking(WeldedFoot... feet) {
    Site site = new Site(CHASSIS, FieldValues.none(), CATALOG, UnitSystem.US);
    return new WeldRanking(new BracketWelds(new Feet(List.of(feet)), site));
  }
}
