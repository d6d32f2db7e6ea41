package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A bracket plate along a frame rail. Axes: x along the rail, y up, the origin at the rail's lower
 * edge in the middle of the bracket's base. The plate butts against the bottom of the rail, or laps
 * up its side.
 *
 * <p>It is drawn once, when it is made.
 */
public final class RailBracket implements PlateShape {
  /**
   * Load spreads through a plate within 30 degrees to each side of its line of action (Whitmore
   * 1952; AISC Manual part 9, from memory).
   */
  public static final double LOAD_SPREAD_RAD = Math.toRadians(30.0);

  private final String name;
  private final double thicknessMm;
  private final double baseLengthMm;
  private final Outline outline;

  /**
   * @param name what the shop calls it
   * @param thicknessMm plate thickness
   * @param baseLengthMm length along the rail; see {@link #baseByRuleMm}
   * @param lapMm how far the plate goes up the side of the rail; 0 to butt against its bottom
   * @param row pick-up hole or holes; y is negative below the rail
   * @param rules metal about the holes
   */
  public RailBracket(
      String name,
      double thicknessMm,
      double baseLengthMm,
      double lapMm,
      PickUpRow row,
      HoleRules rules) {
    Dimension.text("bracket name", name);
    Dimension.positiveMm("thickness of " + name, thicknessMm);
    Dimension.positiveMm("base length of " + name, baseLengthMm);
    Dimension.notNegativeMm("lap of " + name, lapMm);
    this.name = name;
    this.thicknessMm = thicknessMm;
    this.baseLengthMm = baseLengthMm;
    outline = draw(name, thicknessMm, baseLengthMm, lapMm, row, rules);
  }

  /** Bracket under a rail with the base length that the load spread asks for. */
  public static RailBracket below(
      String name,
      double thicknessMm,
      double dropMm,
      double asideMm,
      double holeDiameterMm,
      double lapMm) {
    Dimension.positiveMm("drop of " + name, dropMm);
    PickUpRow row = PickUpRow.single(new Point2(asideMm, -dropMm), holeDiameterMm);
    double baseMm = baseByRuleMm(dropMm, row.noseRadiusMm()) + 2.0 * Math.abs(asideMm);
    return new RailBracket(name, thicknessMm, baseMm, lapMm, row, HoleRules.SHOP);
  }

  /** Length along the rail. */
  public double baseLengthMm() {
    return baseLengthMm;
  }

  /** Base length from the drop: the nose and a spread of 30 degrees to either side. */
  public static double baseByRuleMm(double dropMm, double noseRadiusMm) {
    return 2.0 * (noseRadiusMm + dropMm * Math.tan(LOAD_SPREAD_RAD));
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public double thicknessMm() {
    return thicknessMm;
  }

  @Override
  public Outline outline() {
    return outline;
  }

  private static Outline draw(
      String name, double landMm, double baseMm, double lapMm, PickUpRow row, HoleRules rules) {
    for (Point2 centre : row.centres()) {
      Dimension.atLeastMm(
          "drop of a hole of " + name + " below the rail",
          -centre.yMm(),
          rules.edgeFactor() * row.holeDiameterMm(),
          "Lower the pick-up point, or use a smaller bolt.");
    }
    double half = baseMm / 2.0;
    List<Disc> discs = new ArrayList<>(row.noses());
    // The upright land under the base corners leaves an edge that can be welded round.
    discs.add(Disc.corner(new Point2(-half, -landMm)));
    discs.add(Disc.corner(new Point2(half, -landMm)));
    discs.add(Disc.corner(new Point2(-half, lapMm)));
    discs.add(Disc.corner(new Point2(half, lapMm)));
    Loop outer = Belt.around(discs);
    requireBaseOnTop(name, outer, lapMm);
    return rules.check(name, new Outline(outer, row.holes()));
  }

  private static void requireBaseOnTop(String name, Loop outer, double lapMm) {
    double overMm = outer.bounds().maxYMm() - lapMm;
    if (overMm > Loop.JOIN_MM) {
      throw Dimension.refuse(
          "nose of " + name,
          Dimension.lengthText(overMm) + " higher than its base",
          "level with the base or lower",
          "Lower the pick-up point, or lap the bracket further up the rail.");
    }
  }
}
