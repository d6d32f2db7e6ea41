package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * The axle-side bracket of a lateral bar: two face plates along the tube, in front of it and
 * behind, held apart by ribs that saddle onto the tube. Axes of a face plate seen from behind: x
 * along the tube, y up, the origin at the tube's centre line in the middle of the base.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param tubeDiameterMm outside diameter of the axle tube
 * @param baseLengthMm length along the tube
 * @param insideMm room between the two face plates: the width of the bar's joint and its washers
 * @param row pick-up hole or holes above the tube's centre line
 * @param rules metal about the holes
 */
public record LateralBarAxleBracket(
    String name,
    double thicknessMm,
    double tubeDiameterMm,
    double baseLengthMm,
    double insideMm,
    PickUpRow row,
    HoleRules rules)
    implements PlateShape {

  public LateralBarAxleBracket {
    Dimension.text("bracket name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("axle tube diameter", tubeDiameterMm);
    Dimension.positiveMm("base length of " + name, baseLengthMm);
    Dimension.positiveMm("room inside " + name, insideMm);
    Dimension.atMostMm(
        "room inside " + name,
        insideMm,
        0.98 * tubeDiameterMm,
        "Use a narrower joint: the two plates must land on the tube.");
    draw(name, thicknessMm, tubeDiameterMm, baseLengthMm, insideMm, row, rules);
  }

  @Override
  public Outline outline() {
    return draw(name, thicknessMm, tubeDiameterMm, baseLengthMm, insideMm, row, rules);
  }

  /** Height above the tube's centre line where the inner faces of the plates meet the tube. */
  public double landingHeightMm() {
    return landingHeightMm(tubeDiameterMm, insideMm);
  }

  /** The rib between the face plates, from the saddle up to the given height. */
  public SaddleRib rib(double topHeightMm, double weldGapMm) {
    return new SaddleRib(
        name + " rib", thicknessMm, tubeDiameterMm, weldGapMm, insideMm, topHeightMm);
  }

  private static double landingHeightMm(double tubeDiameterMm, double insideMm) {
    double radiusMm = tubeDiameterMm / 2.0;
    return Math.sqrt(radiusMm * radiusMm - insideMm * insideMm / 4.0);
  }

  private static Outline draw(
      String name,
      double landMm,
      double tubeDiameterMm,
      double baseMm,
      double insideMm,
      PickUpRow row,
      HoleRules rules) {
    double baseHeightMm = landingHeightMm(tubeDiameterMm, insideMm);
    requireHolesAboveTube(name, tubeDiameterMm, row, rules);
    double half = baseMm / 2.0;
    List<Disc> discs = new ArrayList<>(row.noses());
    discs.add(Disc.corner(new Point2(-half, baseHeightMm)));
    discs.add(Disc.corner(new Point2(half, baseHeightMm)));
    discs.add(Disc.corner(new Point2(-half, baseHeightMm + landMm)));
    discs.add(Disc.corner(new Point2(half, baseHeightMm + landMm)));
    Loop outer = Belt.around(discs);
    if (outer.bounds().minYMm() < baseHeightMm - Loop.JOIN_MM) {
      throw Dimension.refuse(
          "nose of " + name,
          Dimension.lengthText(baseHeightMm - outer.bounds().minYMm()) + " lower than its base",
          "level with the base or higher",
          "Raise the pick-up point, or make the nose smaller.");
    }
    return rules.check(name, new Outline(outer, row.holes()));
  }

  private static void requireHolesAboveTube(
      String name, double tubeDiameterMm, PickUpRow row, HoleRules rules) {
    double needMm = tubeDiameterMm / 2.0 + rules.edgeFactor() * row.holeDiameterMm();
    for (Point2 centre : row.centres()) {
      Dimension.atLeastMm(
          "height of a hole of " + name + " above the tube's centre line",
          centre.yMm(),
          needMm,
          "Raise the pick-up point, or use a smaller bolt.");
    }
  }
}
