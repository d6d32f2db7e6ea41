package trammel.trade.tubes;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * The edge that a cope cuts, its figures worked out when first asked for. Of the tubes of a vehicle
 * few are cut differently, and each asks again and again, so the edges last asked for are kept.
 */
final class CopeEdge {
  private static final int STEPS = 720;

  /** Halving the step leaves a quarter of the error: three quarters have gone. */
  private static final double HALVING_GAIN = 3.0;

  /** Some times what a vehicle has. */
  private static final int KEPT = 64;

  private static final Deque<CopeEdge> LAST = new ArrayDeque<>(KEPT);

  private final Cope cope;
  private final double cosine;
  private final double sine;
  private Double nearestMm;
  private Double furthestMm;
  private Double lengthMm;

  private CopeEdge(Cope cope) {
    this.cope = cope;
    cosine = Math.cos(cope.angleRad());
    sine = Math.sin(cope.angleRad());
  }

  /** The edge of a cope, its figures shared with all that are alike. */
  static CopeEdge of(Cope cope) {
    synchronized (LAST) {
      for (CopeEdge known : LAST) {
        if (known.isOf(cope)) {
          return known;
        }
      }
      if (LAST.size() == KEPT) {
        LAST.removeLast();
      }
      CopeEdge edge = new CopeEdge(cope);
      LAST.addFirst(edge);
      return edge;
    }
  }

  /** To the last bit; not by the record's own equality, which links code when first asked. */
  private boolean isOf(Cope other) {
    return cope.branchRadiusMm() == other.branchRadiusMm()
        && cope.headerRadiusMm() == other.headerRadiusMm()
        && cope.angleRad() == other.angleRad()
        && cope.offsetMm() == other.offsetMm();
  }

  /**
   * The formula of {@link Cope} with its sines and cosines worked out.
   *
   * @param radiusMm distance from the branch's axis (mm)
   * @param headerMm radius of the header (mm)
   * @param offsetMm distance between the axes (mm)
   * @param cosine of the angle between the axes
   * @param sine of it
   * @param sineRound of the angle round the branch
   * @param cosineRound of it
   */
  static double atMm(
      double radiusMm,
      double headerMm,
      double offsetMm,
      double cosine,
      double sine,
      double sineRound,
      double cosineRound) {
    double acrossMm = radiusMm * sineRound + offsetMm;
    // Rounding takes the root a hair below nothing where the two tubes are level.
    double rootMm = Math.sqrt(Math.max(0.0, headerMm * headerMm - acrossMm * acrossMm));
    return (rootMm - radiusMm * cosineRound * cosine) / sine;
  }

  private double atMm(double roundRad) {
    return atMm(
        cope.branchRadiusMm(),
        cope.headerRadiusMm(),
        cope.offsetMm(),
        cosine,
        sine,
        Math.sin(roundRad),
        Math.cos(roundRad));
  }

  /** Where the tube's tips come nearest to the crossing of the axes. */
  synchronized double nearestMm() {
    if (nearestMm == null) {
      nearestMm = extremeMm(1.0);
    }
    return nearestMm;
  }

  /** Where the cut goes deepest, from the crossing of the axes. */
  synchronized double furthestMm() {
    if (furthestMm == null) {
      furthestMm = extremeMm(-1.0);
    }
    return furthestMm;
  }

  /** Length of the edge on the outside of the branch. */
  synchronized double lengthMm() {
    if (lengthMm == null) {
      double coarse = chordLengthMm(STEPS);
      double fine = chordLengthMm(2 * STEPS);
      lengthMm = fine + (fine - coarse) / HALVING_GAIN;
    }
    return lengthMm;
  }

  /** Least of sign times the edge, by a fine scan and a golden-section search about its best. */
  private double extremeMm(double sign) {
    int best = 0;
    double scannedMm = atMm(stepRad(0));
    for (int i = 1; i < STEPS; i++) {
      double hereMm = atMm(stepRad(i));
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
      if (sign * atMm(left) < sign * atMm(right)) {
        high = right;
      } else {
        low = left;
      }
    }
    double foundMm = atMm((low + high) / 2.0);
    return sign * foundMm < sign * scannedMm ? foundMm : scannedMm;
  }

  private static double stepRad(int step) {
    return 2.0 * Math.PI * step / STEPS;
  }

  private double chordLengthMm(int steps) {
    double sum = 0.0;
    double before = atMm(0.0);
    for (int i = 1; i <= steps; i++) {
      double stepRad = 2.0 * Math.PI / steps;
      double after = atMm(i * stepRad);
      // The step round the tube is the arc, not its chord: the edge lies on the tube.
      sum += Math.hypot(cope.branchRadiusMm() * stepRad, after - before);
      before = after;
    }
    return sum;
  }
}
