package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static trammel.engine.checks.SampleLayout.INCH;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.engine.layout.Direction;
import trammel.engine.layout.End;
import trammel.engine.layout.Joint;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Rails;
import trammel.engine.layout.SpringUnit;
import trammel.engine.loads.LoadCase;

class StrengthChecksTest {
  private static final double KIP_N = 4448.2216152605;

  private static Joint withBolt(double inches) {
    return new Joint("joint", 10_000, 0.1, inches * INCH, 50.8, 25.4, 40_000);
  }

  /**
   * Two planes, 0.6 of the tensile strength on the stress area, grade 8: 1/2-20 28.78 kip, 5/8-18
   * 46.08 kip. Source: SAE J429 strength, unified thread tables; 0.6 is the usual estimate.
   */
  @ParameterizedTest
  @CsvSource({"0.5, 28.78", "0.625, 46.08"})
  void aBoltInDoubleShearHoldsWhatTheTablesSay(double inches, double kip) {
    assertEquals(kip, BoltStrength.shearN(withBolt(inches)) / KIP_N, 0.02);
  }

  /**
   * Both look at the largest force: share of the rating times factor of the bolt is their ratio.
   */
  @Test
  void boltAndJointAreHeldAgainstTheSameForce() {
    double share = SampleLayout.value(SampleLayout.good(), "joint-rating");
    double factor = SampleLayout.value(SampleLayout.good(), "bolt-strength");

    assertEquals(28.78 * KIP_N / 80_000, share * factor, 1e-3);
  }

  /**
   * By hand: two bars a side, level enough; the brakes of both rear wheels pull with B at the
   * ground and the lower bars, 11.5 in over it, take B times 19/(19 - 11.5) of it, half a side,
   * with the springs straight over the axle.
   */
  @Test
  void theLowerBarsTakeTheBrakesByTheirLever() {
    LoadCase braking = new LoadCase("braking", 0, 0.2, 0, 1, 1, 1);
    Layout level = levelBars();
    AnalysisSettings settings = new AnalysisSettings(30, List.of(braking));
    Reading.Value share =
        (Reading.Value)
            new JointRating("joint-rating", "rating").read(new LayoutAnalysis(level, settings));

    double weightN = level.chassis().masses().totalKg() * 9.80665;
    double rearShare = 1 - level.chassis().traction().frontBrakeShare();
    double brakeN = 0.2 * weightN * rearShare;
    double axleN = 0.2 * level.chassis().masses().rearUnsprungKg() * 9.80665;
    // The axle's own inertia pushes forward at the wheel's centre, 14.5 in up.
    double lowerN = (brakeN * 19 - axleN * (19 - 14.5)) / (19 - 11.5) / 2;
    assertEquals(lowerN / 80_000, share.value(), 0.02 * share.value());
    assertEquals("lower-", share.where().substring(0, 6));
  }

  private static Layout levelBars() {
    Layout layout = SampleLayout.good();
    layout = move(layout, Set.of("lower-left", "lower-right"), End.FRAME, Direction.UP, -0.4);
    layout = move(layout, Set.of("upper-left", "upper-right"), End.FRAME, Direction.UP, 0.5);
    Set<String> springs = Set.of("spring-left", "spring-right");
    layout = move(layout, springs, End.FRAME, Direction.FORWARD, 6);
    return move(layout, springs, End.AXLE, Direction.FORWARD, 6);
  }

  private static Layout move(
      Layout layout, Set<String> names, End end, Direction way, double inches) {
    return new Adjustment.MoveEnds(names, end, way).apply(layout, inches * INCH);
  }

  /**
   * A wheel on a high bump rolls the axle to its stops and no further, however soft the springs.
   */
  @Test
  void softerSpringsDoNotLoadTheBarsOnceTheStopsHoldTheAxle() {
    AnalysisSettings bump =
        new AnalysisSettings(30, List.of(new LoadCase("bump", 0, 0, 0, 3, 1, 1)));
    JointRating rating = new JointRating("joint-rating", "rating");
    Layout soft = withRate(6);
    Layout softer = withRate(2);

    double withSoft = ((Reading.Value) rating.read(new LayoutAnalysis(soft, bump))).value();
    double withSofter = ((Reading.Value) rating.read(new LayoutAnalysis(softer, bump))).value();

    assertEquals(withSoft, withSofter, 0.03 * withSoft);
  }

  private static Layout withRate(double rateNPerMm) {
    return SampleLayout.good()
        .withSprings(
            SampleLayout.good().springs().stream()
                .map((SpringUnit spring) -> spring.withRate(rateNPerMm))
                .toList());
  }

  /**
   * Channel 6 x 2 1/4 x 0.150 in, cap and both side plates alike. CALC: parallel-axis theorem over
   * the rectangles of the section, worked out apart from this program.
   */
  @ParameterizedTest
  @CsvSource({
    "1.0, 0.1875, 1.377",
    "2.0, 0.1875, 0.964",
    "2.5, 0.1875, 0.781",
    "2.5, 0.3125, 1.010",
    "2.5, 0.375, 1.118"
  })
  void theNotchedRailKeepsWhatItsPlatesGive(double clearIn, double plateIn, double ratio) {
    Rails rails =
        SampleLayout.chassis().rails().withNotch(clearIn * INCH, plateIn * INCH, plateIn * INCH);

    assertEquals(ratio, NotchedRail.modulusRatio(rails), 6e-4);
  }

  @Test
  void aRailWithoutANotchIsNotJudged() {
    Reading reading = SampleLayout.readingOrReason(SampleLayout.good(), "rail-modulus");

    assertEquals(new Reading.NotApplicable("the rails are not notched"), reading);
  }

  @Test
  void aCutThroughToTheTopFlangeLeavesNothing() {
    Rails rails = SampleLayout.chassis().rails().withNotch(5.8 * INCH, 0.1875 * INCH, 0);

    assertEquals(0, NotchedRail.modulusRatio(rails));
  }
}
