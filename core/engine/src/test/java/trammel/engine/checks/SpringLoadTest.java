package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;
import static trammel.engine.checks.SampleLayout.point;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Masses;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.engine.loads.LoadCase;
import trammel.engine.springs.AirSpringPoint;
import trammel.engine.springs.AirSpringSize;
import trammel.engine.springs.RatedAirSpring;

/**
 * Upright springs over the axle's line, 12 in from the middle, tyres 64.5 in apart. Statics of the
 * axle as a free body, worked by hand: with W on the tyres and U of axle and wheels the springs
 * carry (W - U)/2 each, and half of (left - right) times 64.5/24 more on the heavier side.
 */
class SpringLoadTest {
  private static final double POUND_KG = 0.45359237;
  private static final double POUND_N = 4.4482216152605;
  private static final double PSI_MPA = POUND_N / (INCH * INCH);

  private static Layout layout(double leftLb, double rightLb, double highestPsi) {
    AirSpringSize size =
        new AirSpringSize(
            "constant area 11.6 in2",
            List.of(
                new AirSpringPoint(2 * INCH, 11.6 * INCH * INCH, 20 * Math.pow(INCH, 3)),
                new AirSpringPoint(12 * INCH, 11.6 * INCH * INCH, 136 * Math.pow(INCH, 3))));
    RatedAirSpring air = new RatedAirSpring(size, highestPsi * PSI_MPA);
    List<SpringUnit> springs = new ArrayList<>();
    for (int side = 1; side >= -1; side -= 2) {
      springs.add(
          new SpringUnit(
              side > 0 ? "spring-left" : "spring-right",
              SpringKind.AIR,
              point(0, side * 12, 25),
              point(0, side * 12, 18),
              2.5 * INCH,
              35,
              2 * INCH,
              12 * INCH,
              Optional.of(air)));
    }
    Layout good = SampleLayout.good();
    Masses masses =
        new Masses(
            2550 * POUND_KG, leftLb * POUND_KG, rightLb * POUND_KG, 380 * POUND_KG, 25 * INCH);
    return good.withSprings(springs).withChassis(good.chassis().withMasses(masses));
  }

  private static double pressurePsi(Layout layout, String spring) {
    return SampleLayout.reading(layout, "air-pressure").details().stream()
            .filter(detail -> detail.words().equals(spring))
            .findFirst()
            .orElseThrow()
            .value()
        / PSI_MPA;
  }

  @Test
  void evenTyresPutHalfOfTheSprungWeightOnEachSpring() {
    Layout layout = layout(1400, 1400, 120);

    assertEquals(1210 / 11.6, pressurePsi(layout, "spring-left"), 1e-6);
    assertEquals(1210 / 11.6, pressurePsi(layout, "spring-right"), 1e-6);
  }

  /**
   * The mean, 104 psi, would pass; the left spring alone carries 2,150.6 lb and the right 269.4.
   */
  @Test
  void theHeavierSideIsJudgedByItsOwnLoad() {
    Layout layout = layout(1750, 1050, 120);

    assertEquals((1210 + 0.5 * 700 * 64.5 / 24) / 11.6, pressurePsi(layout, "spring-left"), 1e-6);
    assertEquals((1210 - 0.5 * 700 * 64.5 / 24) / 11.6, pressurePsi(layout, "spring-right"), 1e-6);
    Judge judge = new Judge(StandardChecks.all(), SampleLayout.limits(), SampleLayout.settings());
    Judged judged =
        (Judged)
            judge.verdicts(layout).stream()
                .filter(result -> result.id().equals("air-pressure"))
                .findFirst()
                .orElseThrow();
    assertEquals(Verdict.STOP, judged.verdict());
    assertTrue(judged.where().toString().contains("spring-left"), judged.where().toString());
    assertTrue(judged.advice().contains("larger air spring"), judged.advice());
  }

  @Test
  void theOtherHandIsTheMirrorImage() {
    assertEquals(
        pressurePsi(layout(1750, 1050, 120), "spring-left"),
        pressurePsi(layout(1050, 1750, 120), "spring-right"),
        1e-9);
  }

  /** Weight so uneven that one spring would have to pull: it hangs slack instead. */
  @Test
  void aSpringNeverPulls() {
    Layout layout = layout(2200, 600, 300);

    assertEquals(0, pressurePsi(layout, "spring-right"), 0);
  }

  /**
   * A wheel on a bump: 3 times its static 1,400 lb left, 1,400 lb right, 380 lb of axle. Springs
   * alone, 24 in apart, would have to hold 5,220 lb and a moment of 2,800 lb times 32.25 in: left
   * (5,220 + 7,525)/2, right (5,220 - 7,525)/2 lb, a pull. Soft ones, still squeezed when the shock
   * is at its full length, only push less; stiff ones come off their seats.
   */
  @ParameterizedTest
  @CsvSource({"35, false", "80, true"})
  void inABumpUnderOneWheelTheFarSpringNeverPullsAndTheStopsCarry(
      double rateNPerMm, boolean slack) {
    LoadCase bump = new LoadCase("bump under the left wheel", 0, 0, 0, 3, 1, 1);
    AnalysisSettings settings = new AnalysisSettings(30, List.of(bump));
    Layout even = layout(1400, 1400, 120);
    Layout layout =
        even.withSprings(
            even.springs().stream().map(spring -> spring.withRate(rateNPerMm)).toList());
    BarForces forces = new LayoutAnalysis(layout, settings).barForces();

    assertEquals(slack, forces.springsN(0).get(1) == 0, "far spring");
    assertTrue(forces.springsN(0).get(1) < 1210 * POUND_N, "far spring");
    assertEquals("left bump stop", forces.stops().get(0));
    assertTrue(forces.stopsN(0).get(0) > 0, "left bump stop");
    assertEquals(0, forces.stopsN(0).get(1), 0, "right bump stop");
    assertTrue(forces.stopsN(0).get(3) > 0, "right shock");
  }

  /** Standing on a smooth road each spring carries its own load and no stop carries. */
  @Test
  void atRideTheSpringsCarryAndTheStopsDoNot() {
    LoadCase ride = new LoadCase("standing", 0, 0, 0, 1, 1, 1);
    AnalysisSettings settings = new AnalysisSettings(30, List.of(ride));
    BarForces forces = new LayoutAnalysis(layout(1750, 1050, 200), settings).barForces();

    double moreN = 0.5 * 700 * 64.5 / 24 * POUND_N;
    assertEquals(1210 * POUND_N + moreN, forces.springsN(0).get(0), 1);
    assertEquals(1210 * POUND_N - moreN, forces.springsN(0).get(1), 1);
    for (double stopN : forces.stopsN(0)) {
      assertEquals(0, stopN, 0);
    }
  }

  /** Whatever the load, a spring pushes or hangs slack. */
  @Test
  void noSpringPullsUnderAnyCase() {
    BarForces forces =
        new LayoutAnalysis(layout(1400, 1400, 120), SampleLayout.settings()).barForces();
    for (int i = 0; i < forces.cases().size(); i++) {
      for (double springN : forces.springsN(i)) {
        assertTrue(springN >= 0, forces.cases().get(i).name());
      }
    }
  }

  /** 7 in at ride, 3.5 up and 3 down: 3.5 in at the shortest, 1.5 in over the table's 2 in. */
  @Test
  void roomIsLeftInTheTable() {
    double leftMm = SampleLayout.value(layout(1400, 1400, 120), "air-spring-height");

    assertEquals(1.5, leftMm / INCH, 0.05, "the axle turns a little as it rises");
  }
}
