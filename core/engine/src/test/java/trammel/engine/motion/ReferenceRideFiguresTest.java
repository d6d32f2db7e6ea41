package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import trammel.engine.geometry.Point3;

/**
 * Numbers at ride height against the independent motion vectors, to 1e-6 of their unit or 1e-8 of
 * their size, whichever is larger.
 */
class ReferenceRideFiguresTest {

  @TestFactory
  List<DynamicTest> everyFileOfTheSetIsMet() {
    List<ReferenceFile> files = ReferenceFile.all();
    List<DynamicTest> tests = new ArrayList<>();
    for (ReferenceFile file : files) {
      if (!file.refused()) {
        tests.add(DynamicTest.dynamicTest(file.name(), () -> met(file)));
      }
    }
    return tests;
  }

  private static void met(ReferenceFile file) {
    PoseSolver solver = new PoseSolver(file.linkage());
    RideFigures figures = RideFigures.of(solver);
    JsonNode ride = file.root().get("ride");
    ratesMet(ride.get("derivatives"), figures.rates());
    sideViewMet(file.layout(), ride.get("side_view"), figures);
    rollMet(ride.get("roll"), figures);
    springsMet(file, ride, solver);
  }

  private static void ratesMet(JsonNode expected, MotionRates rates) {
    JsonNode heave = expected.get("per_mm_heave");
    met(heave.get("x_mm"), rates.forwardPerMmHeave(), "x'");
    met(heave.get("y_mm"), rates.lateralPerMmHeave(), "y'");
    met(heave.get("yaw_deg"), Math.toDegrees(rates.yawRadPerMmHeave()), "yaw'");
    met(heave.get("pitch_nose_up_deg"), Math.toDegrees(rates.pitchNoseUpRadPerMmHeave()), "pitch'");
    JsonNode roll = expected.get("per_deg_roll");
    met(roll.get("x_mm"), Math.toRadians(rates.forwardMmPerRadRoll()), "x by roll");
    met(roll.get("y_mm"), Math.toRadians(rates.lateralMmPerRadRoll()), "y by roll");
    met(roll.get("yaw_deg"), rates.yawRadPerRadRoll(), "yaw by roll");
    met(roll.get("pitch_nose_up_deg"), rates.pitchNoseUpRadPerRadRoll(), "pitch by roll");
  }

  private static void sideViewMet(JsonNode layout, JsonNode expected, RideFigures figures) {
    met(expected.get("ic_from_links_mm"), figures.instantCentreFromLinks(), "centre by links");
    met(expected.get("ic_from_motion_mm"), figures.instantCentreFromMotion(), "centre by motion");
    assertEquals(expected.get("ic_at_infinity").asBoolean(), figures.instantCentreAtInfinity());
    met(expected.get("swing_arm_length_mm"), figures.swingArmLengthMm(), "swing arm");
    met(expected.get("ic_slope_from_links"), figures.slopeFromLinks(), "slope by links");
    met(expected.get("ic_slope_from_motion"), figures.slopeFromMotion(), "slope by motion");
    double heightMm = layout.get("sprung_cg_height_mm").asDouble();
    double wheelbaseMm = layout.get("wheelbase_mm").asDouble();
    double share = layout.get("front_brake_share").asDouble();
    met(
        expected.get("anti_squat_percent"),
        figures.antiSquatPercent(heightMm, wheelbaseMm),
        "anti-squat");
    met(
        expected.get("anti_lift_braking_percent"),
        figures.antiLiftPercent(share, heightMm, wheelbaseMm),
        "anti-lift");
  }

  private static void rollMet(JsonNode expected, RideFigures figures) {
    met(expected.get("roll_centre_height_mm"), figures.rollCentreHeightMm(), "roll centre");
    met(expected.get("roll_steer_deg_per_deg"), figures.rollSteerRadPerRad(), "roll steer");
    met(
        expected.get("roll_understeer_deg_per_deg"),
        figures.rollUndersteerRadPerRad(),
        "understeer");
    met(expected.get("roll_axis_slope"), figures.rollAxisSlope(), "roll axis");
    met(
        expected.get("roll_axis_angle_deg"),
        Math.toDegrees(figures.rollAxisAngleRad()),
        "roll axis angle");
    assertEquals(
        expected.get("roll_steer_sense").asString(),
        figures.rollSteerSense().name().toLowerCase(java.util.Locale.ROOT));
  }

  private static void springsMet(ReferenceFile file, JsonNode ride, PoseSolver solver) {
    AxlePose pose = AxlePose.atRide(solver.linkage().tyreLoadedRadiusMm());
    WheelRates rates = WheelRates.of(solver, pose, file.springs());
    for (SpringReading spring : rates.springs()) {
      JsonNode expected = ride.get("springs").get(spring.name());
      met(expected.get("length_mm"), spring.lengthMm(), "length");
      met(expected.get("dlength_dheave"), spring.lengthPerMmHeave(), "length by heave");
      met(
          expected.get("dlength_droll_mm_per_deg"),
          Math.toRadians(spring.lengthMmPerRadRoll()),
          "length by roll");
      met(expected.get("motion_ratio_heave"), spring.motionRatioHeave(), "ratio in heave");
      met(expected.get("motion_ratio_roll"), spring.motionRatioRoll(), "ratio in roll");
    }
    JsonNode expected = ride.get("rates");
    met(expected.get("wheel_rate_heave_N_per_mm"), rates.heaveNPerMm(), "wheel rate");
    met(
        expected.get("roll_stiffness_springs_Nm_per_deg"),
        rates.rollNmPerDegree(),
        "roll stiffness");
    met(
        expected.get("ride_frequency_Hz"),
        rates.rideFrequencyHz(file.layout().get("sprung_mass_per_corner_kg").asDouble()),
        "frequency");
  }

  private static void met(JsonNode expected, Optional<Point3> actual, String what) {
    assertEquals(!expected.isNull(), actual.isPresent(), what);
    if (actual.isPresent()) {
      met(expected.get(0), actual.get().xMm(), what);
      met(expected.get(1), actual.get().zMm(), what);
    }
  }

  private static void met(JsonNode expected, OptionalDouble actual, String what) {
    assertEquals(!expected.isNull(), actual.isPresent(), what);
    if (actual.isPresent()) {
      met(expected, actual.getAsDouble(), what);
    }
  }

  private static void met(JsonNode expected, double actual, String what) {
    double value = expected.asDouble();
    assertEquals(value, actual, Math.max(1e-6, 1e-8 * Math.abs(value)), what);
  }
}
