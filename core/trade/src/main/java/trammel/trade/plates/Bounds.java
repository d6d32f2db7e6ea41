package trammel.trade.plates;

/** The upright rectangle that just holds a shape, mm. */
public record Bounds(double minXMm, double minYMm, double maxXMm, double maxYMm) {
  public Bounds {
    if (!(minXMm <= maxXMm && minYMm <= maxYMm)) {
      throw new IllegalArgumentException(
          "The bounds run from ("
              + minXMm
              + ", "
              + minYMm
              + ") to ("
              + maxXMm
              + ", "
              + maxYMm
              + ") mm; the first corner must be the lower left one.\nSwap the corners.");
    }
  }

  static Bounds of(Point2 one, Point2 other) {
    return new Bounds(
        Math.min(one.xMm(), other.xMm()),
        Math.min(one.yMm(), other.yMm()),
        Math.max(one.xMm(), other.xMm()),
        Math.max(one.yMm(), other.yMm()));
  }

  public double widthMm() {
    return maxXMm - minXMm;
  }

  public double heightMm() {
    return maxYMm - minYMm;
  }

  public Bounds with(Bounds other) {
    return new Bounds(
        Math.min(minXMm, other.minXMm),
        Math.min(minYMm, other.minYMm),
        Math.max(maxXMm, other.maxXMm),
        Math.max(maxYMm, other.maxYMm));
  }

  Bounds with(Point2 point) {
    return new Bounds(
        Math.min(minXMm, point.xMm()),
        Math.min(minYMm, point.yMm()),
        Math.max(maxXMm, point.xMm()),
        Math.max(maxYMm, point.yMm()));
  }

  /** True when a gap of more than the given width separates the two rectangles. */
  boolean apartMm(Bounds other, double gapMm) {
    return other.minXMm - maxXMm > gapMm
        || minXMm - other.maxXMm > gapMm
        || other.minYMm - maxYMm > gapMm
        || minYMm - other.maxYMm > gapMm;
  }
}
