package trammel.app.motionfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import trammel.app.CommandRun;
import trammel.testsupport.ReferenceVectors;

/**
 * The {@code motion} command against an independent set of motion vectors that comes with the
 * tests: a least-squares model in another language, confirmed by a general geometric constraint
 * solver and by extended precision. Tolerances are those of the set.
 */
class MotionReferenceTest {
  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final double TOLERANCE = 1e-6;
  private static final double SIZE_TOLERANCE = 1e-8;
  private static final double LIMIT_TOLERANCE = 1e-4;
  private static final double SQUARES_TOLERANCE = 5e-5;
  private static final double SMALLEST_RESIDUAL_DEG = 0.05;
  private static final double VIEW_TOLERANCE_DEG_MM = 6e-5;

  @TestFactory
  Stream<DynamicTest> everyFileOfTheSetIsMet() {
    return Stream.of("motion", "motion-bodies")
        .flatMap(folder -> ReferenceVectors.files(folder).stream())
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> met(file)));
  }

  private static void met(Path file) {
    JsonNode expected = JSON.readTree(file.toFile());
    CommandRun run = CommandRun.of("motion", file.toString(), "--json");
    if (expected.get("expected").get("status").asString().equals("refused")) {
      assertEquals(2, run.exitCode(), run.err());
      JsonNode kind = expected.get("expected").get("reason_kind");
      String named = kind == null ? "upper_right" : kind.asString();
      assertTrue(run.err().contains(named), run.err());
      assertEquals("", run.out());
      return;
    }
    assertEquals(0, run.exitCode(), run.err());
    JsonNode actual = JSON.readTree(run.out());
    assertEquals(expected.get("layout"), actual.get("layout"), "layout");
    assertEquals(expected.get("conventions"), actual.get("conventions"), "conventions");
    met(expected.get("limits"), actual.get("limits"), LIMIT_TOLERANCE, "limits");
    met(expected.get("ride"), actual.get("ride"), TOLERANCE, "ride");
    met(
        expected.get("lateral_shift_curve_mm"),
        actual.get("lateral_shift_curve_mm"),
        TOLERANCE,
        "curve");
    assertEquals(expected.get("poses").size(), actual.get("poses").size());
    for (int i = 0; i < expected.get("poses").size(); i++) {
      poseMet(expected.get("layout"), expected.get("poses").get(i), actual.get("poses").get(i));
    }
  }

  private static void poseMet(JsonNode layout, JsonNode expected, JsonNode actual) {
    String where = expected.get("heave_mm") + " mm " + expected.get("roll_deg") + " deg";
    assertEquals(names(expected), names(actual), where);
    for (String key : names(expected)) {
      switch (key) {
        case "links" -> linksMet(layout, expected, actual, where);
        case "driveshaft" -> shaftMet(expected.get(key), actual.get(key), where);
        default -> met(expected.get(key), actual.get(key), TOLERANCE, where + " " + key);
      }
    }
  }

  private static void linksMet(JsonNode layout, JsonNode expected, JsonNode actual, String where) {
    assertEquals(names(expected.get("links")), names(actual.get("links")), where);
    for (JsonNode link : layout.get("links")) {
      String name = link.get("name").asString();
      JsonNode wanted = expected.get("links").get(name);
      JsonNode given = actual.get("links").get(name);
      double lengthMm = length(link) + wanted.get("stretch_mm").asDouble();
      double elevationRad = Math.toRadians(wanted.get("elevation_deg").asDouble());
      double runMm = lengthMm * Math.cos(elevationRad);
      double riseMm = lengthMm * Math.sin(elevationRad);
      double forwardMm =
          wanted.get("plan_view_deg").isNull()
              ? 0
              : runMm * Math.cos(Math.toRadians(wanted.get("plan_view_deg").asDouble()));
      String what = where + " " + name;
      met(wanted.get("stretch_mm"), given.get("stretch_mm"), TOLERANCE, what);
      met(wanted.get("elevation_deg"), given.get("elevation_deg"), TOLERANCE, what);
      viewMet(wanted, given, "side_view_deg", Math.hypot(forwardMm, riseMm), what);
      viewMet(wanted, given, "plan_view_deg", runMm, what);
      for (String end : List.of("from_arm_angle_deg", "to_arm_angle_deg")) {
        assertEquals(wanted.has(end), given.has(end), what);
        if (wanted.has(end)) {
          met(wanted.get(end), given.get(end), TOLERANCE, what + " " + end);
        }
      }
    }
  }

  private static double length(JsonNode link) {
    double sum = 0;
    boolean plain = link.has("frame");
    JsonNode one = plain ? link.get("axle") : link.get("from").get("point");
    JsonNode other = plain ? link.get("frame") : link.get("to").get("point");
    for (int i = 0; i < 3; i++) {
      double part = other.get(i).asDouble() - one.get(i).asDouble();
      sum += part * part;
    }
    return Math.sqrt(sum);
  }

  private static void viewMet(
      JsonNode wanted, JsonNode given, String key, double projectionMm, String what) {
    double tolerance = TOLERANCE + VIEW_TOLERANCE_DEG_MM / Math.max(0.1, projectionMm);
    met(wanted.get(key), given.get(key), tolerance, what + " " + key);
  }

  private static void shaftMet(JsonNode expected, JsonNode actual, String where) {
    assertEquals(names(expected), names(actual), where);
    for (String key : List.of("length_mm", "front_joint_deg", "rear_joint_deg")) {
      met(expected.get(key), actual.get(key), TOLERANCE, where + " " + key);
    }
    met(
        expected.get("b1sq_minus_b2sq_deg2"),
        actual.get("b1sq_minus_b2sq_deg2"),
        SQUARES_TOLERANCE,
        where);
    double residualDeg = expected.get("residual_angle_deg").asDouble();
    if (residualDeg > SMALLEST_RESIDUAL_DEG) {
      double sumDeg =
          expected.get("front_joint_deg").asDouble() + expected.get("rear_joint_deg").asDouble();
      met(
          expected.get("residual_angle_deg"),
          actual.get("residual_angle_deg"),
          TOLERANCE * (1 + sumDeg / residualDeg),
          where + " residual");
    }
  }

  /** Same shape, same words, and numbers within the tolerance or a hundred-millionth of them. */
  private static void met(JsonNode expected, JsonNode actual, double tolerance, String where) {
    assertNotNull(actual, where);
    if (expected.isNumber()) {
      assertTrue(actual.isNumber(), where + " " + actual);
      double value = expected.asDouble();
      double allowed = Math.max(tolerance, SIZE_TOLERANCE * Math.abs(value));
      assertEquals(value, actual.asDouble(), allowed, where);
    } else if (expected.isObject()) {
      assertEquals(names(expected), names(actual), where);
      for (String name : names(expected)) {
        met(expected.get(name), actual.get(name), tolerance, where + " " + name);
      }
    } else if (expected.isArray()) {
      assertEquals(expected.size(), actual.size(), where);
      for (int i = 0; i < expected.size(); i++) {
        met(expected.get(i), actual.get(i), tolerance, where + " " + i);
      }
    } else {
      assertEquals(expected, actual, where);
    }
  }

  private static List<String> names(JsonNode node) {
    return node.propertyNames().stream().sorted().toList();
  }
}
