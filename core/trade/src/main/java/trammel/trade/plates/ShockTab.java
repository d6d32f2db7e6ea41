package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A shock tab with a straight base and a round nose. Axes: x along the base from its middle, y away
 * from it.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param baseWidthMm width of the base
 * @param holeHeightMm height of the hole above the base
 * @param holeDiameterMm hole diameter
 * @param noseRadiusMm metal about the hole, from its centre
 * @param rules metal about the hole
 */
public record ShockTab(
    String name,
    double thicknessMm,
    double baseWidthMm,
    double holeHeightMm,
    double holeDiameterMm,
    double noseRadiusMm,
    HoleRules rules)
    implements PlateShape {
  public ShockTab {
    Dimension.text("tab name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("hole diameter of " + name, holeDiameterMm);
    Dimension.positiveMm("base width of " + name, baseWidthMm);
    Dimension.atLeastMm(
        "hole height of " + name,
        holeHeightMm,
        noseRadiusMm,
        "Raise the hole, so that the nose stays above the base.");
    draw(name, thicknessMm, baseWidthMm, holeHeightMm, holeDiameterMm, noseRadiusMm, rules);
  }

  @Override
  public Outline outline() {
    return draw(name, thicknessMm, baseWidthMm, holeHeightMm, holeDiameterMm, noseRadiusMm, rules);
  }

  private static Outline draw(
      String name,
      double landMm,
      double baseMm,
      double heightMm,
      double holeMm,
      double noseMm,
      HoleRules rules) {
    double half = baseMm / 2.0;
    Point2 centre = new Point2(0.0, heightMm);
    List<Disc> discs = new ArrayList<>();
    discs.add(new Disc(centre, noseMm));
    discs.add(Disc.corner(new Point2(-half, 0.0)));
    discs.add(Disc.corner(new Point2(half, 0.0)));
    discs.add(Disc.corner(new Point2(-half, landMm)));
    discs.add(Disc.corner(new Point2(half, landMm)));
    List<Hole> holes = List.of(new RoundHole(centre, holeMm));
    return rules.check(name, new Outline(Belt.around(discs), holes));
  }
}
