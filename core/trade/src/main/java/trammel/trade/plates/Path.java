package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;

/** Draws a closed path edge by edge; a line to where the pen already stands draws nothing. */
final class Path {
  private final List<Edge> edges = new ArrayList<>();
  private final Point2 start;
  private Point2 pen;

  private Path(Point2 start) {
    this.start = start;
    this.pen = start;
  }

  static Path from(Point2 start) {
    return new Path(start);
  }

  static Path from(double xMm, double yMm) {
    return new Path(new Point2(xMm, yMm));
  }

  Path lineTo(Point2 point) {
    if (pen.distanceMm(point) >= Loop.JOIN_MM) {
      edges.add(new Straight(pen, point));
      pen = point;
    }
    return this;
  }

  Path lineTo(double xMm, double yMm) {
    return lineTo(new Point2(xMm, yMm));
  }

  Path arcTo(Point2 point, Point2 centre, boolean anticlockwise) {
    if (pen.distanceMm(point) >= Loop.JOIN_MM) {
      edges.add(new Arc(pen, point, centre, anticlockwise));
      pen = point;
    }
    return this;
  }

  Loop close() {
    lineTo(start);
    return new Loop(edges);
  }

  /** The path with its straight edge between two corners replaced by the edges of another way. */
  static Loop detour(Loop loop, Point2 from, Point2 to, List<Edge> way, String refusal) {
    List<Edge> edges = new ArrayList<>(loop.edges().size() + way.size());
    boolean found = false;
    for (Edge edge : loop.edges()) {
      if (edge instanceof Straight && joins(edge, from, to)) {
        edges.addAll(way);
        found = true;
      } else {
        edges.add(edge);
      }
    }
    if (!found) {
      throw new IllegalArgumentException(refusal);
    }
    return new Loop(edges);
  }

  private static boolean joins(Edge edge, Point2 from, Point2 to) {
    return edge.from().distanceMm(from) < Loop.JOIN_MM && edge.to().distanceMm(to) < Loop.JOIN_MM;
  }
}
