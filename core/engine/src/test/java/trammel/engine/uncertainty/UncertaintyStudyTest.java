package trammel.engine.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.checks.Check;
import trammel.engine.checks.Judge;
import trammel.engine.checks.SampleLayout;
import trammel.engine.checks.StandardChecks;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Layout;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class UncertaintyStudyTest {
  private static final double TAPE_MM = INCH / 16;

  private static Judge judge(String... ids) {
    List<Check> checks = new ArrayList<>();
    for (Check check : StandardChecks.all()) {
      if (Set.of(ids).contains(check.id())) {
        checks.add(check);
      }
    }
    return new Judge(checks, SampleLayout.limits(), SampleLayout.settings());
  }

  private static Figure figure(String name, double tolerance, Effect effect) {
    return Figure.within(name, FigureOrigin.MEASURED, "tape", tolerance, effect);
  }

  private static List<Figure> wheelbases() {
    return List.of(
        figure("left wheelbase", TAPE_MM, ChassisEffects.leftWheelbase()),
        figure("right wheelbase", TAPE_MM, ChassisEffects.rightWheelbase()));
  }

  private static CheckChance only(UncertaintyResult result) {
    assertEquals(1, result.checks().size());
    return result.checks().get(0);
  }

  /**
   * Closed form: two readings of 1/32 in standard deviation differ by 1/32 times the root of 2.
   * That the difference is over 1/16 in is over 1.4142 deviations either way: 15.73 of 100; over
   * 1/4 in 5.66 deviations: never. Source: table of the normal distribution.
   */
  @Test
  void theChanceIsThatOfTheNormalDistribution() {
    UncertaintyStudy study = new UncertaintyStudy(judge("wheelbase-square"), wheelbases());

    CheckChance square = only(study.run(SampleLayout.good(), 20_000, 1));

    // Four standard errors of a share of 0.157 over 20 000 samples.
    assertEquals(0.1573, square.notGoodShare(), 0.0103);
    assertEquals(0, square.stopShare());
    assertEquals(0, square.value());
  }

  /** A sum of squares: three times the deviation of the other makes nine tenths of the whole. */
  @Test
  void theFigureThatMattersMostIsFirstWithItsShare() {
    List<Figure> figures =
        List.of(
            figure("left wheelbase", TAPE_MM, ChassisEffects.leftWheelbase()),
            figure("right wheelbase", 3 * TAPE_MM, ChassisEffects.rightWheelbase()),
            figure("front weight", 2, ChassisEffects.frontAxleMass()));

    CheckChance square =
        only(
            new UncertaintyStudy(judge("wheelbase-square"), figures)
                .run(SampleLayout.good(), 100, 1));

    assertEquals(2, square.figures().size());
    assertEquals("right wheelbase", square.figures().get(0).figure().name());
    assertEquals(0.9, square.figures().get(0).share(), 1e-9);
    assertEquals(0.1, square.figures().get(1).share(), 1e-9);
  }

  /** A bar is as much longer as it was made longer: the deviation of the match is the bar's own. */
  @Test
  void aCheckThatFollowsOneFigureHasItsDeviation() {
    List<Figure> figures =
        List.of(
            Figure.within(
                "lower-left length",
                FigureOrigin.MADE,
                "1/4 in",
                INCH / 4,
                BuildEffects.barLength("lower-left")));
    Layout longer = BuildEffects.barLength("lower-left").apply(SampleLayout.good(), 40);

    CheckChance match =
        only(new UncertaintyStudy(judge("lower-bar-match"), figures).run(longer, 10_000, 3));

    assertEquals(40, match.value(), 1e-9);
    assertEquals(INCH / 8, match.standardDeviation(), 0.03 * INCH / 8);
    assertEquals(1, match.stopShare());
  }

  @ParameterizedTest
  @CsvSource({"1", "2", "3"})
  void theAnswerDoesNotDependOnTheNumberOfWorkers(int workers) {
    Judge judge = judge("lateral-shift", "roll-steer", "bar-bind", "ride-frequency");
    UncertaintyResult alone =
        new UncertaintyStudy(judge, figures(), 1).run(SampleLayout.good(), 150, 9);

    assertEquals(
        alone, new UncertaintyStudy(judge, figures(), workers).run(SampleLayout.good(), 150, 9));
  }

  private static final List<Figure> FIGURES =
      List.of(
          figure("rail height at the axle", TAPE_MM, ChassisEffects.railHeightAtAxle()),
          figure("loaded radius", TAPE_MM, BuildEffects.tyreLoadedRadius()),
          figure("left rear weight", 2.27, ChassisEffects.leftRearMass()),
          figure(
              "lower-left frame mount",
              TAPE_MM,
              BuildEffects.mount(Set.of("lower-left"), End.FRAME, Direction.UP)));

  private static List<Figure> figures() {
    return FIGURES;
  }

  @Test
  void anotherSeedTriesOtherVehicles() {
    UncertaintyStudy study = new UncertaintyStudy(judge("roll-steer"), figures());

    assertNotEquals(
        only(study.run(SampleLayout.good(), 200, 1)).standardDeviation(),
        only(study.run(SampleLayout.good(), 200, 2)).standardDeviation());
  }

  /** A vehicle that no layout can stand on is not passed over: it counts as a stop. */
  @Test
  void impossibleVehiclesCountAsStops() {
    List<Figure> figures =
        List.of(figure("left rear weight", 4_000, ChassisEffects.leftRearMass()));

    UncertaintyResult result =
        new UncertaintyStudy(judge("wheelbase-square"), figures).run(SampleLayout.good(), 400, 1);

    assertTrue(result.impossible() > 40, "impossible " + result.impossible());
    assertEquals((double) result.impossible() / 400, only(result).stopShare());
  }

  /** By hand: the axle rises under a frame that does not; the lower bar of 24 in slopes less. */
  @Test
  void aTallerTyreLiftsTheAxleUnderTheFrame() {
    Layout taller = BuildEffects.tyreLoadedRadius().apply(SampleLayout.good(), 0.4 * INCH);

    Bar lower = taller.bar("lower-left").orElseThrow();
    assertEquals(lower.frame().zMm(), lower.axle().zMm(), 1e-9);
    assertEquals(14.9 * INCH, taller.chassis().tyre().loadedRadiusMm(), 1e-9);
    assertEquals(
        SampleLayout.good().chassis().driveline().pinionJoint().zMm() + 0.4 * INCH,
        taller.chassis().driveline().pinionJoint().zMm(),
        1e-9);
  }

  @ParameterizedTest
  @CsvSource({"FRAME, FORWARD", "FRAME, UP", "AXLE, FORWARD", "AXLE, OUTBOARD", "AXLE, UP"})
  void aBarTackedElsewhereKeepsTheLengthItWasMadeTo(End end, Direction direction) {
    Layout layout = SampleLayout.good();
    Layout tacked = BuildEffects.barMount("lower-left", end, direction).apply(layout, 3);

    assertEquals(
        layout.bar("lower-left").orElseThrow().lengthMm(),
        tacked.bar("lower-left").orElseThrow().lengthMm(),
        1e-9);
  }

  /**
   * Frame up over the axle is axle down under the frame: the two undo each other but for the road.
   */
  @Test
  void theRideHeightMovesAllThatIsFixedToTheFrame() {
    Layout layout = SampleLayout.good();
    Layout raised = BuildEffects.rideHeight().apply(layout, 10);
    Layout lifted = BuildEffects.tyreLoadedRadius().apply(raised, 10);

    for (Bar bar : lifted.bars()) {
      Bar before = layout.bar(bar.name()).orElseThrow();
      assertEquals(before.frame().zMm() + 10, bar.frame().zMm(), 1e-9);
      assertEquals(before.axle().zMm() + 10, bar.axle().zMm(), 1e-9);
    }
    assertEquals(
        layout.chassis().rails().undersideMm(0) + 10,
        raised.chassis().rails().undersideMm(0),
        1e-9);
  }

  /** A figure that is exactly known changes nothing, whatever the seed. */
  @Seeds(20)
  void figuresWithoutToleranceLeaveEveryValueAsItIs(Draw draw) {
    long seed = draw.anyLong();
    List<Figure> exact =
        List.of(
            figure("transmission angle", 0, ChassisEffects.transmissionAngle()),
            figure("pinion angle", 0, ChassisEffects.pinionAngle()));

    CheckChance chance =
        only(
            new UncertaintyStudy(judge("pinion-parallel"), exact)
                .run(SampleLayout.good(), 100, seed));

    assertEquals(0, chance.standardDeviation(), 1e-12);
    assertEquals(List.of(), chance.figures());
  }

  @Test
  void twoFiguresOfOneNameAreRefused() {
    List<Figure> twice = List.of(wheelbases().get(0), wheelbases().get(0));

    assertTrue(
        assertThrows(
                IllegalArgumentException.class,
                () -> new UncertaintyStudy(judge("wheelbase-square"), twice))
            .getMessage()
            .contains("left wheelbase"));
  }

  @ParameterizedTest
  @CsvSource({"99", "100001"})
  void tooFewOrTooManySamplesAreRefused(int samples) {
    UncertaintyStudy study = new UncertaintyStudy(judge("wheelbase-square"), wheelbases());

    assertThrows(IllegalArgumentException.class, () -> study.run(SampleLayout.good(), samples, 1));
  }
}
