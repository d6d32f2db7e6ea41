package trammel.planning.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import trammel.engine.checks.AnalysisSettings;
import trammel.engine.checks.Limit;
import trammel.engine.checks.ShaftAtSpeed;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Tyre;
import trammel.planning.extension.kit.SampleVehicle;

/** A transmission shimmed for a shaft that turns faster than any table of joint angles goes. */
class TransmissionShimTest {
  /**
   * 120 m/s on a tyre of 190 mm behind an axle of 3.55: 120 000/190 x 3.55 x 30/pi = 21,411 rpm. At
   * 20,000 rpm the last row of installation manual J3311-1, 3.2 degrees at 5,000, leaves 0.8.
   */
  @Test
  void aShaftFasterThanTheTableIsHeldToTheTablesEnd() {
    Chassis found = SampleVehicle.pickup().withTyre(new Tyre(195, 190, 200));
    AnalysisSettings settings = new AnalysisSettings(120, List.of());
    double rpm = ShaftAtSpeed.rpm(found, settings).orElseThrow();
    assertEquals(21_411, rpm, 1);
    double largestRad = ShaftAtSpeed.largestJointAngleRad(rpm);
    assertEquals(0.8, Math.toDegrees(largestRad), 1e-9);
    assertTrue(angleRad(found.driveline()) > largestRad, "as found");

    Limit range = new Limit(0, Math.toRadians(3), 0, Math.toRadians(90), "common practice");
    Chassis shimmed = TransmissionShim.shimmed(found, Map.of("front-joint-angle", range), settings);

    assertTrue(angleRad(shimmed.driveline()) < largestRad, "shimmed");
  }

  private static double angleRad(Driveline driveline) {
    Vector3 shaft = driveline.pinionJoint().to(driveline.transmissionJoint());
    return Math.max(
        shaft.angleToLineRad(driveline.transmissionAxis()),
        shaft.angleToLineRad(driveline.pinionAxis()));
  }
}
