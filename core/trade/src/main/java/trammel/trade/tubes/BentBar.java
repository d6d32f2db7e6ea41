package trammel.trade.tubes;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;
import trammel.trade.plates.Arc;
import trammel.trade.plates.Edge;
import trammel.trade.plates.Point2;
import trammel.trade.plates.Straight;

/**
 * The centre line of a bar in its own plane: straight legs with bends between them. The first leg
 * starts at the origin along x.
 *
 * @param legsMm straight lengths from bend to bend, between the points where they touch; the first
 *     and last reach to the joint centres
 * @param bends bends between the legs, one fewer
 */
public record BentBar(List<Double> legsMm, List<Bend> bends) {
  private static final int MOST_BENDS = 12;
  private static final double MOST_ARCH_RAD = Math.toRadians(80.0);

  public BentBar {
    legsMm = List.copyOf(legsMm);
    bends = List.copyOf(bends);
    Dimension.count("number of bends", bends.size(), 0, MOST_BENDS);
    Dimension.count("number of legs", legsMm.size(), bends.size() + 1, bends.size() + 1);
    for (int i = 0; i < legsMm.size(); i++) {
      Dimension.positiveMm("leg " + (i + 1) + " of the bar", legsMm.get(i));
    }
  }

  /** A straight bar between two joint centres. */
  public static BentBar straight(double centreToCentreMm) {
    return new BentBar(List.of(centreToCentreMm), List.of());
  }

  /** A bar with one bend in its middle that stands off the straight line by a wanted offset. */
  public static BentBar arched(double centreToCentreMm, double offsetMm, double bendRadiusMm) {
    double halfMm = Dimension.positiveMm("centre distance", centreToCentreMm) / 2.0;
    Dimension.positiveMm("offset of the bend", offsetMm);
    Dimension.positiveMm("bend radius", bendRadiusMm);
    // With a half the bend: offset = half tan a - R (1/cos a - 1),
    // so half sin a + (R - offset) cos a = R.
    double reachMm = Math.hypot(halfMm, bendRadiusMm - offsetMm);
    double halfBendRad =
        Math.asin(Math.min(1.0, bendRadiusMm / reachMm))
            - Math.atan2(bendRadiusMm - offsetMm, halfMm);
    double legMm = (halfMm - bendRadiusMm * Math.sin(halfBendRad)) / Math.cos(halfBendRad);
    if (!(halfBendRad > 0.0 && halfBendRad <= MOST_ARCH_RAD && legMm > 0.0)) {
      throw tooMuch("offset of the bend", offsetMm, centreToCentreMm);
    }
    return new BentBar(List.of(legMm, legMm), List.of(new Bend(2.0 * halfBendRad, bendRadiusMm)));
  }

  /** A bar with two equal and opposite bends: its end legs are parallel, an offset apart. */
  public static BentBar joggled(
      double endLegMm, double bendRad, double bendRadiusMm, double offsetMm) {
    Dimension.positiveMm("offset of the joggle", offsetMm);
    Dimension.angleRad(
        "bend of the joggle", bendRad, 1e-3, Math.PI / 2.0, "Give the angle of one bend.");
    double byBendsMm = 2.0 * bendRadiusMm * (1.0 - Math.cos(bendRad));
    double middleMm = (offsetMm - byBendsMm) / Math.sin(bendRad);
    if (!(middleMm > 0.0)) {
      throw Dimension.refuse(
          "offset of the joggle",
          Dimension.lengthText(offsetMm),
          "more than " + Dimension.lengthText(byBendsMm) + ", which the two bends make alone",
          "Bend less, use a smaller radius or a larger offset.");
    }
    return new BentBar(
        List.of(endLegMm, middleMm, endLegMm),
        List.of(new Bend(bendRad, bendRadiusMm), new Bend(-bendRad, bendRadiusMm)));
  }

  private static IllegalArgumentException tooMuch(String what, double offsetMm, double spanMm) {
    return Dimension.refuse(
        what,
        Dimension.lengthText(offsetMm),
        "what one bend can reach over " + Dimension.lengthText(spanMm),
        "Use a smaller offset, a smaller bend radius, or two bends.");
  }

  /** Length of tube before bending: legs and arcs along the centre line. */
  public double developedLengthMm() {
    double sum = 0.0;
    for (double legMm : legsMm) {
      sum += legMm;
    }
    for (Bend bend : bends) {
      sum += bend.lengthMm();
    }
    return sum;
  }

  /** Straight distance between the two joint centres. */
  public double centreToCentreMm() {
    List<Edge> line = centreLine();
    return line.get(0).from().distanceMm(line.get(line.size() - 1).to());
  }

  /**
   * Greatest distance of the centre line from the straight line through the two joint centres: the
   * offset that bends the bar when it is pushed.
   */
  public double offsetMm() {
    List<Edge> line = centreLine();
    Point2 start = line.get(0).from();
    double headingRad = start.headingRad(line.get(line.size() - 1).to());
    double most = 0.0;
    for (Edge edge : line) {
      most = Math.max(most, Math.abs(asideMm(start, headingRad, edge.to())));
      if (edge instanceof Arc arc) {
        most = Math.max(most, apexMm(start, headingRad, arc));
      }
    }
    return most;
  }

  private static double asideMm(Point2 start, double headingRad, Point2 point) {
    return (point.yMm() - start.yMm()) * Math.cos(headingRad)
        - (point.xMm() - start.xMm()) * Math.sin(headingRad);
  }

  /** Where the arc runs along the straight line it is furthest from it. */
  private static double apexMm(Point2 start, double headingRad, Arc arc) {
    double most = 0.0;
    for (int side = -1; side <= 1; side += 2) {
      double apexRad = headingRad + side * Math.PI / 2.0;
      double past = arc.anticlockwise() ? apexRad - arc.startRad() : arc.startRad() - apexRad;
      double turnedRad = past - 2.0 * Math.PI * Math.floor(past / (2.0 * Math.PI));
      if (turnedRad <= Math.abs(arc.sweepRad())) {
        Point2 apex = Point2.polar(arc.centre(), arc.radiusMm(), apexRad);
        most = Math.max(most, Math.abs(asideMm(start, headingRad, apex)));
      }
    }
    return most;
  }

  /** Legs and bends in order, for drawing. */
  public List<Edge> centreLine() {
    List<Edge> line = new ArrayList<>();
    Point2 pen = new Point2(0.0, 0.0);
    double headingRad = 0.0;
    for (int i = 0; i < legsMm.size(); i++) {
      Point2 end = Point2.polar(pen, legsMm.get(i), headingRad);
      line.add(new Straight(pen, end));
      pen = end;
      if (i < bends.size()) {
        Arc arc = arc(pen, headingRad, bends.get(i));
        line.add(arc);
        pen = arc.to();
        headingRad += bends.get(i).angleRad();
      }
    }
    return line;
  }

  private static Arc arc(Point2 pen, double headingRad, Bend bend) {
    double side = Math.signum(bend.angleRad());
    double inwardRad = headingRad + side * Math.PI / 2.0;
    Point2 centre = Point2.polar(pen, bend.radiusMm(), inwardRad);
    Point2 end = Point2.polar(centre, bend.radiusMm(), inwardRad + Math.PI + bend.angleRad());
    return new Arc(pen, end, centre, side > 0.0);
  }
}
