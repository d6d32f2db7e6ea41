package trammel.engine.mechanism;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.MotionRates;
import trammel.engine.motion.PoseResult;
import trammel.engine.motion.TravelLimits;
import trammel.testsupport.ReferenceVectors;

/**
 * Linkages with rockers, slides, ball joints and bushes against independent motion vectors: a
 * least-squares model in another language. Tolerances are those of the set: 1e-6 mm and degrees for
 * poses, 1e-6 and the digits given for figures at ride, 1e-4 for limits of travel.
 */
class MechanismReferenceTest {
  private static final double TOLERANCE = 1e-6;
  private static final double LIMIT_TOLERANCE = 1e-4;

  @TestFactory
  Stream<DynamicTest> everyFileOfTheSetIsMet() {
    return Stream.of("motion", "motion-bodies")
        .flatMap(folder -> ReferenceVectors.files(folder).stream())
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(), () -> met(MechanismFile.read(file))));
  }

  private static void met(MechanismFile file) {
    JsonNode expected = file.root().get("expected");
    if (file.refused()) {
      MechanismFaultException fault = assertThrows(MechanismFaultException.class, file::mechanism);
      if (expected.has("reason_kind")) {
        assertEquals(expected.get("reason_kind").asString(), fault.kind().key());
      }
      if (expected.has("locked")) {
        assertEquals(expected.get("locked").get(0).asString(), fault.locked().get(0));
        assertEquals(expected.get("locked").size(), fault.locked().size());
      }
      return;
    }
    Mechanism mechanism = file.mechanism();
    assertEquals(expected.get("links_close_exactly").asBoolean(), mechanism.closesExactly());
    MechanismSolver solver = new MechanismSolver(mechanism);
    limitsMet(file, solver);
    rideMet(file, mechanism, solver);
    for (JsonNode pose : file.root().get("poses")) {
      poseMet(mechanism, solver, pose, nearLimit(file, pose) ? 10 : 1);
    }
  }

  private static void limitsMet(MechanismFile file, MechanismSolver solver) {
    JsonNode travel = file.root().get("travel");
    TravelLimits limits =
        solver.limits(
            travel == null ? 100 : travel.get("heave_mm").asDouble(),
            Math.toRadians(travel == null ? 6 : travel.get("roll_deg").asDouble()));
    JsonNode expected = file.root().get("limits");
    limitMet(expected.get("heave_min_mm"), limits.heaveMinMm(), false);
    limitMet(expected.get("heave_max_mm"), limits.heaveMaxMm(), false);
    limitMet(expected.get("roll_min_deg"), limits.rollMinRad(), true);
    limitMet(expected.get("roll_max_deg"), limits.rollMaxRad(), true);
  }

  private static void limitMet(JsonNode expected, OptionalDouble actual, boolean angle) {
    assertEquals(expected.isNull(), actual.isEmpty(), expected + " " + actual);
    if (actual.isPresent()) {
      double value = angle ? Math.toDegrees(actual.getAsDouble()) : actual.getAsDouble();
      assertEquals(expected.asDouble(), value, LIMIT_TOLERANCE);
    }
  }

  private static void rideMet(MechanismFile file, Mechanism mechanism, MechanismSolver solver) {
    JsonNode ride = file.root().get("ride");
    MechanismRates rates = solver.ratesAtRide();
    MotionRates axle = rates.axle();
    JsonNode heave = ride.get("derivatives").get("per_mm_heave");
    near(heave.get("x_mm"), axle.forwardPerMmHeave());
    near(heave.get("y_mm"), axle.lateralPerMmHeave());
    near(heave.get("yaw_deg"), Math.toDegrees(axle.yawRadPerMmHeave()));
    near(heave.get("pitch_nose_up_deg"), Math.toDegrees(axle.pitchNoseUpRadPerMmHeave()));
    JsonNode roll = ride.get("derivatives").get("per_deg_roll");
    near(roll.get("x_mm"), Math.toRadians(axle.forwardMmPerRadRoll()));
    near(roll.get("y_mm"), Math.toRadians(axle.lateralMmPerRadRoll()));
    near(roll.get("yaw_deg"), axle.yawRadPerRadRoll());
    near(roll.get("pitch_nose_up_deg"), axle.pitchNoseUpRadPerRadRoll());
    for (MechanismRates.Turning turning : rates.turns()) {
      JsonNode body = ride.get("bodies").get(turning.body());
      if (body.has("dangle_dheave_deg_per_mm")) {
        near(body.get("dangle_dheave_deg_per_mm"), Math.toDegrees(turning.radPerMmHeave().x()));
        near(body.get("dangle_droll_deg_per_deg"), turning.radPerRadRoll().x());
      } else {
        near(
            body.get("drotation_dheave_deg_per_mm"), turning.radPerMmHeave().scaled(180 / Math.PI));
        near(body.get("drotation_droll_deg_per_deg"), turning.radPerRadRoll());
      }
    }
    for (MechanismRates.Sliding sliding : rates.slides()) {
      JsonNode slide = ride.get("joints").get(sliding.slide());
      near(slide.get("dtravel_dheave"), sliding.mmPerMmHeave());
      near(slide.get("dtravel_droll_mm_per_deg"), Math.toRadians(sliding.mmPerRadRoll()));
    }
    if (ride.get("rates").has("strain_rate_heave_N_per_mm")) {
      near(ride.get("rates").get("strain_rate_heave_N_per_mm"), rates.strainHeaveNPerMm());
      near(
          ride.get("rates").get("strain_roll_stiffness_Nm_per_deg"),
          Math.toRadians(rates.strainRollNmmPerRad()) / 1000);
    }
    armsMet(ride.get("links"), mechanism, solver.atRide(), 1);
  }

  private static void poseMet(
      Mechanism mechanism, MechanismSolver solver, JsonNode expected, double slack) {
    double heaveMm = expected.get("heave_mm").asDouble();
    double rollDeg = expected.get("roll_deg").asDouble();
    String where = heaveMm + " mm, " + rollDeg + " deg";
    MechanismSolver.Outcome outcome = solver.solve(heaveMm, Math.toRadians(rollDeg));
    if (!expected.get("reachable").asBoolean()) {
      PoseResult.OutOfReach out =
          assertInstanceOf(PoseResult.OutOfReach.class, outcome.result(), where);
      assertEquals(expected.get("reachable_fraction").asDouble(), out.fraction(), 1e-6, where);
      return;
    }
    assertTrue(outcome.pose().isPresent(), where + ": " + outcome.result().sentence());
    MechanismPose pose = outcome.pose().get();
    AxlePose axle = pose.axle();
    Vector3 shift = MechanismFile.vector(expected.get("centre_displacement_mm"));
    assertEquals(shift.x(), axle.forwardMm(), slack * TOLERANCE, where);
    assertEquals(shift.y(), axle.lateralMm(), slack * TOLERANCE, where);
    assertEquals(
        expected.get("yaw_deg").asDouble(),
        Math.toDegrees(axle.yawRad()),
        slack * TOLERANCE,
        where);
    assertEquals(
        expected.get("pitch_nose_up_deg").asDouble(),
        Math.toDegrees(axle.pitchNoseUpRad()),
        slack * TOLERANCE,
        where);
    linksMet(expected.get("links"), pose.links(), slack, where);
    armsMet(expected.get("links"), mechanism, pose, slack);
    turnsMet(expected, mechanism, pose, slack, where);
    jointsMet(expected, mechanism, pose, slack, where);
  }

  /** Beyond 0.99 of a limit of heave, where the set allows ten times as much. */
  private static boolean nearLimit(MechanismFile file, JsonNode pose) {
    double heaveMm = pose.get("heave_mm").asDouble();
    JsonNode limit = file.root().get("limits").get(heaveMm < 0 ? "heave_min_mm" : "heave_max_mm");
    return !limit.isNull() && heaveMm / limit.asDouble() > 0.99;
  }

  private static void linksMet(
      JsonNode expected, List<LinkReading> readings, double slack, String where) {
    for (LinkReading reading : readings) {
      JsonNode link = expected.get(reading.name());
      assertEquals(
          link.get("stretch_mm").asDouble(), reading.stretchMm(), slack * TOLERANCE, where);
      assertEquals(
          link.get("elevation_deg").asDouble(),
          Math.toDegrees(reading.elevationRad()),
          slack * TOLERANCE,
          where + " " + reading.name());
    }
  }

  private static void armsMet(
      JsonNode expected, Mechanism mechanism, MechanismPose pose, double slack) {
    for (ElasticLink link : mechanism.links()) {
      JsonNode node = expected.get(link.name());
      armMet(node.get("from_arm_angle_deg"), pose.fromArmAngleRad(link), slack);
      armMet(node.get("to_arm_angle_deg"), pose.toArmAngleRad(link), slack);
    }
  }

  private static void armMet(JsonNode expected, OptionalDouble actual, double slack) {
    if (expected == null || expected.isNull()) {
      assertTrue(actual.isEmpty());
    } else {
      assertEquals(
          expected.asDouble(), Math.toDegrees(actual.getAsDouble()), slack * bodyTolerance(60));
    }
  }

  /** Angles of a body with an arm of the given length (mm), in degrees. */
  private static double bodyTolerance(double armMm) {
    return TOLERANCE + 6e-5 / armMm;
  }

  private static void turnsMet(
      JsonNode expected, Mechanism mechanism, MechanismPose pose, double slack, String where) {
    for (int i = 0; i < mechanism.bodies().size(); i++) {
      BodyTurn turn = pose.turns().get(i);
      JsonNode body = expected.get("bodies").get(turn.body());
      Point3 pivot = MechanismFile.point(body.get("pivot_mm"));
      assertEquals(0, pivot.distanceMm(turn.pivot()), 2 * slack * TOLERANCE, where);
      if (body.has("angle_deg")) {
        assertEquals(
            body.get("angle_deg").asDouble(),
            Math.toDegrees(turn.angleRad()),
            slack * bodyTolerance(60),
            where);
      } else {
        Vector3 rotation = MechanismFile.vector(body.get("rotation_deg"));
        assertEquals(
            0,
            rotation.minus(turn.rotationRad().scaled(180 / Math.PI)).norm(),
            2 * slack * TOLERANCE,
            where);
      }
    }
  }

  private static void jointsMet(
      JsonNode expected, Mechanism mechanism, MechanismPose pose, double slack, String where) {
    for (ExactJoint joint : mechanism.joints()) {
      JsonNode node = expected.get("joints").get(joint.name());
      Point3 point = MechanismFile.point(node.get("point_mm"));
      if (joint instanceof ExactJoint.Slide slide) {
        assertEquals(0, point.distanceMm(pose.move(slide.point())), 2 * slack * TOLERANCE, where);
        assertEquals(
            node.get("travel_mm").asDouble(), pose.travelMm(slide), slack * TOLERANCE, where);
      } else if (joint instanceof ExactJoint.Ball ball) {
        for (String body : List.of(ball.first(), ball.second())) {
          Point3 now = pose.move(new BodyPoint(body, ball.point()));
          assertEquals(0, point.distanceMm(now), 2 * slack * TOLERANCE, where);
        }
      }
    }
    for (Bush bush : mechanism.bushes()) {
      JsonNode node = expected.get("bushes").get(bush.name()).get("deflection_mm");
      Vector3 deflection = MechanismFile.vector(node);
      assertEquals(
          0, deflection.minus(pose.deflectionMm(bush)).norm(), 2 * slack * TOLERANCE, where);
    }
  }

  private static void near(JsonNode expected, double actual) {
    double value = expected.asDouble();
    assertEquals(value, actual, Math.max(TOLERANCE, 1e-8 * Math.abs(value)));
  }

  private static void near(JsonNode expected, Vector3 actual) {
    near(expected.get(0), actual.x());
    near(expected.get(1), actual.y());
    near(expected.get(2), actual.z());
  }
}
