package trammel.planning.cutting.outlines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Verifies nested outlines side by side, with nothing of the solver. */
final class NestingChecker {
  private static final double TOLERANCE_MM = 1e-6;

  private NestingChecker() {}

  static void check(NestingProblem problem, NestingPlan plan) {
    List<PlacedOutline> all = new ArrayList<>();
    BigDecimal price = BigDecimal.ZERO;
    for (NestedSheet sheet : plan.sheets()) {
      assertTrue(problem.stock().contains(sheet.stock()), () -> "unknown " + sheet.stock());
      all.addAll(sheet.parts());
      price = price.add(sheet.stock().price());
      checkPlaces(
          problem.parts(),
          sheet.parts(),
          sheet.stock().widthMm(),
          sheet.stock().heightMm(),
          problem.marginMm(),
          problem.kerfMm());
    }
    checkCounts(problem.parts(), all);
    assertEquals(0, price.compareTo(plan.price()), "price of all sheets");
    assertTrue(plan.lowerBound().compareTo(plan.price()) <= 0, "bound above price");
  }

  static void check(NestingStripProblem problem, NestingStripPlan plan) {
    checkPlaces(
        problem.parts(),
        plan.parts(),
        plan.lengthMm(),
        problem.widthMm(),
        problem.marginMm(),
        problem.kerfMm());
    checkCounts(problem.parts(), plan.parts());
    assertTrue(plan.lowerBoundMm() <= plan.lengthMm() + TOLERANCE_MM, "bound above length");
  }

  private static void checkCounts(List<OutlinePart> wanted, List<PlacedOutline> placed) {
    Map<String, Integer> balance = new HashMap<>();
    for (OutlinePart part : wanted) {
      balance.merge(part.id(), part.quantity(), Integer::sum);
    }
    for (PlacedOutline part : placed) {
      balance.merge(part.partId(), -1, Integer::sum);
    }
    balance.forEach((id, left) -> assertEquals(0, left, () -> "missing or extra: " + id));
  }

  private static void checkPlaces(
      List<OutlinePart> parts,
      List<PlacedOutline> placed,
      double widthMm,
      double heightMm,
      double marginMm,
      double kerfMm) {
    List<double[][]> outlines = new ArrayList<>();
    for (PlacedOutline place : placed) {
      double[][] outline = outline(parts, place);
      for (double[] p : outline) {
        assertTrue(
            p[0] >= marginMm - TOLERANCE_MM
                && p[1] >= marginMm - TOLERANCE_MM
                && p[0] <= widthMm - marginMm + TOLERANCE_MM
                && p[1] <= heightMm - marginMm + TOLERANCE_MM,
            () -> "outside the sheet: " + place);
      }
      for (double[][] other : outlines) {
        assertTrue(!inside(outline[0], other) && !inside(other[0], outline), "one in the other");
        assertTrue(distance(outline, other) >= kerfMm - TOLERANCE_MM, () -> "too close " + place);
      }
      outlines.add(outline);
    }
  }

  static double[][] outline(List<OutlinePart> parts, PlacedOutline place) {
    OutlinePart part =
        parts.stream().filter(p -> p.id().equals(place.partId())).findFirst().orElseThrow();
    assertTrue(part.turnsDeg().contains(place.turnDeg()), () -> "may not lie so: " + place);
    double angle = Math.toRadians(place.turnDeg());
    double[][] outline = new double[part.outline().size()][];
    for (int i = 0; i < outline.length; i++) {
      OutlinePoint p = part.outline().get(i);
      outline[i] =
          new double[] {
            place.xMm() + p.xMm() * Math.cos(angle) - p.yMm() * Math.sin(angle),
            place.yMm() + p.xMm() * Math.sin(angle) + p.yMm() * Math.cos(angle)
          };
    }
    return outline;
  }

  private static double distance(double[][] a, double[][] b) {
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < a.length; i++) {
      double[] p = a[i];
      double[] q = a[(i + 1) % a.length];
      for (int j = 0; j < b.length; j++) {
        double[] r = b[j];
        double[] s = b[(j + 1) % b.length];
        if (crosses(p, q, r, s)) {
          return Double.NEGATIVE_INFINITY;
        }
        least = Math.min(least, Line2D.ptSegDist(p[0], p[1], q[0], q[1], r[0], r[1]));
        least = Math.min(least, Line2D.ptSegDist(r[0], r[1], s[0], s[1], p[0], p[1]));
      }
    }
    return least;
  }

  private static boolean crosses(double[] p, double[] q, double[] r, double[] s) {
    return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
  }

  private static double side(double[] a, double[] b, double[] p) {
    return (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]);
  }

  private static boolean inside(double[] p, double[][] polygon) {
    boolean inside = false;
    for (int i = 0, j = polygon.length - 1; i < polygon.length; j = i++) {
      double[] a = polygon[i];
      double[] b = polygon[j];
      if ((a[1] > p[1]) != (b[1] > p[1])
          && p[0] < (b[0] - a[0]) * (p[1] - a[1]) / (b[1] - a[1]) + a[0]) {
        inside = !inside;
      }
    }
    return inside;
  }
}
