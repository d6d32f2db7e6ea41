package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A plate that closes an open rail: it follows the rail's inside depth from station to station,
 * less a weld gap at each flange. Axes of the stations: x along the rail, y up.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param stations the rail's inside, in order along it, two or more
 * @param weldGapMm gap to each flange, square to its edge
 * @param plugs plug-weld holes along the middle; {@link PlugWelds#NONE} for none
 * @param openings pass-through holes for lines, wiring or exhaust, in the stations' axes
 */
public record BoxingPlate(
    String name,
    double thicknessMm,
    List<RailStation> stations,
    double weldGapMm,
    PlugWelds plugs,
    List<Hole> openings)
    implements PlateShape {

  public BoxingPlate {
    Dimension.text("boxing plate name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.notNegativeMm("weld gap of " + name, weldGapMm);
    stations = List.copyOf(stations);
    openings = List.copyOf(openings);
    Dimension.count("number of rail stations of " + name, stations.size(), 2, 50);
    for (int i = 1; i < stations.size(); i++) {
      Dimension.positiveMm(
          "distance from rail station " + i + " to the next",
          stations.get(i).alongMm() - stations.get(i - 1).alongMm());
    }
    draw(name, stations, weldGapMm, plugs, openings);
  }

  /** A plate for a rail of even depth. */
  public static BoxingPlate even(
      String name, double thicknessMm, double runMm, double insideDepthMm, double weldGapMm) {
    return tapered(name, thicknessMm, runMm, insideDepthMm, insideDepthMm, weldGapMm);
  }

  /**
   * A plate for a rail with a straight top whose depth changes evenly from one end to the other.
   */
  public static BoxingPlate tapered(
      String name,
      double thicknessMm,
      double runMm,
      double startDepthMm,
      double endDepthMm,
      double weldGapMm) {
    List<RailStation> stations =
        List.of(new RailStation(0.0, -startDepthMm, 0.0), new RailStation(runMm, -endDepthMm, 0.0));
    return new BoxingPlate(name, thicknessMm, stations, weldGapMm, PlugWelds.NONE, List.of());
  }

  public BoxingPlate withPlugs(PlugWelds plugWelds) {
    return new BoxingPlate(name, thicknessMm, stations, weldGapMm, plugWelds, openings);
  }

  public BoxingPlate withOpenings(List<Hole> passThrough) {
    return new BoxingPlate(name, thicknessMm, stations, weldGapMm, plugs, passThrough);
  }

  /** Length along the rail. */
  public double runMm() {
    return stations.get(stations.size() - 1).alongMm() - stations.get(0).alongMm();
  }

  @Override
  public Outline outline() {
    return draw(name, stations, weldGapMm, plugs, openings);
  }

  private static Outline draw(
      String name, List<RailStation> stations, double gapMm, PlugWelds plugs, List<Hole> openings) {
    List<Point2> lower = new ArrayList<>(stations.size());
    List<Point2> upper = new ArrayList<>(stations.size());
    for (RailStation station : stations) {
      lower.add(new Point2(station.alongMm(), station.lowerMm()));
      upper.add(new Point2(station.alongMm(), station.upperMm()));
    }
    List<Point2> corners = new ArrayList<>(raised(lower, gapMm));
    List<Point2> top = raised(upper, -gapMm);
    for (int i = top.size() - 1; i >= 0; i--) {
      corners.add(top.get(i));
    }
    for (int i = 0; i < top.size(); i++) {
      Dimension.positiveMm(
          "height of " + name + " at rail station " + (i + 1),
          top.get(i).yMm() - corners.get(i).yMm());
    }
    List<Hole> holes = new ArrayList<>(plugs.along(stations));
    holes.addAll(openings);
    return new Outline(Loop.through(corners), holes);
  }

  /** The line through the points moved square to itself, up when positive, its ends kept in x. */
  private static List<Point2> raised(List<Point2> points, double byMm) {
    int last = points.size() - 1;
    List<Point2> moved = new ArrayList<>(points.size());
    for (int i = 0; i <= last; i++) {
      double beforeRad = i == 0 ? slopeRad(points, 0) : slopeRad(points, i - 1);
      double afterRad = i == last ? slopeRad(points, last - 1) : slopeRad(points, i);
      if (i == 0 || i == last) {
        moved.add(points.get(i).shifted(0.0, byMm / Math.cos(beforeRad)));
      } else {
        double middleRad = (beforeRad + afterRad) / 2.0;
        double reachMm = byMm / Math.cos((afterRad - beforeRad) / 2.0);
        moved.add(Point2.polar(points.get(i), reachMm, middleRad + Math.PI / 2.0));
      }
    }
    return moved;
  }

  private static double slopeRad(List<Point2> points, int index) {
    return points.get(index).headingRad(points.get(index + 1));
  }
}
