package trammel.app.cutfile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Checks a printed plan against its file alone, with nothing of the cutters. */
final class CutPlanChecker {
  private static final double SLACK = 2e-6;

  private CutPlanChecker() {}

  /** Every piece there once, inside its stock, a kerf from its neighbours, and the sum right. */
  static void check(JsonNode file, JsonNode plan) {
    assertEquals(file.get("name"), plan.get("name"));
    assertEquals(file.get("unit"), plan.get("unit"));
    switch (file.get("format").asString()) {
      case "cut1d/1", "trammel-cut-bars/1" -> bars(file, plan);
      case "cutjob1d/1", "trammel-cut-job/1" -> job(file, plan);
      default -> plates(file, plan);
    }
  }

  private static void job(JsonNode file, JsonNode plan) {
    double sum = 0;
    assertEquals(file.get("sections").size(), plan.get("sections").size());
    for (int i = 0; i < file.get("sections").size(); i++) {
      JsonNode section = plan.get("sections").get(i);
      assertEquals(file.get("sections").get(i).get("section"), section.get("section"));
      bars(file.get("sections").get(i), section);
      sum += section.get("objective").asDouble();
    }
    assertEquals(sum, plan.get("objective").asDouble(), 1e-6);
  }

  private static void bars(JsonNode file, JsonNode plan) {
    bounds(plan);
    Map<String, Integer> wanted = new HashMap<>();
    for (JsonNode piece : file.get("pieces")) {
      wanted.merge(key(piece.get("length")), piece.get("qty").asInt(), Integer::sum);
    }
    double kerf = file.get("kerf").asDouble();
    for (JsonNode bar : plan.get("plan")) {
      double length = stockNamed(file.get("stock"), bar).get("length").asDouble();
      double end = -kerf;
      for (JsonNode piece : bar.get("pieces")) {
        assertTrue(piece.get("at").asDouble() >= end + kerf - SLACK, bar::toString);
        end = piece.get("at").asDouble() + piece.get("length").asDouble();
        wanted.merge(key(piece.get("length")), -1, Integer::sum);
      }
      assertTrue(end <= length + SLACK, bar::toString);
      assertEquals(Math.max(0, length - end - kerf), bar.get("left").asDouble(), SLACK);
    }
    assertNothingLeft(wanted);
    assertEquals(paid(file.get("stock"), plan), plan.get("objective").asDouble(), 1e-6);
  }

  private static void plates(JsonNode file, JsonNode plan) {
    bounds(plan);
    boolean strip = file.get("problem").asString().equals("strip");
    boolean outlines =
        List.of("poly2d/1", "trammel-cut-outlines/1").contains(file.get("format").asString());
    double margin = file.get("margin").asDouble();
    Map<String, Integer> wanted = new HashMap<>();
    for (JsonNode part : file.get("parts")) {
      wanted.merge(partKey(part), part.get("qty").asInt(), Integer::sum);
    }
    for (JsonNode sheet : plan.get("plan")) {
      double width;
      double height;
      if (strip) {
        double across = file.get("strip").get("width").asDouble();
        double along = plan.get("objective").asDouble();
        width = outlines ? along : across;
        height = outlines ? across : along;
      } else {
        width = stockNamed(file.get("sheets"), sheet).get("width").asDouble();
        height = stockNamed(file.get("sheets"), sheet).get("height").asDouble();
      }
      List<double[][]> lying = new ArrayList<>();
      for (JsonNode piece : sheet.get("pieces")) {
        wanted.merge(partKey(piece), -1, Integer::sum);
        lying.add(outlines ? outline(file, piece) : rectangle(file, piece));
      }
      for (double[][] part : lying) {
        for (double[] corner : part) {
          assertTrue(
              corner[0] >= margin - SLACK && corner[0] <= width - margin + SLACK, sheet::toString);
          assertTrue(
              corner[1] >= margin - SLACK && corner[1] <= height - margin + SLACK, sheet::toString);
        }
      }
      for (int i = 0; i < lying.size(); i++) {
        for (int j = 0; j < i; j++) {
          apart(lying.get(i), lying.get(j), file.get("kerf").asDouble(), outlines);
        }
      }
    }
    assertNothingLeft(wanted);
    if (!strip) {
      assertEquals(paid(file.get("sheets"), plan), plan.get("objective").asDouble(), 1e-6);
    }
  }

  private static void bounds(JsonNode plan) {
    double objective = plan.get("objective").asDouble();
    double bound = plan.get("lowerBound").asDouble();
    assertTrue(bound <= objective + SLACK, plan::toString);
    if (plan.get("status").asString().equals("proven-optimal")) {
      assertEquals(objective, bound, SLACK);
    } else {
      assertEquals("bounded", plan.get("status").asString());
    }
    assertTrue(plan.get("seconds").asDouble() >= 0);
  }

  private static String key(JsonNode number) {
    return Double.toString(number.asDouble());
  }

  private static String partKey(JsonNode part) {
    return part.has("w")
        ? key(part.get("w")) + " x " + key(part.get("h"))
        : part.get("id").asString();
  }

