package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A link tab, used in pairs, that saddles onto a round axle tube. Axes as seen from the side with
 * the tube's centre at the origin, so the pick-up hole lies where the layout puts it.
 *
 * <p>It is drawn once, when it is made.
 */
public final class TubeBracket implements PlateShape {
  /** A saddle of 120 degrees: common practice, no source. */
  public static final double USUAL_WRAP_RAD = Math.toRadians(120.0);

  /** Beyond a half turn the tab no longer goes on from the side. */
  private static final double MOST_WRAP_RAD = Math.toRadians(170.0);

  private static final double LEAST_WRAP_RAD = Math.toRadians(20.0);

  private static final Point2 TUBE_CENTRE = new Point2(0.0, 0.0);

  private final String name;
  private final double thicknessMm;
  private final double saddleRadiusMm;
  private final double saddleWrapRad;
  private final Outline outline;

  /**
   * @param name what the shop calls it
   * @param thicknessMm plate thickness
   * @param tubeDiameterMm outside diameter of the axle tube
   * @param weldGapMm clearance between saddle and tube, on the radius
   * @param saddleWrapRad how much of the tube's round the saddle spans
   * @param row pick-up hole or holes, measured from the tube's centre
   * @param rules metal about the holes
   */
  public TubeBracket(
      String name,
      double thicknessMm,
      double tubeDiameterMm,
      double weldGapMm,
      double saddleWrapRad,
      PickUpRow row,
      HoleRules rules) {
    Dimension.text("bracket name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("axle tube diameter", tubeDiameterMm);
    Dimension.notNegativeMm("weld gap of " + name, weldGapMm);
    Dimension.angleRad(
        "saddle of " + name,
        saddleWrapRad,
        LEAST_WRAP_RAD,
        MOST_WRAP_RAD,
        "Give 120\u00b0 unless something is in the way.");
    this.name = name;
    this.thicknessMm = thicknessMm;
    this.saddleRadiusMm = tubeDiameterMm / 2.0 + weldGapMm;
    this.saddleWrapRad = saddleWrapRad;
    outline = draw(name, thicknessMm, saddleRadiusMm, saddleWrapRad, row, rules);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public double thicknessMm() {
    return thicknessMm;
  }

  /** The tab whose hole lies at a distance and an angle (from x) from the tube's centre. */
  public static TubeBracket at(
      String name,
      double thicknessMm,
      double tubeDiameterMm,
      double offsetMm,
      double angleRad,
      double holeDiameterMm) {
    PickUpRow row = PickUpRow.single(Point2.polar(TUBE_CENTRE, offsetMm, angleRad), holeDiameterMm);
    return new TubeBracket(
        name, thicknessMm, tubeDiameterMm, 0.0, USUAL_WRAP_RAD, row, HoleRules.SHOP);
  }

  /** Radius the saddle is cut to. */
  public double saddleRadiusMm() {
    return saddleRadiusMm;
  }

  /** Length of the weld line along one face of the saddle. */
  public double saddleLengthMm() {
    return saddleRadiusMm * saddleWrapRad;
  }

  @Override
  public Outline outline() {
    return outline;
  }

  private static Outline draw(
      String name, double landMm, double radiusMm, double wrapRad, PickUpRow row, HoleRules rules) {
    requireHolesClearOfTube(name, radiusMm, row, rules);
    double axisRad = TUBE_CENTRE.headingRad(row.middle());
    Point2 start = Point2.polar(TUBE_CENTRE, radiusMm, axisRad - wrapRad / 2.0);
    Point2 end = Point2.polar(TUBE_CENTRE, radiusMm, axisRad + wrapRad / 2.0);
    List<Disc> discs = new ArrayList<>(row.noses());
    discs.add(Disc.corner(start));
    discs.add(Disc.corner(end));
    // A foot one plate thickness high leaves something to weld to where the side meets the tube.
    double footMm = radiusMm + landMm;
    discs.add(Disc.corner(Point2.polar(TUBE_CENTRE, footMm, axisRad - wrapRad / 2.0)));
    discs.add(Disc.corner(Point2.polar(TUBE_CENTRE, footMm, axisRad + wrapRad / 2.0)));
    Loop outer =
        Path.detour(
            Belt.around(discs),
            end,
            start,
            List.of(new Arc(end, start, TUBE_CENTRE, false)),
            "The saddle of "
                + name
                + " spans "
                + Dimension.degreesText(wrapRad)
                + " of the tube, which is narrower than the nose about its hole.\n"
                + "Give a wider saddle, move the hole further out, or make the nose smaller.");
    return rules.check(name, new Outline(outer, row.holes()));
  }

  private static void requireHolesClearOfTube(
      String name, double radiusMm, PickUpRow row, HoleRules rules) {
    double needMm = radiusMm + rules.edgeFactor() * row.holeDiameterMm();
    for (Point2 centre : row.centres()) {
      Dimension.atLeastMm(
          "distance of a hole of " + name + " from the tube's centre",
          TUBE_CENTRE.distanceMm(centre),
          needMm,
          "Move the pick-up point away from the tube, or use a smaller bolt.");
    }
  }
}
