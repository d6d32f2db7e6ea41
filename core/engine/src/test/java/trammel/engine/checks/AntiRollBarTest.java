package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;
import static trammel.engine.checks.SampleLayout.point;

import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.AxlePose;
import trammel.engine.springs.AntiRollBarSize;

/** A bar behind the axle, its arms' ends 40 in apart under upright links of 8 in. */
class AntiRollBarTest {
  private static final AntiRollBarSize SIZE =
      AntiRollBarSize.bent(
          INCH, 0, 40 * INCH, 10 * INCH, 10 * INCH, AntiRollBarSize.STEEL_SHEAR_MPA);

  private static final AntiRollBar BAR =
      new AntiRollBar(
          point(-18, 20, 22), point(-18, 20, 14), point(-8, 20, 14), point(-8, 16, 14), SIZE);

  private static final Layout PLAIN = SampleLayout.good();
  private static final Layout WITH_BAR = PLAIN.withAntiRollBar(BAR);

  private static LayoutAnalysis analysis(Layout layout) {
    return new LayoutAnalysis(layout, SampleLayout.settings());
  }

  /** Rate times the square of the distance between the arms' ends. */
  @Test
  void itsRollStiffnessIsAddedToThatOfTheSprings() {
    BodyRoll plain = analysis(PLAIN).ride().roll();
    BodyRoll with = analysis(WITH_BAR).ride().roll();

    double byHand = SIZE.rateNPerMm() * 40 * 40 * INCH * INCH;
    assertEquals(byHand, with.antiRollBarNmmPerRad(), 0.01 * byHand);
    assertEquals(plain.rearNmmPerRad() + with.antiRollBarNmmPerRad(), with.rearNmmPerRad(), 1e-6);
    assertTrue(with.rollRadPerG().getAsDouble() < plain.rollRadPerG().getAsDouble(), "rolls less");
    assertTrue(with.rearTransferShare() > plain.rearTransferShare(), "more of it at the rear");
    assertEquals(
        analysis(PLAIN).ride().rideFrequencyHz(), analysis(WITH_BAR).ride().rideFrequencyHz(), 0);
  }

  /** Both wheels up: it turns in its bearings. Left up, right down: 40 in times the sine. */
  @Test
  void onlyRollTwistsIt() {
    LayoutAnalysis analysis = analysis(WITH_BAR);
    AxlePose up = analysis.poseAt(3 * INCH, 0).orElseThrow();
    AxlePose left = analysis.poseAt(0, Math.toRadians(3)).orElseThrow();

    assertEquals(0, BAR.twistMm(up), 0.02 * INCH);
    assertEquals(40 * INCH * Math.sin(Math.toRadians(3)), BAR.twistMm(left), 0.02 * INCH);
    assertTrue(BAR.twistMm(left) > 0, "left wheel up pushes the left link");
  }

  /**
   * Springs and bar share the roll by their stiffness: the axle turns by the springs' difference
   * over their rate and base, and the bar answers with its rate times what that makes at its ends.
   */
  @Test
  void inABendSpringsAndBarShareTheMomentByTheirStiffness() {
    LayoutAnalysis plain = analysis(PLAIN);
    LayoutAnalysis with = analysis(WITH_BAR);
    int bend = bend(with);
    double springsMm = 22 * INCH;
    SpringUnit spring = PLAIN.springs().get(0);
    double upright = spring.axle().to(spring.frame()).normalized().z();

    double differenceN = difference(with, bend);
    double turnedRad = differenceN / spring.rateNPerMm() / springsMm / upright;
    double byHandN = SIZE.rateNPerMm() * turnedRad * 40 * INCH;

    assertEquals(
        Math.abs(byHandN), Math.abs(with.barForces().antiRollBarN(bend)), 0.05 * Math.abs(byHandN));
    assertTrue(
        Math.abs(differenceN) < 0.7 * Math.abs(difference(plain, bend)), "the springs carry less");
    assertEquals(0, plain.barForces().antiRollBarN(bend), 0);
  }

  private static int bend(LayoutAnalysis analysis) {
    List<String> names = analysis.barForces().cases().stream().map(one -> one.name()).toList();
    for (int i = 0; i < names.size(); i++) {
      if (names.get(i).startsWith("cornering")) {
        return i;
      }
    }
    throw new AssertionError("no bend among " + names);
  }

  private static double difference(LayoutAnalysis analysis, int loadCase) {
    List<Double> springs = analysis.barForces().springsN(loadCase);
    List<Double> standing =
        analysis.ride().loaded().stream().map(spring -> spring.loadN()).toList();
    return springs.get(0) - springs.get(1) - standing.get(0) + standing.get(1);
  }

  /** Forces on the axle balance with the bar's couple among them. */
  @Test
  void theAxleStaysInBalance() {
    LayoutAnalysis with = analysis(WITH_BAR);
    for (int i = 0; i < with.barForces().cases().size(); i++) {
      double sumN = 0;
      double momentNmm = 0;
      for (var load : with.barForces().onAxle(i)) {
        sumN += load.forceN().z();
        momentNmm += load.at().yMm() * load.forceN().z() - load.at().zMm() * load.forceN().y();
        momentNmm += load.momentNmm().x();
      }
      String name = with.barForces().cases().get(i).name();
      assertEquals(0, sumN, 1, name);
      assertEquals(0, momentNmm, 2_000, name);
    }
  }
}
