package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A closed path of straight and circular edges that never meets itself. Every edge starts where the
 * one before it ends, within {@link #JOIN_MM}.
 */
public record Loop(List<Edge> edges) {
  /** Ends nearer than this are the same point; far below any cutting tolerance, mm. */
  public static final double JOIN_MM = 1e-6;

  /** Parts of a path nearer than this touch, mm. */
  private static final double TOUCH_MM = 1e-4;

  /** Rounding of tangent joints moves a computed crossing by up to this much, mm. */
  private static final double JOINT_SLACK_MM = 1e-3;

  private static final double SPIKE_RAD = 1e-7;

  public Loop {
    edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException(
          "A closed path has 0 edges; it must have 1 circle, or 2 edges or more.\nGive its edges.");
    }
    requireClosed(edges);
    requireSimple(edges);
    if (!(Math.abs(signedAreaMm2(edges)) > JOIN_MM)) {
      throw new IllegalArgumentException(
          "A closed path of "
              + edges.size()
              + " edges encloses no area; it must enclose some.\nMove its points apart.");
    }
  }

  /** The circle, anticlockwise. */
  public static Loop circle(Point2 centre, double radiusMm) {
    return new Loop(List.of(Arc.circle(centre, Dimension.positiveMm("radius", radiusMm))));
  }

  /** Straight edges through the points in order and back to the first. */
  public static Loop through(List<Point2> points) {
    List<Edge> edges = new ArrayList<>(points.size());
    for (int i = 0; i < points.size(); i++) {
      edges.add(new Straight(points.get(i), points.get((i + 1) % points.size())));
    }
    return new Loop(edges);
  }

  private static void requireClosed(List<Edge> edges) {
    for (int i = 0; i < edges.size(); i++) {
      Point2 end = edges.get(i).to();
      Point2 start = edges.get((i + 1) % edges.size()).from();
      double gapMm = end.distanceMm(start);
      if (gapMm > JOIN_MM) {
        throw new IllegalArgumentException(
            "A closed path has a gap of "
                + Dimension.lengthText(gapMm)
                + " after edge "
                + (i + 1)
                + " of "
                + edges.size()
                + "; every edge must start where the one before it ends.\nClose the gap.");
      }
    }
  }

  private static void requireSimple(List<Edge> edges) {
    int count = edges.size();
    for (int i = 0; i < count && count > 1; i++) {
      requireNoSpike(edges.get(i), edges.get((i + 1) % count), i);
    }
    Bounds[] bounds = new Bounds[count];
    double[] startMm = new double[count + 1];
    for (int i = 0; i < count; i++) {
      bounds[i] = edges.get(i).bounds();
      startMm[i + 1] = startMm[i] + edges.get(i).lengthMm();
    }
    for (int i = 0; i < count; i++) {
      for (int j = i + 1; j < count; j++) {
        if (!bounds[i].apartMm(bounds[j], TOUCH_MM) && meet(edges, startMm, i, j)) {
          throw new IllegalArgumentException(
              "A closed path meets itself: edge "
                  + (i + 1)
                  + " and edge "
                  + (j + 1)
                  + " of "
                  + count
                  + " cross or touch; no two edges may, but for the ends they share."
                  + "\nMake the shape wider there, or its radii smaller.");
        }
      }
    }
  }

  private static void requireNoSpike(Edge edge, Edge next, int index) {
    double turnRad = next.startHeadingRad() - edge.endHeadingRad();
    if (Math.abs(Math.abs(Math.IEEEremainder(turnRad, 2.0 * Math.PI)) - Math.PI) < SPIKE_RAD) {
      throw new IllegalArgumentException(
          "A closed path turns straight back after edge "
              + (index + 1)
              + "; a corner must have some width.\nMove the corner or take it out.");
    }
  }

  /** Edges joined by nothing, or by an edge too short to see, are neighbours and may be near. */
  private static boolean meet(List<Edge> edges, double[] startMm, int i, int j) {
    Edge a = edges.get(i);
    Edge b = edges.get(j);
    double wholeMm = startMm[edges.size()];
    boolean shareEnd = startMm[j] - startMm[i + 1] < JOINT_SLACK_MM;
    boolean shareStart = startMm[i] + wholeMm - startMm[j + 1] < JOINT_SLACK_MM;
    if (!shareEnd && !shareStart) {
      return Clearance.betweenMm(a, b) < TOUCH_MM;
    }
    for (Point2 crossing : Clearance.crossings(a, b)) {
      boolean atEnd = shareEnd && crossing.distanceMm(a.to()) < 2.0 * JOINT_SLACK_MM;
      boolean atStart = shareStart && crossing.distanceMm(a.from()) < 2.0 * JOINT_SLACK_MM;
      if (!atEnd && !atStart) {
        return true;
      }
    }
    // The far end of an edge too short to see is near its neighbour by nature.
    boolean endTouches =
        a.lengthMm() > JOINT_SLACK_MM
            && ((!shareStart && b.distanceMm(a.from()) < TOUCH_MM)
                || (!shareEnd && b.distanceMm(a.to()) < TOUCH_MM));
    boolean otherTouches =
        b.lengthMm() > JOINT_SLACK_MM
            && ((!shareStart && a.distanceMm(b.to()) < TOUCH_MM)
                || (!shareEnd && a.distanceMm(b.from()) < TOUCH_MM));
    return endTouches || otherTouches;
  }

  private static double signedAreaMm2(List<Edge> edges) {
    double sum = 0.0;
    for (Edge edge : edges) {
      sum += edge.sweptAreaMm2();
    }
    return sum;
  }

  /** Enclosed area, mm2, whichever way round the path runs. Exact for arcs. */
  public double areaMm2() {
    return Math.abs(signedAreaMm2(edges));
  }

  public boolean isAnticlockwise() {
    return signedAreaMm2(edges) > 0.0;
  }

  public double lengthMm() {
    double sum = 0.0;
    for (Edge edge : edges) {
      sum += edge.lengthMm();
    }
    return sum;
  }

  public Bounds bounds() {
    Bounds bounds = edges.get(0).bounds();
    for (int i = 1; i < edges.size(); i++) {
      bounds = bounds.with(edges.get(i).bounds());
    }
    return bounds;
  }

  /** True when the point is inside. On the path itself the answer may be either. */
  public boolean contains(Point2 point) {
    double turnRad = 0.0;
    for (Edge edge : edges) {
      turnRad += edge.sightTurnRad(point);
    }
    return Math.abs(turnRad) > Math.PI;
  }

  /** Least distance from the point to the path. */
  public double distanceMm(Point2 point) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      least = Math.min(least, edge.distanceMm(point));
    }
    return least;
  }

  /** Least distance between the two paths; 0 when they cross. */
  public double distanceMm(Loop other) {
    double least = Double.POSITIVE_INFINITY;
    for (Edge edge : edges) {
      Bounds bounds = edge.bounds();
      for (Edge otherEdge : other.edges) {
        if (!bounds.apartMm(otherEdge.bounds(), least)) {
          least = Math.min(least, Clearance.betweenMm(edge, otherEdge));
        }
      }
    }
    return least;
  }

  public Loop reversed() {
    List<Edge> back = new ArrayList<>(edges.size());
    for (int i = edges.size() - 1; i >= 0; i--) {
      back.add(edges.get(i).reversed());
    }
    return new Loop(back);
  }

  /** The path put elsewhere; a mirrored one is also reversed, so it runs round the same way. */
  public Loop placed(Placement placement) {
    List<Edge> moved = new ArrayList<>(edges.size());
    for (int i = 0; i < edges.size(); i++) {
      Edge edge = edges.get(placement.mirrored() ? edges.size() - 1 - i : i).placed(placement);
      moved.add(placement.mirrored() ? edge.reversed() : edge);
    }
    return new Loop(moved);
  }

  /**
   * Corner points of a polygon on the path whose chords stay within the tolerance of its arcs. On a
   * bulging arc the true path lies outside its chords by up to the tolerance.
   */
  public List<Point2> polygon(double chordToleranceMm) {
    Dimension.positiveMm("chord tolerance", chordToleranceMm);
    List<Point2> points = new ArrayList<>();
    for (Edge edge : edges) {
      int chords = edge.chordCount(chordToleranceMm);
      for (int i = 0; i < chords; i++) {
        points.add(edge.at((double) i / chords));
      }
    }
    return points;
  }
}
