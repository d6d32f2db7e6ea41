package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A round spring or air-spring seat with a centre hole and a ring of bolt holes, about the origin.
 *
 * @param name what the shop calls it
 * @param thicknessMm plate thickness
 * @param diameterMm outside diameter
 * @param centreHoleMm diameter of the centre hole; 0 for none
 * @param boltHoleMm diameter of each bolt hole
 * @param boltCircleMm diameter of the circle through their centres
 * @param bolts number of bolt holes; 0 for none
 * @param firstBoltRad direction of the first, anticlockwise from x
 * @param rules metal about the holes
 */
public record SpringSeat(
    String name,
    double thicknessMm,
    double diameterMm,
    double centreHoleMm,
    double boltHoleMm,
    double boltCircleMm,
    int bolts,
    double firstBoltRad,
    HoleRules rules)
    implements PlateShape {
  private static final int MOST_BOLTS = 24;

  public SpringSeat {
    Dimension.text("seat name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("diameter of " + name, diameterMm);
    Dimension.notNegativeMm("centre hole of " + name, centreHoleMm);
    Dimension.count("number of bolt holes of " + name, bolts, 0, MOST_BOLTS);
    Dimension.angleRad(
        "direction of the first bolt",
        firstBoltRad,
        -2.0 * Math.PI,
        2.0 * Math.PI,
        "Give it within one turn.");
    if (bolts > 0) {
      Dimension.positiveMm("bolt hole of " + name, boltHoleMm);
      Dimension.positiveMm("bolt circle of " + name, boltCircleMm);
    }
    draw(name, diameterMm, centreHoleMm, boltHoleMm, boltCircleMm, bolts, firstBoltRad, rules);
  }

  @Override
  public Outline outline() {
    return draw(
        name, diameterMm, centreHoleMm, boltHoleMm, boltCircleMm, bolts, firstBoltRad, rules);
  }

  private static Outline draw(
      String name,
      double diameterMm,
      double centreHoleMm,
      double boltHoleMm,
      double boltCircleMm,
      int bolts,
      double firstBoltRad,
      HoleRules rules) {
    Point2 centre = new Point2(0.0, 0.0);
    List<Hole> holes = new ArrayList<>();
    for (int i = 0; i < bolts; i++) {
      double angleRad = firstBoltRad + i * 2.0 * Math.PI / bolts;
      holes.add(new RoundHole(Point2.polar(centre, boltCircleMm / 2.0, angleRad), boltHoleMm));
    }
    if (centreHoleMm > 0.0) {
      // A window, not a bolt hole: the ring of metal about it is judged at the bolt holes.
      holes.add(new Window(Loop.circle(centre, centreHoleMm / 2.0)));
    }
    return rules.check(name, new Outline(Loop.circle(centre, diameterMm / 2.0), holes));
  }
}
