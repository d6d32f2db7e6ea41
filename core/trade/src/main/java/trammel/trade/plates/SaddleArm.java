package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A plate that stands on a round axle tube and ends in a straight edge, to which something else is
 * welded. Axes with the tube's centre at the origin, x towards the straight end, which is upright
 * to x.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param tubeDiameterMm outside diameter of the axle tube
 * @param saddleWrapRad how much of the tube's round the saddle spans
 * @param reachMm distance of the straight end from the tube's centre
 * @param lowMm lower corner of the straight end
 * @param highMm upper corner of the straight end
 */
public record SaddleArm(
    String name,
    double thicknessMm,
    double tubeDiameterMm,
    double saddleWrapRad,
    double reachMm,
    double lowMm,
    double highMm)
    implements PlateShape {
  private static final double LEAST_WRAP_RAD = Math.toRadians(20.0);
  private static final double MOST_WRAP_RAD = Math.toRadians(170.0);
  private static final Point2 TUBE_CENTRE = new Point2(0.0, 0.0);

  public SaddleArm {
    Dimension.text("arm name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("axle tube diameter", tubeDiameterMm);
    Dimension.angleRad(
        "saddle of " + name,
        saddleWrapRad,
        LEAST_WRAP_RAD,
        MOST_WRAP_RAD,
        "Give 120\u00b0 unless something is in the way.");
    Dimension.positiveMm("height of the end of " + name, highMm - lowMm);
    Dimension.atLeastMm(
        "reach of " + name + " from the tube's centre",
        reachMm,
        tubeDiameterMm / 2.0 + thicknessMm,
        "Move what it carries away from the tube.");
    draw(name, thicknessMm, tubeDiameterMm / 2.0, saddleWrapRad, reachMm, lowMm, highMm);
  }

  /** Length of the weld line along one face of the saddle. */
  public double saddleLengthMm() {
    return tubeDiameterMm / 2.0 * saddleWrapRad;
  }

  @Override
  public Outline outline() {
    return draw(name, thicknessMm, tubeDiameterMm / 2.0, saddleWrapRad, reachMm, lowMm, highMm);
  }

  private static Outline draw(
      String name,
      double landMm,
      double radiusMm,
      double wrapRad,
      double reachMm,
      double lowMm,
      double highMm) {
    double axisRad = TUBE_CENTRE.headingRad(new Point2(reachMm, (lowMm + highMm) / 2.0));
    Point2 start = Point2.polar(TUBE_CENTRE, radiusMm, axisRad - wrapRad / 2.0);
    Point2 end = Point2.polar(TUBE_CENTRE, radiusMm, axisRad + wrapRad / 2.0);
    double footMm = radiusMm + landMm;
    List<Disc> discs = new ArrayList<>(6);
    discs.add(Disc.corner(start));
    discs.add(Disc.corner(end));
    discs.add(Disc.corner(Point2.polar(TUBE_CENTRE, footMm, axisRad - wrapRad / 2.0)));
    discs.add(Disc.corner(Point2.polar(TUBE_CENTRE, footMm, axisRad + wrapRad / 2.0)));
    discs.add(Disc.corner(new Point2(reachMm, lowMm)));
    discs.add(Disc.corner(new Point2(reachMm, highMm)));
    return Outline.solid(
        Path.detour(
            Belt.around(discs),
            end,
            start,
            List.of(new Arc(end, start, TUBE_CENTRE, false)),
            "The end of "
                + name
                + " reaches back past its saddle.\n"
                + "Move the end away from the tube, or make it less high."));
  }
}
