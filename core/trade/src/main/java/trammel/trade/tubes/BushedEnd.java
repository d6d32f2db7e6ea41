package trammel.trade.tubes;

import trammel.trade.given.Dimension;
import trammel.trade.steel.RoundTube;

/**
 * A tube coped onto the barrel of a bushing.
 *
 * @param barrelDiameterMm outside diameter of the barrel
 * @param angleRad angle between the axes of tube and barrel, up to a right angle
 * @param weldGapMm gap left for the weld, along the tube
 */
public record BushedEnd(double barrelDiameterMm, double angleRad, double weldGapMm)
    implements TubeEnd {
  public BushedEnd {
    Dimension.positiveMm("barrel outside diameter", barrelDiameterMm);
    Dimension.angleRad(
        "angle between tube and barrel",
        angleRad,
        Cope.LEAST_ANGLE_RAD,
        Math.PI / 2.0,
        "Give the smaller angle between the two axes.");
    Dimension.notNegativeMm("weld gap at the barrel", weldGapMm);
  }

  /** A barrel square to the tube, fitted without a gap. */
  public static BushedEnd square(double barrelDiameterMm) {
    return new BushedEnd(barrelDiameterMm, Math.PI / 2.0, 0.0);
  }

  /** The cope that fits the tube to the barrel. */
  public Cope cope(RoundTube tube) {
    return new Cope(tube.outsideMm() / 2.0, barrelDiameterMm / 2.0, angleRad, 0.0);
  }

  /** To the tips of the cope, where the sawn tube ends. */
  @Override
  public double takeUpMm(RoundTube tube) {
    return cope(tube).nearestMm() + weldGapMm;
  }

  @Override
  public double canShortenMm() {
    return 0.0;
  }

  @Override
  public double canLengthenMm() {
    return 0.0;
  }

  @Override
  public double insideMm() {
    return 0.0;
  }

  @Override
  public void requireFits(RoundTube tube) {
    cope(tube);
  }
}
