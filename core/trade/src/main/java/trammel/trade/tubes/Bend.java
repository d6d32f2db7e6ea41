package trammel.trade.tubes;

import trammel.trade.given.Dimension;

/**
 * One bend of a tube.
 *
 * @param angleRad angle bent through, anticlockwise positive
 * @param radiusMm radius of the centre line
 */
public record Bend(double angleRad, double radiusMm) {
  private static final double MOST_BEND_RAD = Math.toRadians(180.0);

  public Bend {
    Dimension.angleRad("bend", angleRad, -MOST_BEND_RAD, MOST_BEND_RAD, "Split it into two bends.");
    if (angleRad == 0.0) {
      throw Dimension.refuse("bend", "0\u00b0", "any other angle", "Leave the bend out.");
    }
    Dimension.positiveMm("bend radius", radiusMm);
  }

  public double lengthMm() {
    return Math.abs(angleRad) * radiusMm;
  }
}
