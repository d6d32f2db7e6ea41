package trammel.engine.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static trammel.engine.checks.SampleLayout.INCH;
import static trammel.engine.checks.SampleLayout.point;
import static trammel.engine.checks.SampleLayout.rad;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;

class ShaftChecksTest {
  /** By hand: 75 mph is 1320 in/s; over 14.5 in, times 3.55, times 30/pi. */
  private static final double SHAFT_RPM = 1320 / 14.5 * 3.55 * 30 / Math.PI;

  private static Vector3 inSideView(double degrees) {
    return new Vector3(Math.cos(rad(degrees)), 0, Math.sin(rad(degrees)));
  }

  /** A level shaft of 50 in between axes that rise to the front. */
  private static Layout levelShaft(double pinionDeg, double outputDeg, OptionalDouble diameterMm) {
    return SampleLayout.good()
        .withChassis(
            SampleLayout.chassis()
                .withDriveline(
                    new Driveline(
                        point(11, 0, 14.5),
                        inSideView(pinionDeg),
                        point(61, 0, 14.5),
                        inSideView(outputDeg),
                        diameterMm,
                        OptionalDouble.of(0.083 * INCH),
                        OptionalDouble.empty(),
                        OptionalDouble.empty())));
  }

  /** Tube 3.0 x 0.083, 50 in: usable to 5547 rpm. Source: SAE joint selection graph. */
  @Test
  void theCriticalSpeedIsThatOfTheSelectionGraph() {
    Layout layout = levelShaft(2, 2, OptionalDouble.of(3 * INCH));

    assertEquals(5547 / SHAFT_RPM, SampleLayout.value(layout, "shaft-critical-speed"), 1e-3);
  }

  @Test
  void aShaftThatIsNotMeasuredIsNotJudged() {
    Reading reading =
        SampleLayout.readingOrReason(
            levelShaft(2, 2, OptionalDouble.empty()), "shaft-critical-speed");

    assertTrue(
        ((Reading.Unknown) reading)
            .reason()
            .toString()
            .contains("measured.driveshaft.tube_diameter"));
  }

  /** Joints of 5 and 4 deg at 3000 rpm leave 270.6 rad/s2. CALC: speed and residual squared. */
  @Test
  void theJointsLeaveSpeedSquaredTimesTheResidualSquared() {
    Layout layout = levelShaft(4, 5, OptionalDouble.empty());

    double expected = 270.6 * (SHAFT_RPM / 3000) * (SHAFT_RPM / 3000);
    assertEquals(expected, SampleLayout.value(layout, "torsional-acceleration"), 1e-3 * expected);
  }

  @Test
  void equalAnglesCancel() {
    Layout layout = levelShaft(4, 4, OptionalDouble.empty());

    assertEquals(0, SampleLayout.value(layout, "torsional-acceleration"), 1e-6);
  }
}
