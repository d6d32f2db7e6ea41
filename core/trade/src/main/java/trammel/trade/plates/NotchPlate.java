package trammel.trade.plates;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * The side plate of a circular notch in a frame rail, with its lining strip. The rail's lower edge
 * is cut to an arc over the axle tube; a strip lines the arc, and a half ring with flats stiffens
 * each side of the rail. Axes: x along the rail from the middle of the notch, y up from the rail's
 * lower edge.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness, of strip and side plates alike
 * @param cutRadiusMm radius cut into the rail, on which the strip's outer face lies
 * @param depthMm height of the notch above the rail's lower edge, at most the radius
 * @param ringWidthMm width of the side plate about the cut, and height of its flats
 * @param flatLengthMm length of each flat along the rail, beyond the notch
 * @param rootRadiusMm radius where ring and flat meet
 * @param stripWidthMm width of the strip: the rail's width, or its flange
 */
public record NotchPlate(
    String name,
    double thicknessMm,
    double cutRadiusMm,
    double depthMm,
    double ringWidthMm,
    double flatLengthMm,
    double rootRadiusMm,
    double stripWidthMm)
    implements PlateShape {
  public NotchPlate {
    Dimension.text("notch name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.atLeastMm(
        "cut radius of " + name,
        cutRadiusMm,
        4.0 * thicknessMm,
        "Use a thinner strip or a larger radius: the strip must roll to it.");
    Dimension.positiveMm("depth of " + name, depthMm);
    Dimension.atMostMm(
        "depth of " + name, depthMm, cutRadiusMm, "Use a larger radius for a deeper notch.");
    Dimension.positiveMm("ring width of " + name, ringWidthMm);
    Dimension.positiveMm("flat length of " + name, flatLengthMm);
    Dimension.positiveMm("root radius of " + name, rootRadiusMm);
    Dimension.positiveMm("strip width of " + name, stripWidthMm);
    draw(name, cutRadiusMm, depthMm, ringWidthMm, flatLengthMm, rootRadiusMm);
  }

  /** Half the angle of the arc: from the middle of the notch to the rail's lower edge. */
  public double halfAngleRad() {
    return Math.acos((cutRadiusMm - depthMm) / cutRadiusMm);
  }

  /** Width of the notch along the rail's lower edge. */
  public double openingMm() {
    return 2.0 * halfOpeningMm(cutRadiusMm, depthMm);
  }

  /** Length of the strip before rolling, on the middle of its thickness. */
  public double stripLengthMm() {
    return 2.0 * halfAngleRad() * (cutRadiusMm - thicknessMm / 2.0);
  }

  /** The strip that lines the notch, flat. */
  public Plate strip(String material) {
    return flat(name + " strip", stripLengthMm(), material);
  }

  private Plate flat(String strip, double lengthMm, String material) {
    Loop loop =
        Path.from(0.0, 0.0)
            .lineTo(lengthMm, 0.0)
            .lineTo(lengthMm, stripWidthMm)
            .lineTo(0.0, stripWidthMm)
            .close();
    return new Plate(strip, Outline.solid(loop), thicknessMm, material);
  }

  /** The arc that is cut out of the rail, from the rear end of the opening to its front. */
  public Arc cut() {
    double halfMm = halfOpeningMm(cutRadiusMm, depthMm);
    return new Arc(
        new Point2(-halfMm, 0.0),
        new Point2(halfMm, 0.0),
        new Point2(0.0, depthMm - cutRadiusMm),
        false);
  }

  /**
   * The line along which a strip that joins raised side plates over a rail meets their upper edge,
   * from the front to the rear; it ends where its lower face meets the rail's top.
   *
   * @param railDepthMm depth of the rail, less than the plates are high by more than their
   *     thickness
   */
  public Arc topStrip(double railDepthMm) {
    Point2 centre = new Point2(0.0, depthMm - cutRadiusMm);
    double outerMm = cutRadiusMm + ringWidthMm;
    double startRad = Math.asin((railDepthMm - centre.yMm()) / (outerMm - thicknessMm));
    return Arc.about(centre, outerMm, startRad, Math.PI - 2 * startRad);
  }

  /** Half the length of the rail's top that is under that strip. */
  public double halfUnderTopStripMm(double railDepthMm) {
    Arc outside = topStrip(railDepthMm);
    return (outside.radiusMm() - thicknessMm) * Math.cos(outside.startRad());
  }

  /** That strip, flat. */
  public Plate topStrip(String material, double railDepthMm) {
    Arc outside = topStrip(railDepthMm);
    double lengthMm = outside.sweepRad() * (outside.radiusMm() - thicknessMm / 2.0);
    return flat(name + " top strip", lengthMm, material);
  }

  /** That strip as seen from the side, rolled. */
  public Outline rolledTopStrip(double railDepthMm) {
    Arc outside = topStrip(railDepthMm);
    return rolled(outside, outside.radiusMm() - thicknessMm);
  }

  /**
   * Edges along which the plate is welded to a rail of a depth: its own, but for the cut, as far as
   * they lie on the rail, and the line where it stands up from the rail's top.
   *
   * @param railDepthMm depth of the rail
   */
  public List<Edge> weldedTo(double railDepthMm) {
    List<Edge> welded = new ArrayList<>();
    double halfMm = 0;
    for (Edge edge : outline().outer().edges()) {
      if (edge instanceof Arc arc && edge.bounds().maxYMm() > railDepthMm + Loop.JOIN_MM) {
        for (Arc part : below(railDepthMm, arc)) {
          welded.add(part);
          halfMm = Math.max(halfMm, nearerTo(railDepthMm, part));
        }
      } else if (!isCut(edge)) {
        welded.add(edge);
      }
    }
    if (halfMm > 0) {
      welded.add(new Straight(new Point2(halfMm, railDepthMm), new Point2(-halfMm, railDepthMm)));
    }
    return List.copyOf(welded);
  }

  /** The parts of an arc under a level. */
  private static List<Arc> below(double levelMm, Arc arc) {
    double sine = (levelMm - arc.centre().yMm()) / arc.radiusMm();
    double sweepRad = arc.sweepRad();
    double way = Math.signum(sweepRad);
    List<Double> turns = new ArrayList<>(List.of(0.0, Math.abs(sweepRad)));
    if (Math.abs(sine) < 1) {
      double fullRad = 2 * Math.PI;
      for (double atRad : new double[] {Math.asin(sine), Math.PI - Math.asin(sine)}) {
        double turnRad = way * (atRad - arc.startRad());
        turnRad -= fullRad * Math.floor(turnRad / fullRad);
        if (turnRad < Math.abs(sweepRad)) {
          turns.add(turnRad);
        }
      }
    }
    Collections.sort(turns);
    List<Arc> parts = new ArrayList<>();
    for (int i = 0; i + 1 < turns.size(); i++) {
      double fromRad = arc.startRad() + way * turns.get(i);
      double turnRad = way * (turns.get(i + 1) - turns.get(i));
      double midRad = fromRad + turnRad / 2;
      boolean isUnder = arc.centre().yMm() + arc.radiusMm() * Math.sin(midRad) < levelMm;
      if (isUnder && Math.abs(turnRad) * arc.radiusMm() > Loop.JOIN_MM) {
        parts.add(Arc.about(arc.centre(), arc.radiusMm(), fromRad, turnRad));
      }
    }
    return parts;
  }

  /** Distance from the middle of the end of an arc that lies on a level; 0 where none does. */
  private static double nearerTo(double levelMm, Arc arc) {
    double mm = 0;
    for (Point2 end : new Point2[] {arc.from(), arc.to()}) {
      if (Math.abs(end.yMm() - levelMm) < Loop.JOIN_MM) {
        mm = Math.max(mm, Math.abs(end.xMm()));
      }
    }
    return mm;
  }

  /** True for the edge of the plate's outline that lies along the cut. */
  public boolean isCut(Edge edge) {
    return edge instanceof Arc arc
        && arc.centre().distanceMm(cut().centre()) < Loop.JOIN_MM
        && Math.abs(arc.radiusMm() - cutRadiusMm) < Loop.JOIN_MM;
  }

  /** The strip in the cut as seen from the side, rolled. */
  public Outline rolledStrip() {
    return rolled(cut(), cutRadiusMm - thicknessMm);
  }

  private static Outline rolled(Arc outside, double insideMm) {
    double startRad = outside.startRad();
    double sweepRad = outside.sweepRad();
    Arc inside = Arc.about(outside.centre(), insideMm, startRad + sweepRad, -sweepRad);
    return Outline.solid(
        Path.from(outside.from())
            .arcTo(outside.to(), outside.centre(), outside.anticlockwise())
            .lineTo(inside.from())
            .arcTo(inside.to(), outside.centre(), inside.anticlockwise())
            .close());
  }

  @Override
  public Outline outline() {
    return draw(name, cutRadiusMm, depthMm, ringWidthMm, flatLengthMm, rootRadiusMm);
  }

  private static double halfOpeningMm(double radiusMm, double depthMm) {
    return Math.sqrt(depthMm * (2.0 * radiusMm - depthMm));
  }

  private static Outline draw(
      String name, double radiusMm, double depthMm, double ringMm, double flatMm, double rootMm) {
    Point2 centre = new Point2(0.0, depthMm - radiusMm);
    double halfMm = halfOpeningMm(radiusMm, depthMm);
    double outerMm = radiusMm + ringMm;
    double endMm = halfMm + flatMm;
    // The root circle touches the flat's top (y = ring width) and the outer arc from outside.
    double rootHeightMm = ringMm + rootMm - centre.yMm();
    double reachMm = outerMm + rootMm;
    double rootXMm = Math.sqrt(Math.max(0.0, reachMm * reachMm - rootHeightMm * rootHeightMm));
    Dimension.atLeastMm(
        "flat of " + name,
        flatMm,
        rootXMm - halfMm,
        "Make the flats longer, the ring narrower or the root radius smaller.");
    Point2 rightRoot = new Point2(rootXMm, ringMm + rootMm);
    Point2 leftRoot = new Point2(-rootXMm, ringMm + rootMm);
    Point2 rightTouch = Point2.polar(centre, outerMm, centre.headingRad(rightRoot));
    Point2 leftTouch = Point2.polar(centre, outerMm, centre.headingRad(leftRoot));
    return Outline.solid(
        Path.from(halfMm, 0.0)
            .lineTo(endMm, 0.0)
            .lineTo(endMm, ringMm)
            .lineTo(rootXMm, ringMm)
            .arcTo(rightTouch, rightRoot, false)
            .arcTo(leftTouch, centre, true)
            .arcTo(new Point2(-rootXMm, ringMm), leftRoot, false)
            .lineTo(-endMm, ringMm)
            .lineTo(-endMm, 0.0)
            .lineTo(-halfMm, 0.0)
            .arcTo(new Point2(halfMm, 0.0), centre, false)
            .close());
  }
}
