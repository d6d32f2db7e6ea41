package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * The frame-side bracket plate of a lateral bar. The bar swings in the transverse plane, so the
 * plate stands across the rail: a foot under the rail's bottom and a leg up its inner side, with a
 * row of holes below. Axes seen from behind: x from the rail's inner face inboard, y up, the origin
 * at the rail's lower inner corner; the rail fills the quarter x below 0, y above 0.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param footMm length of the foot under the rail, from its inner face outwards
 * @param legHeightMm height of the leg up the rail's inner face
 * @param legWidthMm width of the leg at its top
 * @param cornerReliefMm radius cut out about the rail's corner, clear of its radius and welds
 * @param row pick-up hole or holes
 * @param rules metal about the holes
 */
public record LateralBarRailBracket(
    String name,
    double thicknessMm,
    double footMm,
    double legHeightMm,
    double legWidthMm,
    double cornerReliefMm,
    PickUpRow row,
    HoleRules rules)
    implements PlateShape {
  private static final Point2 RAIL_CORNER = new Point2(0.0, 0.0);

  public LateralBarRailBracket {
    Dimension.text("bracket name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("corner relief of " + name, cornerReliefMm);
    Dimension.atLeastMm(
        "foot of " + name, footMm, 2.0 * cornerReliefMm, "Use more of the rail's width.");
    Dimension.atLeastMm(
        "leg height of " + name,
        legHeightMm,
        2.0 * cornerReliefMm,
        "Use more of the rail's depth.");
    Dimension.atLeastMm(
        "leg width of " + name,
        legWidthMm,
        2.0 * thicknessMm,
        "Give at least twice the plate thickness.");
    draw(name, thicknessMm, footMm, legHeightMm, legWidthMm, cornerReliefMm, row, rules);
  }

  /** Length of the weld line along one face: under the rail and up its side. */
  public double weldLineMm() {
    return footMm + legHeightMm - 2.0 * cornerReliefMm;
  }

  @Override
  public Outline outline() {
    return draw(name, thicknessMm, footMm, legHeightMm, legWidthMm, cornerReliefMm, row, rules);
  }

  private static Outline draw(
      String name,
      double landMm,
      double footMm,
      double legHeightMm,
      double legWidthMm,
      double reliefMm,
      PickUpRow row,
      HoleRules rules) {
    Point2 legTop = new Point2(0.0, legHeightMm);
    Point2 footEnd = new Point2(-footMm, 0.0);
    List<Disc> discs = new ArrayList<>(row.noses());
    discs.add(Disc.corner(legTop));
    discs.add(Disc.corner(new Point2(legWidthMm, legHeightMm)));
    discs.add(Disc.corner(footEnd));
    discs.add(Disc.corner(new Point2(-footMm, -landMm)));
    Point2 reliefTop = new Point2(0.0, reliefMm);
    Point2 reliefSide = new Point2(-reliefMm, 0.0);
    List<Edge> alongRail =
        List.of(
            new Straight(legTop, reliefTop),
            new Arc(reliefTop, reliefSide, RAIL_CORNER, false),
            new Straight(reliefSide, footEnd));
    Loop outer =
        Path.detour(
            Belt.around(discs),
            legTop,
            footEnd,
            alongRail,
            "A hole of "
                + name
                + " lies beyond its foot or above its leg; the holes must lie below the rail or"
                + " inboard of it.\nMove the pick-up point, or use a longer foot or leg.");
    return rules.check(name, new Outline(outer, row.holes()));
  }
}
