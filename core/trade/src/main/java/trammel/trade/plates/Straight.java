package trammel.trade.plates;

/** A straight edge from one point to another. */
public record Straight(Point2 from, Point2 to) implements Edge {
  public Straight {
    if (from.distanceMm(to) < Loop.JOIN_MM) {
      throw new IllegalArgumentException(
          "A straight edge has no length: both ends are at ("
              + from.xMm()
              + ", "
              + from.yMm()
              + ") mm; it must be longer than "
              + Loop.JOIN_MM
              + " mm.\nLeave the edge out, or move one end.");
    }
  }

  @Override
  public double lengthMm() {
    return from.distanceMm(to);
  }

  @Override
  public double sweptAreaMm2() {
    return 0.5 * (from.xMm() * to.yMm() - to.xMm() * from.yMm());
  }

  @Override
  public double startHeadingRad() {
    return from.headingRad(to);
  }

  @Override
  public double endHeadingRad() {
    return from.headingRad(to);
  }

  @Override
  public Straight reversed() {
    return new Straight(to, from);
  }

  @Override
  public Straight placed(Placement placement) {
    return new Straight(placement.of(from), placement.of(to));
  }

  @Override
  public Bounds bounds() {
    return Bounds.of(from, to);
  }

  @Override
  public double distanceMm(Point2 point) {
    return point.distanceMm(at(Math.max(0.0, Math.min(1.0, footFraction(point)))));
  }

  /** Where along the infinite line the perpendicular from the point meets it: 0 from, 1 to. */
  double footFraction(Point2 point) {
    double dx = to.xMm() - from.xMm();
    double dy = to.yMm() - from.yMm();
    double along = (point.xMm() - from.xMm()) * dx + (point.yMm() - from.yMm()) * dy;
    return along / (dx * dx + dy * dy);
  }

  @Override
  public double sightTurnRad(Point2 point) {
    return sightTurnRad(point, from, to);
  }

  static double sightTurnRad(Point2 eye, Point2 start, Point2 end) {
    double ax = start.xMm() - eye.xMm();
    double ay = start.yMm() - eye.yMm();
    double bx = end.xMm() - eye.xMm();
    double by = end.yMm() - eye.yMm();
    return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
  }

  @Override
  public int chordCount(double chordToleranceMm) {
    return 1;
  }

  @Override
  public Point2 at(double fraction) {
    if (fraction == 1.0) {
      return to;
    }
    return new Point2(
        from.xMm() + fraction * (to.xMm() - from.xMm()),
        from.yMm() + fraction * (to.yMm() - from.yMm()));
  }
}
