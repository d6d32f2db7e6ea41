package trammel.cutting.outlines;

import java.util.Arrays;

/** The boundary of all no-fit pieces of two outlines together, as straight segments; mm. */
final class NoFitBoundary {
  private static final int NUMBERS_PER_SEGMENT = 4;
  private static final double NOISE = 1e-9;

  private final NoFitPiece[] pieces;
  private final double[] covered;
  private double[] segments = new double[64 * NUMBERS_PER_SEGMENT];
  private int length;

  NoFitBoundary(NoFitPiece[] pieces) {
    this.pieces = pieces;
    this.covered = new double[2 * pieces.length];
    for (int p = 0; p < pieces.length; p++) {
      NoFitPiece piece = pieces[p];
      int n = piece.cornerX.length;
      for (int i = 0; i < n; i++) {
        int j = (i + 1) % n;
        addBare(p, piece.cornerX[i], piece.cornerY[i], piece.cornerX[j], piece.cornerY[j]);
      }
    }
  }

  /** Adds the parts of one side that lie inside no other piece. */
  private void addBare(int own, double ax, double ay, double bx, double by) {
    int count = coverings(own, ax, ay, bx - ax, by - ay);
    double from = 0;
    while (from < 1) {
      double to = 1;
      double next = 2;
      for (int c = 0; c < count; c++) {
        double start = covered[2 * c];
        double end = covered[2 * c + 1];
        if (end > from && start < to) {
          to = Math.max(from, start);
          next = end;
        }
      }
      if (to - from > NOISE) {
        add(ax + from * (bx - ax), ay + from * (by - ay), ax + to * (bx - ax), ay + to * (by - ay));
      }
      from = next;
    }
  }

  /** Notes the parts of a side that lie inside other pieces; returns how many. */
  private int coverings(int own, double ax, double ay, double ux, double uy) {
    int count = 0;
    for (int p = 0; p < pieces.length; p++) {
      NoFitPiece piece = pieces[p];
      if (p == own
          || Math.max(ax, ax + ux) <= piece.lowX
          || Math.min(ax, ax + ux) >= piece.highX
          || Math.max(ay, ay + uy) <= piece.lowY
          || Math.min(ay, ay + uy) >= piece.highY) {
        continue;
      }
      if (clip(piece, ax, ay, ux, uy, 2 * count)) {
        count++;
      }
    }
    return count;
  }

  private boolean clip(NoFitPiece piece, double ax, double ay, double ux, double uy, int at) {
    double from = 0;
    double to = 1;
    double noise = NOISE * (piece.highX - piece.lowX + piece.highY - piece.lowY);
    double[] sides = piece.sides;
    for (int i = 0; i < sides.length; i += NoFitPiece.NUMBERS_PER_SIDE) {
      double inside = sides[i + 2] - noise - sides[i] * ax - sides[i + 1] * ay;
      double rate = sides[i] * ux + sides[i + 1] * uy;
      if (rate > 0) {
        to = Math.min(to, inside / rate);
      } else if (rate < 0) {
        from = Math.max(from, inside / rate);
      } else if (inside <= 0) {
        return false;
      }
      if (from >= to) {
        return false;
      }
    }
    covered[at] = from;
    covered[at + 1] = to;
    return true;
  }

  private void add(double ax, double ay, double bx, double by) {
    if (length + NUMBERS_PER_SEGMENT > segments.length) {
      segments = Arrays.copyOf(segments, 2 * segments.length);
    }
    segments[length++] = ax;
    segments[length++] = ay;
    segments[length++] = bx - ax;
    segments[length++] = by - ay;
  }

  int segments() {
    return length / NUMBERS_PER_SEGMENT;
  }

  /** Those of some segments that lie no more than a distance further away than the nearest. */
  int[] nearest(int[] among, double x, double y, double further) {
    double[] distance = new double[among.length];
    double least = Double.POSITIVE_INFINITY;
    for (int k = 0; k < among.length; k++) {
      distance[k] = Math.sqrt(squared(among[k] * NUMBERS_PER_SEGMENT, x, y));
      least = Math.min(least, distance[k]);
    }
    int[] nearest = new int[among.length];
    int count = 0;
    for (int k = 0; k < among.length; k++) {
      if (distance[k] <= least + further) {
        nearest[count++] = among[k];
      }
    }
    return Arrays.copyOf(nearest, count);
  }

  /** Distance from a shift to the nearest of some segments, mm. */
  double distance(int[] among, double x, double y) {
    double least = Double.POSITIVE_INFINITY;
    for (int segment : among) {
      least = Math.min(least, squared(segment * NUMBERS_PER_SEGMENT, x, y));
    }
    return Math.sqrt(least);
  }

  private double squared(int s, double x, double y) {
    double ux = segments[s + 2];
    double uy = segments[s + 3];
    double px = x - segments[s];
    double py = y - segments[s + 1];
    double along = (px * ux + py * uy) / (ux * ux + uy * uy);
    along = Math.min(1, Math.max(0, along));
    double dx = px - along * ux;
    double dy = py - along * uy;
    return dx * dx + dy * dy;
  }
}
