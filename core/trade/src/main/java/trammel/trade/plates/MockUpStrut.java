package trammel.trade.plates;

import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A flat strut that stands in for the shock while fitting up: two holes at the shock's length at
 * ride height, round ends. Axes: x along the strut from the lower hole.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param rideLengthMm distance between the hole centres
 * @param holeDiameterMm hole diameter
 * @param noseRadiusMm radius of the ends, so half the width
 * @param rules metal about the holes
 */
public record MockUpStrut(
    String name,
    double thicknessMm,
    double rideLengthMm,
    double holeDiameterMm,
    double noseRadiusMm,
    HoleRules rules)
    implements PlateShape {
  public MockUpStrut {
    Dimension.text("strut name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("ride length of " + name, rideLengthMm);
    Dimension.positiveMm("hole diameter of " + name, holeDiameterMm);
    Dimension.positiveMm("end radius of " + name, noseRadiusMm);
    draw(name, rideLengthMm, holeDiameterMm, noseRadiusMm, rules);
  }

  @Override
  public Outline outline() {
    return draw(name, rideLengthMm, holeDiameterMm, noseRadiusMm, rules);
  }

  private static Outline draw(
      String name, double lengthMm, double holeMm, double noseMm, HoleRules rules) {
    Point2 lower = new Point2(0.0, 0.0);
    Point2 upper = new Point2(lengthMm, 0.0);
    Loop outer = Belt.around(List.of(new Disc(lower, noseMm), new Disc(upper, noseMm)));
    List<Hole> holes = List.of(new RoundHole(lower, holeMm), new RoundHole(upper, holeMm));
    return rules.check(name, new Outline(outer, holes));
  }
}
