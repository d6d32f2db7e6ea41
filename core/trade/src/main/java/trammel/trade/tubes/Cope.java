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

  private static final int STEPS = 720;

  /** Halving the step leaves a quarter of the error: three quarters have gone. */
  private static final double HALVING_GAIN = 3.0;

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
    double acrossMm = branchRadiusMm * Math.sin(roundRad) + offsetMm;
    // Rounding takes the root a hair below nothing where the two tubes are level.
    double rootMm = Math.sqrt(Math.max(0.0, headerRadiusMm * headerRadiusMm - acrossMm * acrossMm));
    return (rootMm - branchRadiusMm * Math.cos(roundRad) * Math.cos(angleRad)) / Math.sin(angleRad);
  }

  /** Where the tube's tips come nearest to the crossing of the axes: the sawn length ends here. */
  public double nearestMm() {
    return extremeMm(1.0);
  }

  /** Where the cut goes deepest, measured from the crossing of the axes. */
  public double furthestMm() {
    return extremeMm(-1.0);
  }

  /** From the tips to the deepest point of the cut. */
  public double depthMm() {
    return furthestMm() - nearestMm();
  }

  /** Least of sign times the edge, by a fine scan and a golden-section search about its best. */
  private double extremeMm(double sign) {
    int best = 0;
    double scannedMm = edgeMm(stepRad(0));
    for (int i = 1; i < STEPS; i++) {
      double hereMm = edgeMm(stepRad(i));
      if (sign * hereMm < sign * scannedMm) {
        best = i;
        scannedMm = hereMm;
      }
    }
    double golden = (Math.sqrt(5.0) - 1.0) / 2.0;
    double low = stepRad(best - 1);
    double high = stepRad(best + 1);
    while (high - low > 1e-9) {
      double left = high - golden * (high - low);
      double right = low + golden * (high - low);
      if (sign * edgeMm(left) < sign * edgeMm(right)) {
        high = right;
      } else {
        low = left;
      }
    }
    double foundMm = edgeMm((low + high) / 2.0);
    return sign * foundMm < sign * scannedMm ? foundMm : scannedMm;
  }

  private static double stepRad(int step) {
    return 2.0 * Math.PI * step / STEPS;
  }

  /**
   * Length of the cut edge on the outside of the branch: the weld all round. Chords of two step
   * widths, extrapolated to none.
   */
  public double edgeLengthMm() {
    double coarse = chordLengthMm(STEPS);
    double fine = chordLengthMm(2 * STEPS);
    return fine + (fine - coarse) / HALVING_GAIN;
  }

  private double chordLengthMm(int steps) {
    double sum = 0.0;
    double before = edgeMm(0.0);
    for (int i = 1; i <= steps; i++) {
      double stepRad = 2.0 * Math.PI / steps;
      double after = edgeMm(i * stepRad);
      // The step round the tube is the arc, not its chord: the edge lies on the tube.
      sum += Math.hypot(branchRadiusMm * stepRad, after - before);
      before = after;
    }
    return sum;
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
