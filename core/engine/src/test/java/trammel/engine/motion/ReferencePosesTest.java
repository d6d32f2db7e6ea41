package trammel.engine.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * Poses against the independent motion vectors: a least-squares model in another language,
 * confirmed by a general geometric constraint solver and by extended precision. Tolerances are
 * those of the set: 1e-6 mm, 1e-6 degrees, limits of travel 1e-4 mm, reachable share 1e-6.
 */
class ReferencePosesTest {

  private static final double TOLERANCE = 1e-6;

  @TestFactory
  List<DynamicTest> everyFileOfTheSetIsMet() {
    List<ReferenceFile> files = ReferenceFile.all();
    List<DynamicTest> tests = new ArrayList<>();
    for (ReferenceFile file : files) {
      tests.add(DynamicTest.dynamicTest(file.name(), () -> met(file)));
    }
    return tests;
  }

  private static void met(ReferenceFile file) {
    if (file.refused()) {
      IllegalArgumentException refusal =
          assertThrows(IllegalArgumentException.class, file::linkage);
      assertTrue(refusal.getMessage().contains("upper_right"), refusal.getMessage());
      return;
    }
    Linkage linkage = file.linkage();
    PoseSolver solver = new PoseSolver(linkage);
    assertEquals(
        file.root().get("expected").get("links_close_exactly").asBoolean(),
        linkage.closesExactly());
    limitsMet(file.root().get("limits"), solver);
    AxlePose neighbour = AxlePose.atRide(linkage.tyreLoadedRadiusMm());
    for (JsonNode expected : file.root().get("poses")) {
      double heaveMm = expected.get("heave_mm").asDouble();
      double rollRad = Math.toRadians(expected.get("roll_deg").asDouble());
      PoseResult result = solver.solve(heaveMm, rollRad);
      if (!expected.get("reachable").asBoolean()) {
        PoseResult.OutOfReach out = assertInstanceOf(PoseResult.OutOfReach.class, result);
        assertEquals(
            expected.get("reachable_fraction").asDouble(), out.fraction(), 1e-6, "reachable");
        continue;
      }
      poseMet(file, linkage, expected, result.required());
      AxlePose near = solver.solveNear(neighbour, heaveMm, rollRad).required();
      poseMet(file, linkage, expected, near);
      neighbour = near;
    }
  }

  private static void limitsMet(JsonNode expected, PoseSolver solver) {
    TravelLimits limits = solver.limits(100, Math.toRadians(6));
    limitMet(expected.get("heave_min_mm"), limits.heaveMinMm(), 1);
    limitMet(expected.get("heave_max_mm"), limits.heaveMaxMm(), 1);
    limitMet(expected.get("roll_min_deg"), limits.rollMinRad(), Math.toDegrees(1));
    limitMet(expected.get("roll_max_deg"), limits.rollMaxRad(), Math.toDegrees(1));
  }

  private static void limitMet(JsonNode expected, OptionalDouble actual, double unit) {
    assertEquals(!expected.isNull(), actual.isPresent());
    if (actual.isPresent()) {
      assertEquals(expected.asDouble(), actual.getAsDouble() * unit, 1e-4);
    }
  }

  private static void poseMet(
      ReferenceFile file, Linkage linkage, JsonNode expected, AxlePose pose) {
    String where = "heave " + pose.heaveMm() + " roll " + Math.toDegrees(pose.rollRad());
    Vector3 shift = ReferenceFile.vector(expected.get("centre_displacement_mm"));
    assertEquals(shift.x(), pose.forwardMm(), TOLERANCE, where + " forward");
    assertEquals(shift.y(), pose.lateralMm(), TOLERANCE, where + " lateral");
    angleMet(expected.get("yaw_deg"), pose.yawRad(), where + " yaw");
    angleMet(expected.get("pitch_nose_up_deg"), pose.pitchNoseUpRad(), where + " pitch");
    angleMet(
        expected.get("pinion_angle_deg"),
        pose.pinionElevationRad(ReferenceFile.vector(file.layout().get("pinion").get("axis"))),
        where + " pinion");
    pointMet(expected.get("wheel_left_mm"), pose.wheelLeft(linkage.trackMm()), where);
    pointMet(expected.get("wheel_right_mm"), pose.wheelRight(linkage.trackMm()), where);
    linksMet(expected, LinkReading.of(linkage, pose), where);
    lengthsMet(file.springs(), expected.get("springs"), pose, where);
    lengthsMet(file.shocks(), expected.get("shocks"), pose, where);
    shaftMet(expected.get("driveshaft"), file.shaft().at(pose), where);
  }

