package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.motion.Layouts.INCH;
import static trammel.engine.motion.Layouts.inch;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.engine.geometry.Point3;

/** Motion of layouts whose path can be worked out by hand. */
class ClosedFormMotionTest {

  private static final double RADIUS_MM = 13 * INCH;

  /**
   * Four equal, parallel, level bars of length L and a level lateral bar of length R. All points of
   * the axle move alike. Both circles, {@code (L-x)^2 + y^2 + h^2 = L^2} and {@code x^2 + (R-y)^2 +
   * h^2 = R^2}, subtracted give {@code y = x L/R}, and a quadratic remains for x.
   */
  @ParameterizedTest
  @ValueSource(doubles = {-150, -100, -37.5, 0, 0.001, 60, 100, 150})
  void equalLevelBarsMoveTheAxleOnTheirCommonCircle(double heaveMm) {
    double barMm = 22 * INCH;
    double lateralMm = 34 * INCH;
    Linkage linkage =
        new Layouts()
            .pair("lower", inch(22, 18, 10), inch(0, 18, 10))
            .pair("upper", inch(22, 18, 17), inch(0, 18, 17))
            .bar(inch(-5, 17, 14), inch(-5, -17, 14))
            .build(60 * INCH, RADIUS_MM);
    double ratio = barMm / lateralMm;
    double forwardMm =
        (barMm - Math.sqrt(barMm * barMm - (1 + ratio * ratio) * heaveMm * heaveMm))
            / (1 + ratio * ratio);
    AxlePose pose = new PoseSolver(linkage).solve(heaveMm, 0).required();
    assertEquals(forwardMm, pose.forwardMm(), 1e-9);
    assertEquals(forwardMm * ratio, pose.lateralMm(), 1e-9);
    assertEquals(0, pose.yawRad(), 1e-12);
    assertEquals(0, pose.pitchNoseUpRad(), 1e-12);
    for (LinkReading link : LinkReading.of(linkage, pose)) {
      assertEquals(0, link.stretchMm(), 1e-9);
    }
  }

  /**
   * Sideways shift of the axle by its lateral bar alone, the other bars being a mile long: R -
   * sqrt(R^2 - d^2) from level, H - sqrt(R^2 - (v + d)^2) from an incline. Pure geometry; inches.
   */
  @ParameterizedTest
  @CsvSource({
    "36, 0, 3, 0.12522",
    "36, 0, 4, 0.22291",
    "30, 0, 3, 0.15038",
    "36, 2, 3, 0.29286",
    "36, 2, -3, -0.04164",
    "34, -1.5, 3, 0.00000"
  })
  void theLateralBarSwingsTheAxleSideways(
      double spanInch, double axleAboveFrameInch, double travelInch, double shiftInch) {
    Linkage linkage =
        new Layouts()
            .pair("lower", inch(63360, 18, 10), inch(0, 18, 10))
            .pair("upper", inch(63360, 18, 17), inch(0, 18, 17))
            .bar(inch(0, spanInch / 2, 14 - axleAboveFrameInch), inch(0, -spanInch / 2, 14))
            .build(60 * INCH, RADIUS_MM);
    AxlePose pose = new PoseSolver(linkage).solve(travelInch * INCH, 0).required();
    assertEquals(shiftInch, pose.lateralMm() / INCH, 0.6e-5);
  }

  @Test
  void rideItselfIsAnExactAnswer() {
    AxlePose ride = new PoseSolver(Layouts.triangulated()).solve(0, 0).required();
    assertEquals(0, ride.forwardMm(), 1e-12);
    assertEquals(0, ride.lateralMm(), 1e-12);
    assertEquals(0, ride.yawRad(), 1e-14);
    assertEquals(0, ride.pitchNoseUpRad(), 1e-14);
  }

