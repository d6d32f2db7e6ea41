package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;
import static trammel.engine.checks.SampleLayout.point;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.engine.loads.LoadCase;

/**
 * Upright springs of 200 lb/in and shocks beside them, over the axle's line, on an axle of 380 lb
 * under 1,780 lb on the rear tyres: 700 lb on each spring. 3 1/2 in of bump.
 */
class MountForcesTest {
  private static final double POUND_KG = 0.45359237;
  private static final double POUND_N = 4.4482216152605;

  private static Layout layout(double apartMm) {
    List<SpringUnit> springs = new ArrayList<>();
    List<ShockUnit> shocks = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      String name = side > 0 ? "left" : "right";
      springs.add(
          new SpringUnit(
              "spring-" + name,
              SpringKind.COIL,
              point(0, side * 12, 28),
              point(0, side * 12, 16),
              2 * INCH,
              200 * POUND_N / INCH,
              7 * INCH,
              18 * INCH));
      double out = side * (12 * INCH + apartMm);
      shocks.add(
          new ShockUnit(
              "shock-" + name,
              new Point3(0, out, 28 * INCH),
              new Point3(0, out, 16 * INCH),
              INCH,
              8 * INCH,
              18 * INCH));
    }
    Layout good = SampleLayout.good();
    Masses masses =
        new Masses(2550 * POUND_KG, 890 * POUND_KG, 890 * POUND_KG, 380 * POUND_KG, 25 * INCH);
    return good.withSprings(springs)
        .withShocks(shocks)
        .withChassis(good.chassis().withMasses(masses));
  }

  private static MountForces forces(Layout layout) {
    List<LoadCase> standing = List.of(new LoadCase("standing", 0, 0, 0, 1, 1, 1));
    return new LayoutAnalysis(layout, new AnalysisSettings(30, standing)).mountForces();
  }

  /**
   * 700 lb and 3 1/2 in x 200 lb/in at full bump: 1,400 lb; the lateral bar's arc shifts a little.
   */
  @Test
  void aSpringPushesHardestAtItsShortest() {
    double mostN = forces(layout(50)).greatestN("spring-left").orElseThrow();

    assertEquals(1_400, mostN / POUND_N, 15);
  }

  /**
   * A shock beside its spring: damping 2 x 0.3 x root of (200 lb/in x 700 lb/g) at 2 m/s. By hand:
   * 35.03 N/mm and 317.5 kg make 3,335 Ns/m, 0.6 x 3,335 x 2 = 4,002 N, 900 lb; three times half of
   * 380 lb, 570 lb, is less.
   */
  @Test
  void aFastStrokeLoadsAShockByItself() {
    double mostN = forces(layout(50)).greatestN("shock-left").orElseThrow();

    assertEquals(4_002, mostN, 40);
  }

  /** A shock within its spring carries the spring at rest as well: 900 + 700 lb. */
  @Test
  void withinASpringItCarriesThatToo() {
    double mostN = forces(layout(0)).greatestN("shock-right").orElseThrow();

    assertEquals(900 + 700, mostN / POUND_N, 15);
  }

  @Test
  void whatTheLayoutHasNotCarriesNothing() {
    assertTrue(forces(layout(50)).greatestN("anti-roll bar").isEmpty());
    assertTrue(forces(layout(50)).greatestN("spring-of-another").isEmpty());
  }
}