  private static void linksMet(JsonNode expected, List<LinkReading> links, String where) {
    double largest = 0;
    for (LinkReading link : links) {
      String what = where + " " + link.name();
      JsonNode node = expected.get("links").get(link.name());
      assertEquals(node.get("stretch_mm").asDouble(), link.stretchMm(), TOLERANCE, what);
      viewMet(node.get("side_view_deg"), link.sideViewRad(), projection(link, true), what);
      viewMet(node.get("plan_view_deg"), link.planViewRad(), projection(link, false), what);
      angleMet(node.get("elevation_deg"), link.elevationRad(), what);
      largest = Math.max(largest, Math.abs(link.stretchMm()));
    }
    assertEquals(expected.get("max_abs_stretch_mm").asDouble(), largest, TOLERANCE, where);
  }

  private static double projection(LinkReading link, boolean side) {
    Vector3 d = link.axleToFrame().scaled(link.lengthMm());
    return Math.hypot(d.x(), side ? d.z() : d.y());
  }

  private static void viewMet(
      JsonNode expected, OptionalDouble actual, double projectionMm, String what) {
    assertEquals(!expected.isNull(), actual.isPresent(), what);
    if (actual.isPresent()) {
      assertEquals(
          expected.asDouble(),
          Math.toDegrees(actual.getAsDouble()),
          TOLERANCE + 6e-5 / projectionMm,
          what);
    }
  }

  private static void lengthsMet(
      List<SpringPoint> springs, JsonNode expected, AxlePose pose, String where) {
    for (SpringPoint spring : springs) {
      assertEquals(
          expected.get(spring.name()).asDouble(),
          spring.lengthMm(pose),
          TOLERANCE,
          where + " " + spring.name());
    }
  }

  private static void shaftMet(JsonNode expected, ShaftReading shaft, String where) {
    assertEquals(expected.get("length_mm").asDouble(), shaft.lengthMm(), TOLERANCE, where);
    angleMet(expected.get("front_joint_deg"), shaft.frontJointRad(), where + " front joint");
    angleMet(expected.get("rear_joint_deg"), shaft.rearJointRad(), where + " rear joint");
    double perRad = Math.toDegrees(1);
    assertEquals(
        expected.get("b1sq_minus_b2sq_deg2").asDouble(),
        shaft.squaresDifferenceRad2() * perRad * perRad,
        5e-5,
        where + " difference of squares");
    double residualDeg = expected.get("residual_angle_deg").asDouble();
    if (residualDeg > 0.05) {
      double sumDeg =
          expected.get("front_joint_deg").asDouble() + expected.get("rear_joint_deg").asDouble();
      assertEquals(
          residualDeg,
          Math.toDegrees(shaft.residualRad()),
          TOLERANCE * (1 + sumDeg / residualDeg),
          where + " residual");
    }
  }

  private static void angleMet(JsonNode expectedDeg, double actualRad, String what) {
    assertEquals(expectedDeg.asDouble(), Math.toDegrees(actualRad), TOLERANCE, what);
  }

  private static void pointMet(JsonNode expected, Point3 actual, String where) {
    assertEquals(0, ReferenceFile.point(expected).distanceMm(actual), TOLERANCE, where);
  }
}
