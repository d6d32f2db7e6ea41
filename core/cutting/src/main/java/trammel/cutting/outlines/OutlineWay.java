package trammel.cutting.outlines;

import trammel.cutting.sheets.SheetStock;

/** A part turned one way, and the cells that it takes. */
final class OutlineWay {
  final double turnDeg;

  /** Its least x and y, mm. */
  final double[] lowMm = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};

  /** How far it reaches along x and along y, mm. */
  final double[] sizeMm = new double[2];

  private final double[] x;
  private final double[] y;
  private OutlineCells solid;
  private OutlineCells wide;

  private OutlineWay(double[][] ring, double turnDeg) {
    this.turnDeg = turnDeg;
    x = ring[0];
    y = ring[1];
    double highX = Double.NEGATIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < x.length; i++) {
      lowMm[0] = Math.min(lowMm[0], x[i]);
      lowMm[1] = Math.min(lowMm[1], y[i]);
      highX = Math.max(highX, x[i]);
      highY = Math.max(highY, y[i]);
    }
    sizeMm[0] = highX - lowMm[0];
    sizeMm[1] = highY - lowMm[1];
  }

  /** Every way round in which a part may lie, in the part's own order. */
  static OutlineWay[] all(OutlinePart part) {
    OutlineWay[] ways = new OutlineWay[part.turnsDeg().size()];
    double[][] ring = OutlineRing.of(part);
    for (int w = 0; w < ways.length; w++) {
      double turnDeg = part.turnsDeg().get(w);
      ways[w] = new OutlineWay(OutlineRing.turned(ring, new OutlineTurn(turnDeg)), turnDeg);
    }
    return ways;
  }

  /** Whether an empty sheet has room for it. */
  boolean fits(SheetStock stock, double marginMm) {
    return sizeMm[0] <= stock.widthMm() - 2 * marginMm
        && sizeMm[1] <= stock.heightMm() - 2 * marginMm;
  }

  /** The cells that the outline touches; always asked for with the same cells. */
  OutlineCells solid(double cellMm) {
    if (solid == null) {
      solid = new OutlineCells(x, y, cellMm, 0);
    }
    return solid;
  }

  /** These cells and those nearer than the kerf; always asked for with the same cells. */
  OutlineCells wide(double cellMm, double kerfMm) {
    if (wide == null) {
      wide = new OutlineCells(x, y, cellMm, kerfMm);
    }
    return wide;
  }

  double perimeterMm() {
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      int j = (i + 1) % x.length;
      sum += Math.hypot(x[j] - x[i], y[j] - y[i]);
    }
    return sum;
  }

  /** What the part counts by a measure, the larger the sooner it is placed. */
  double size(CellNest.Measure measure, double areaMm2) {
    switch (measure) {
      case AREA:
        return areaMm2;
      case BOX:
        return sizeMm[0] * sizeMm[1];
      case LONGEST_SIDE:
        return Math.max(sizeMm[0], sizeMm[1]);
      default:
        return sizeMm[0] + sizeMm[1];
    }
  }
}