  /**
   * A planar parallelogram: bars of length L come upright at heave L and swing no farther. Held
   * sideways by a bar of 2 km, which shifts the axle by L^2 / 4 km = 0.06 mm over that travel.
   */
  @Test
  void travelEndsWhereTheBarsStandUpright() {
    double barMm = 500;
    Linkage linkage =
        new Linkage(
            1500,
            330,
            List.of(
                bar("lower_left", new Point3(barMm, 450, 250), new Point3(0, 450, 250)),
                bar("lower_right", new Point3(barMm, -450, 250), new Point3(0, -450, 250)),
                bar("upper", new Point3(barMm, 0, 400), new Point3(0, 0, 400)),
                bar("side", new Point3(0, 1e6, 330), new Point3(0, -1e6, 330))));
    PoseSolver solver = new PoseSolver(linkage);
    assertInstanceOf(PoseResult.Solved.class, solver.solve(0.999 * barMm, 0));
    PoseResult.OutOfReach out =
        assertInstanceOf(PoseResult.OutOfReach.class, solver.solve(1.25 * barMm, 0));
    assertEquals(0.8, out.fraction(), 1e-6);
    assertTrue(out.sentence().contains("run out of travel"));
    assertThrows(IllegalStateException.class, out::required);
    assertFalse(out.found().isPresent());
  }

  private static Link bar(String name, Point3 frame, Point3 axle) {
    return Layouts.link(name, LinkKind.LONGITUDINAL, frame, axle);
  }

  @ParameterizedTest
  @CsvSource({"NaN, 0", "Infinity, 0", "2e7, 0", "0, NaN", "0, 1.5708", "0, -2"})
  void impossibleTravelIsRefused(double heaveMm, double rollRad) {
    PoseSolver solver = new PoseSolver(Layouts.triangulated());
    assertThrows(IllegalArgumentException.class, () -> solver.solve(heaveMm, rollRad));
  }

  @Test
  void aGridHoldsThePosesOfTheSingleSearch() {
    for (Linkage linkage :
        new Linkage[] {Layouts.triangulated(), Layouts.fourBarsAndLateralBar()}) {
      PoseSolver solver = new PoseSolver(linkage);
      double[] heavesMm = {-100, -70, -65, -20, 3, 8, 50, 90, 110};
      double[] rollsRad = {-0.1, -0.03, 0.01, 0.06};
      PoseGrid grid = solver.sweep(heavesMm, rollsRad);
      assertTrue(grid.complete());
      for (int i = 0; i < grid.heaveCount(); i++) {
        for (int j = 0; j < grid.rollCount(); j++) {
          AxlePose single = solver.solve(heavesMm[i], rollsRad[j]).required();
          AxlePose swept = grid.result(i, j).required();
          assertEquals(0, single.centre().distanceMm(swept.centre()), 1e-8);
          assertEquals(single.yawRad(), swept.yawRad(), 1e-11);
          assertEquals(single.pitchNoseUpRad(), swept.pitchNoseUpRad(), 1e-11);
        }
      }
    }
  }

  @Test
  void aGridSaysWhichPosesAreOutOfReach() {
    PoseSolver solver = new PoseSolver(Layouts.triangulated());
    double[] heavesMm = {0, 100, 200, 300, 400, 500, 600, 700};
    double[] rollsRad = {-0.1, 0, 0.1};
    PoseGrid grid = solver.sweep(heavesMm, rollsRad);
    assertFalse(grid.complete());
    for (int i = 0; i < heavesMm.length; i++) {
      for (int j = 0; j < rollsRad.length; j++) {
        assertEquals(
            solver.solve(heavesMm[i], rollsRad[j]).getClass(), grid.result(i, j).getClass());
      }
    }
  }

  @Test
  void aGridMustRise() {
    PoseSolver solver = new PoseSolver(Layouts.triangulated());
    double[] falling = {1, 0};
    double[] one = {0};
    assertThrows(IllegalArgumentException.class, () -> solver.sweep(falling, one));
    assertThrows(IllegalArgumentException.class, () -> solver.sweep(one, new double[0]));
  }
}
