package trammel.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import trammel.engine.geometry.Point3;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Loop;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;

/**
 * A weld along straight and round edges of a plane, such as the edges of an outline. Edges that do
 * not meet are welded one after another as one run.
 *
 * @param place the plane: its x and y axes are those of the edges
 * @param edges what it runs along, one at least
 */
public record FlatPath(Place place, List<Edge> edges) implements SeamPath {
  public FlatPath {
    edges = List.copyOf(edges);
    if (edges.isEmpty()) {
      throw new IllegalArgumentException("A weld has no edge to run along; give one at least.");
    }
  }

  /** A straight weld between two points of a plane. */
  public static FlatPath line(
      Place place, double startXMm, double startYMm, double endXMm, double endYMm) {
    return new FlatPath(
        place, List.of(new Straight(new Point2(startXMm, startYMm), new Point2(endXMm, endYMm))));
  }

  /**
   * A straight weld in space.
   *
   * @throws IllegalArgumentException if both ends are one point
   */
  public static FlatPath between(Point3 start, Point3 end) {
    Place along = Place.along(start, start.to(end));
    Place plane = Place.of(start, along.z(), along.x());
    return line(plane, 0, 0, start.distanceMm(end), 0);
  }

  /** A weld round part of a circle about the plane's origin. */
  public static FlatPath arc(Place place, double radiusMm, double middleRad, double wrapRad) {
    Point2 centre = new Point2(0, 0);
    return new FlatPath(
        place, List.of(Arc.about(centre, radiusMm, middleRad - wrapRad / 2, wrapRad)));
  }

  /** A weld once round a circle about the plane's origin. */
  public static FlatPath circle(Place place, double radiusMm) {
    return new FlatPath(place, List.of(Arc.circle(new Point2(0, 0), radiusMm)));
  }

  /** A weld once round a closed path. */
  public static FlatPath round(Place place, Loop loop) {
    return new FlatPath(place, loop.edges());
  }

  /** The same weld on the other face of a plate. */
  public FlatPath shifted(double alongNormalMm) {
    return new FlatPath(place.shifted(0, 0, alongNormalMm), edges);
  }

  @Override
  public double lengthMm() {
    return edges.stream().mapToDouble(Edge::lengthMm).sum();
  }

  @Override
  public List<Point3> points(double chordMm) {
    List<Point3> points = new ArrayList<>();
    for (List<Point3> stretch : stretches(chordMm)) {
      points.addAll(stretch);
    }
    return points;
  }

  /** The points of each stretch of edges that meet. */
  @Override
  public List<List<Point3>> stretches(double chordMm) {
    List<List<Point3>> stretches = new ArrayList<>();
    Edge before = null;
    for (Edge edge : edges) {
      if (before == null || before.to().distanceMm(edge.from()) > Loop.JOIN_MM) {
        stretches.add(new ArrayList<>(List.of(place.apply(edge.from()))));
      }
      int chords = edge.chordCount(chordMm);
      Stream.iterate(1, i -> i + 1)
          .limit(chords)
          .map(i -> place.apply(edge.at((double) i / chords)))
          .forEach(stretches.get(stretches.size() - 1)::add);
      before = edge;
    }
    return stretches;
  }
}
