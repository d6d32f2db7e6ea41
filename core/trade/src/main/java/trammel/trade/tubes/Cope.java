package trammel.trade.tubes;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;
import trammel.trade.plates.Point2;

/**
 * The saddle cut that fits a round tube (the branch) onto another (the header).
 *
 * <p>With phi round the branch from its obtuse side and z along the branch from where the axes
 * cross, the edge is z(phi) = [sqrt(R2 - (r sin phi + e)2) - r cos phi cos theta] / sin theta: the
 * intersection of two cylinders, exact.
 *
 * @param branchRadiusMm outside radius r of the tube that is cut
 * @param headerRadiusMm outside radius R of the tube or barrel it fits onto
 * @param angleRad angle theta between the axes, up to a right angle
 * @param offsetMm distance e between the axes; 0 when they cross
 */
public record Cope(double branchRadiusMm, double headerRadiusMm, double angleRad, double offsetMm) {
  /** Below this the cope grows too long to cut. */
  public static final double LEAST_ANGLE_RAD = Math.toRadians(15.0);

  static final int MOST_STEPS = 3600;

  public Cope {
    Dimension.positiveMm("branch tube radius", branchRadiusMm);
    Dimension.positiveMm("header radius", headerRadiusMm);
    Dimension.angleRad(
        "angle between the tubes",
        angleRad,
        LEAST_ANGLE_RAD,
        Math.PI / 2.0,
        "Give the smaller angle between the two axes.");
    Dimension.finiteMm("offset between the axes", offsetMm);
    Dimension.atMostMm(
        "branch tube radius with its offset",
        branchRadiusMm + Math.abs(offsetMm),
        headerRadiusMm + 1e-9,
        "The branch must not be fatter than what it fits onto: use a smaller tube, a larger barrel"
            + " or less offset.");
  }

  /** Edge of the cope at an angle round the branch, from the crossing of the axes. */
  public double edgeMm(double roundRad) {
    return edgeMm(branchRadiusMm, roundRad);
  }

  /**
   * Where the same cut meets a line along the branch inside of its outside.
   *
   * @param radiusMm distance of the line from the branch's axis, up to its radius (mm)
   * @param roundRad angle of the line round the branch
   */
  public double edgeMm(double radiusMm, double roundRad) {
    return CopeEdge.atMm(
        radiusMm,
        headerRadiusMm,
        offsetMm,
        Math.cos(angleRad),
        Math.sin(angleRad),
        Math.sin(roundRad),
        Math.cos(roundRad));
  }

  /** Where the tube's tips come nearest to the crossing of the axes: the sawn length ends here. */
  public double nearestMm() {
    return CopeEdge.of(this).nearestMm();
  }

  /** Where the cut goes deepest, measured from the crossing of the axes. */
  public double furthestMm() {
    return CopeEdge.of(this).furthestMm();
  }

  /** From the tips to the deepest point of the cut. */
  public double depthMm() {
    return furthestMm() - nearestMm();
  }

  /**
   * Length of the cut edge on the outside of the branch: the weld all round. Chords of two step
   * widths, extrapolated to none.
   */
  public double edgeLengthMm() {
    return CopeEdge.of(this).lengthMm();
  }

  /**
   * Weld length by the short rule 2 pi r (1 + 1/sin theta)/2, for comparison: it leaves out the
   * saddle and is up to 18 % short.
   */
  public double shortRuleWeldMm() {
    return 2.0 * Math.PI * branchRadiusMm * (1.0 + 1.0 / Math.sin(angleRad)) / 2.0;
  }

  /**
   * Weld length by the tubular rule of AWS D1.1 (from memory): 2 pi r Ka, Ka = x + y + 3 sqrt(x2 +
   * y2), x = 1/(2 pi sin theta), y = (1/3 pi)(3 - b2)/(2 - b2), b = r/R.
   */
  public double tubularRuleWeldMm() {
    double ratio = branchRadiusMm / headerRadiusMm;
    double x = 1.0 / (2.0 * Math.PI * Math.sin(angleRad));
    double y = (3.0 - ratio * ratio) / (2.0 - ratio * ratio) / (3.0 * Math.PI);
    double factor = x + y + 3.0 * Math.hypot(x, y);
    return 2.0 * Math.PI * branchRadiusMm * factor;
  }

  /**
   * Edge of the wrap-round template: x round the tube from its obtuse side, y from the tips into
   * the tube. First and last point are the same place on the tube.
   */
  public List<Point2> wrap(int steps) {
    Dimension.count("number of wrap steps", steps, 4, MOST_STEPS);
    double nearestMm = nearestMm();
    List<Point2> points = new ArrayList<>(steps + 1);
    for (int i = 0; i <= steps; i++) {
      double roundRad = 2.0 * Math.PI * i / steps;
      points.add(new Point2(branchRadiusMm * roundRad, edgeMm(roundRad) - nearestMm));
    }
    return points;
  }
}
