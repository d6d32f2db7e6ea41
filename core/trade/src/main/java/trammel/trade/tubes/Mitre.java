package trammel.trade.tubes;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;
import trammel.trade.plates.Point2;

/**
 * A plane cut across a round tube. Unwrapped, its edge is one cosine of height OD tan(angle).
 *
 * @param outsideDiameterMm tube outside diameter
 * @param angleRad saw angle from square: half the turn of the joint
 */
public record Mitre(double outsideDiameterMm, double angleRad) {
  private static final double MOST_ANGLE_RAD = Math.toRadians(75.0);

  public Mitre {
    Dimension.positiveMm("tube outside diameter", outsideDiameterMm);
    Dimension.angleRad(
        "mitre", angleRad, 0.0, MOST_ANGLE_RAD, "Give the saw angle: half the turn of the joint.");
  }

  /** The mitre of a corner at which the tube turns by the given angle. */
  public static Mitre forTurn(double outsideDiameterMm, double turnRad) {
    return new Mitre(outsideDiameterMm, turnRad / 2.0);
  }

  /** Difference between the long and the short side. */
  public double heightMm() {
    return outsideDiameterMm * Math.tan(angleRad);
  }

  /** How much the short side lies beyond the centre line's end, or the long side before it. */
  public double halfHeightMm() {
    return heightMm() / 2.0;
  }

  /** Edge of the wrap: x round the tube from the long side, y the height cut away there. */
  public List<Point2> wrap(int steps) {
    Dimension.count("number of wrap steps", steps, 4, Cope.MOST_STEPS);
    double radiusMm = outsideDiameterMm / 2.0;
    List<Point2> points = new ArrayList<>(steps + 1);
    for (int i = 0; i <= steps; i++) {
      double roundRad = 2.0 * Math.PI * i / steps;
      double cutMm = radiusMm * Math.tan(angleRad) * (1.0 - Math.cos(roundRad));
      points.add(new Point2(radiusMm * roundRad, cutMm));
    }
    return points;
  }
}