  private static void assertNothingLeft(Map<String, Integer> wanted) {
    for (Map.Entry<String, Integer> entry : wanted.entrySet()) {
      assertEquals(0, entry.getValue(), entry.getKey());
    }
  }

  private static JsonNode stockNamed(JsonNode stock, JsonNode used) {
    for (JsonNode one : stock) {
      if (one.get("id").equals(used.get("stock"))) {
        return one;
      }
    }
    throw new AssertionError("no stock " + used.get("stock"));
  }

  /** What the stock used costs; no more of it than there is. */
  private static double paid(JsonNode stock, JsonNode plan) {
    double paid = 0;
    Map<String, Integer> left = new HashMap<>();
    for (JsonNode one : stock) {
      int more = one.get("available").isNull() ? 1_000_000 : one.get("available").asInt();
      left.merge(one.get("id").asString(), more, Integer::sum);
    }
    for (JsonNode used : plan.get("plan")) {
      paid += stockNamed(stock, used).get("price").asDouble();
      assertTrue(left.merge(used.get("stock").asString(), -1, Integer::sum) >= 0);
    }
    return paid;
  }

  private static double[][] rectangle(JsonNode file, JsonNode piece) {
    boolean turned = piece.get("turn").asInt() == 90;
    assertTrue(turned ? file.get("rotation").asBoolean() : piece.get("turn").asInt() == 0);
    double x = piece.get("x").asDouble();
    double y = piece.get("y").asDouble();
    double w = piece.get(turned ? "h" : "w").asDouble();
    double h = piece.get(turned ? "w" : "h").asDouble();
    return new double[][] {{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}};
  }

  private static double[][] outline(JsonNode file, JsonNode piece) {
    for (JsonNode part : file.get("parts")) {
      if (part.get("id").equals(piece.get("id"))) {
        double turn = piece.get("turn").asDouble();
        boolean allowed = false;
        for (JsonNode rotation : part.get("rotations")) {
          allowed |= rotation.asDouble() == turn;
        }
        assertTrue(allowed, piece::toString);
        double cos = Math.cos(Math.toRadians(turn));
        double sin = Math.sin(Math.toRadians(turn));
        double[][] corners = new double[part.get("polygon").size()][];
        for (int i = 0; i < corners.length; i++) {
          double x = part.get("polygon").get(i).get(0).asDouble();
          double y = part.get("polygon").get(i).get(1).asDouble();
          corners[i] =
              new double[] {
                piece.get("x").asDouble() + cos * x - sin * y,
                piece.get("y").asDouble() + sin * x + cos * y
              };
        }
        return corners;
      }
    }
    throw new AssertionError("no part " + piece);
  }

  /**
   * Rectangles are a kerf apart along x or along y. Outlines are a kerf apart everywhere: sides do
   * not cross, no corner of one is inside the other, and every corner keeps off the other's sides.
   */
  private static void apart(double[][] a, double[][] b, double kerf, boolean outlines) {
    if (!outlines) {
      boolean beside = a[1][0] + kerf <= b[0][0] + SLACK || b[1][0] + kerf <= a[0][0] + SLACK;
      boolean above = a[2][1] + kerf <= b[0][1] + SLACK || b[2][1] + kerf <= a[0][1] + SLACK;
      assertTrue(beside || above, "rectangles nearer than the kerf");
      return;
    }
    cornersKeepOff(a, b, kerf);
    cornersKeepOff(b, a, kerf);
    for (int i = 0; i < a.length; i++) {
      double[] p = a[i];
      double[] q = a[(i + 1) % a.length];
      for (int j = 0; j < b.length; j++) {
        assertFalse(crosses(p, q, b[j], b[(j + 1) % b.length]), "outlines cross");
      }
    }
  }

  private static void cornersKeepOff(double[][] a, double[][] b, double kerf) {
    for (double[] corner : a) {
      double nearest = Double.POSITIVE_INFINITY;
      boolean inside = false;
      for (int j = 0; j < b.length; j++) {
        double[] p = b[j];
        double[] q = b[(j + 1) % b.length];
        nearest = Math.min(nearest, Line2D.ptSegDist(p[0], p[1], q[0], q[1], corner[0], corner[1]));
        if (p[1] > corner[1] != q[1] > corner[1]
            && corner[0] < (q[0] - p[0]) * (corner[1] - p[1]) / (q[1] - p[1]) + p[0]) {
          inside = !inside;
        }
      }
      assertFalse(inside && nearest > SLACK, "a corner inside another outline");
      assertTrue(nearest >= kerf - SLACK, "outlines " + nearest + " apart");
    }
  }

  /** True if the segments cross by more than the slack. */
  private static boolean crosses(double[] a, double[] b, double[] c, double[] d) {
    double first = side(a, b, c);
    double second = side(a, b, d);
    double third = side(c, d, a);
    double fourth = side(c, d, b);
    return Math.min(Math.abs(first), Math.abs(second)) > SLACK
        && Math.min(Math.abs(third), Math.abs(fourth)) > SLACK
        && first * second < 0
        && third * fourth < 0;
  }

  /** Signed distance of a point from the line through two others. */
  private static double side(double[] a, double[] b, double[] p) {
    double length = Math.hypot(b[0] - a[0], b[1] - a[1]);
    return ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])) / length;
  }
}
