package trammel.cutting.outlines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.distance.IndexedFacetDistance;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Verifies nested outlines with the JTS Topology Suite, and with nothing of the solver. */
public final class NestingChecker {
  private static final double TOLERANCE_MM = 1e-6;
  private static final GeometryFactory PLANE = new GeometryFactory();

  private NestingChecker() {}

  public static void check(NestingProblem problem, NestingPlan plan) {
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

  public static void check(NestingStripProblem problem, NestingStripPlan plan) {
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
    Envelope usable = new Envelope(0, widthMm, 0, heightMm);
    usable.expandBy(TOLERANCE_MM - marginMm);
    List<Polygon> outlines = new ArrayList<>();
    for (PlacedOutline place : placed) {
      Polygon outline = outline(parts, place);
      assertTrue(
          usable.contains(outline.getEnvelopeInternal()), () -> "outside the sheet: " + place);
      for (Polygon other : outlines) {
        checkApart(outline, other, kerfMm);
      }
      outlines.add(outline);
    }
  }

  /** No interior in common, and no boundary closer to the other than the kerf. */
  private static void checkApart(Polygon one, Polygon other, double kerfMm) {
    if (one.getEnvelopeInternal().distance(other.getEnvelopeInternal()) > kerfMm) {
      return;
    }
    double commonMm2 = OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION).getArea();
    double sliverMm2 = TOLERANCE_MM * Math.min(one.getLength(), other.getLength());
    assertTrue(commonMm2 <= sliverMm2, () -> commonMm2 + " mm² of both " + one + ", " + other);
    double apartMm = IndexedFacetDistance.distance(one, other);
    assertTrue(
        apartMm >= kerfMm - TOLERANCE_MM,
        () -> apartMm + " mm apart, kerf " + kerfMm + ": " + one + ", " + other);
  }

  /** A ring of corners {x, y}, turned and then shifted. */
  static Polygon polygon(double[][] ring, OutlineTurn turn, double shiftX, double shiftY) {
    int n = ring[0].length;
    Coordinate[] corners = new Coordinate[n + 1];
    for (int i = 0; i <= n; i++) {
      corners[i] =
          new Coordinate(
              shiftX + turn.x(ring[0][i % n], ring[1][i % n]),
              shiftY + turn.y(ring[0][i % n], ring[1][i % n]));
    }
    corners[n] = corners[0];
    return PLANE.createPolygon(corners);
  }

  private static Polygon outline(List<OutlinePart> parts, PlacedOutline place) {
    OutlinePart part =
        parts.stream().filter(p -> p.id().equals(place.partId())).findFirst().orElseThrow();
    assertTrue(part.turnsDeg().contains(place.turnDeg()), () -> "may not lie so: " + place);
    double angle = Math.toRadians(place.turnDeg());
    Coordinate[] corners = new Coordinate[part.outline().size() + 1];
    for (int i = 0; i < corners.length; i++) {
      OutlinePoint p = part.outline().get(i % part.outline().size());
      corners[i] =
          new Coordinate(
              place.xMm() + p.xMm() * Math.cos(angle) - p.yMm() * Math.sin(angle),
              place.yMm() + p.xMm() * Math.sin(angle) + p.yMm() * Math.cos(angle));
    }
    corners[corners.length - 1] = corners[0];
    return PLANE.createPolygon(corners);
  }
}
