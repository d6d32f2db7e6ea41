package trammel.cutting.outlines;

/** The rectangle around an outline turned one way, sides along the sheet's; mm. */
final class OutlineBox {
  final double minX;
  final double minY;
  final double maxX;
  final double maxY;

  private OutlineBox(double minX, double minY, double maxX, double maxY) {
    this.minX = minX;
    this.minY = minY;
    this.maxX = maxX;
    this.maxY = maxY;
  }

  static OutlineBox of(OutlinePart part, OutlineTurn turn) {
    double lowX = Double.POSITIVE_INFINITY;
    double lowY = Double.POSITIVE_INFINITY;
    double highX = Double.NEGATIVE_INFINITY;
    double highY = Double.NEGATIVE_INFINITY;
    for (OutlinePoint p : part.outline()) {
      double x = turn.x(p.xMm(), p.yMm());
      double y = turn.y(p.xMm(), p.yMm());
      lowX = Math.min(lowX, x);
      lowY = Math.min(lowY, y);
      highX = Math.max(highX, x);
      highY = Math.max(highY, y);
    }
    return new OutlineBox(lowX, lowY, highX, highY);
  }

  double width() {
    return maxX - minX;
  }

  double height() {
    return maxY - minY;
  }
}
