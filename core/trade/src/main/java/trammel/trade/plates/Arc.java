package trammel.trade.plates;

/**
 * A circular edge from one point to another about a centre. An arc whose ends are the same point is
 * a full circle.
 */
public record Arc(Point2 from, Point2 to, Point2 centre, boolean anticlockwise) implements Edge {
  private static final double FULL_TURN_RAD = 2.0 * Math.PI;

  public Arc {
    double startRadiusMm = centre.distanceMm(from);
    double endRadiusMm = centre.distanceMm(to);
    if (startRadiusMm < Loop.JOIN_MM) {
      throw new IllegalArgumentException(
          "An arc has a radius of "
              + startRadiusMm
              + " mm; it must be more than "
              + Loop.JOIN_MM
              + " mm.\nUse a sharp corner instead.");
    }
    if (Math.abs(startRadiusMm - endRadiusMm) > Loop.JOIN_MM) {
      throw new IllegalArgumentException(
          "An arc starts "
              + startRadiusMm
              + " mm and ends "
              + endRadiusMm
              + " mm from its centre; both must be the same.\nCorrect the centre or one end.");
    }
  }

  /** The whole circle, anticlockwise from its rightmost point. */
  public static Arc circle(Point2 centre, double radiusMm) {
    Point2 start = centre.shifted(radiusMm, 0.0);
    return new Arc(start, start, centre, true);
  }

  /** The arc from a start angle through a sweep, anticlockwise positive, less than a full turn. */
  public static Arc about(Point2 centre, double radiusMm, double startRad, double sweepRad) {
    return new Arc(
        Point2.polar(centre, radiusMm, startRad),
        Point2.polar(centre, radiusMm, startRad + sweepRad),
        centre,
        sweepRad > 0.0);
  }

  public double radiusMm() {
    return centre.distanceMm(from);
  }

  public boolean fullCircle() {
    return from.distanceMm(to) < Loop.JOIN_MM;
  }

  /** Angle of the start point seen from the centre, -pi to pi. */
  public double startRad() {
    return centre.headingRad(from);
  }

  /** Signed sweep: anticlockwise positive, at most a full turn. */
  public double sweepRad() {
    if (fullCircle()) {
      return anticlockwise ? FULL_TURN_RAD : -FULL_TURN_RAD;
    }
    double turn = centre.headingRad(to) - startRad();
    if (anticlockwise) {
      return turn > 0.0 ? turn : turn + FULL_TURN_RAD;
    }
    return turn < 0.0 ? turn : turn - FULL_TURN_RAD;
  }

  @Override
  public double lengthMm() {
    return radiusMm() * Math.abs(sweepRad());
  }

  @Override
  public double sweptAreaMm2() {
    double radiusMm = radiusMm();
    return 0.5
        * (radiusMm * radiusMm * sweepRad()
            + centre.xMm() * (to.yMm() - from.yMm())
            - centre.yMm() * (to.xMm() - from.xMm()));
  }

  @Override
  public double startHeadingRad() {
    return startRad() + quarterTurnRad();
  }

  @Override
  public double endHeadingRad() {
    return centre.headingRad(to) + quarterTurnRad();
  }

  private double quarterTurnRad() {
    return anticlockwise ? Math.PI / 2.0 : -Math.PI / 2.0;
  }

  @Override
  public Arc reversed() {
    return new Arc(to, from, centre, !anticlockwise);
  }

  @Override
  public Arc placed(Placement placement) {
    return new Arc(
        placement.of(from),
        placement.of(to),
        placement.of(centre),
        anticlockwise != placement.mirrored());
  }

  @Override
  public Bounds bounds() {
    Bounds bounds = Bounds.of(from, to);
    double radiusMm = radiusMm();
    for (int quarter = 0; quarter < 4; quarter++) {
      double angleRad = quarter * Math.PI / 2.0;
      if (spans(angleRad)) {
        bounds = bounds.with(Point2.polar(centre, radiusMm, angleRad));
      }
    }
    return bounds;
  }

  /** True when the radius at the angle meets the arc, its ends included. */
  boolean spans(double angleRad) {
    double sweep = sweepRad();
    double slackRad = Loop.JOIN_MM / radiusMm();
    double past = anticlockwise ? angleRad - startRad() : startRad() - angleRad;
    double turned = past - FULL_TURN_RAD * Math.floor(past / FULL_TURN_RAD);
    return turned <= Math.abs(sweep) + slackRad || turned >= FULL_TURN_RAD - slackRad;
  }

  @Override
  public double distanceMm(Point2 point) {
    double fromCentreMm = centre.distanceMm(point);
    double radiusMm = radiusMm();
    if (fromCentreMm < Loop.JOIN_MM) {
      return radiusMm;
    }
    if (spans(centre.headingRad(point))) {
      return Math.abs(fromCentreMm - radiusMm);
    }
    return Math.min(point.distanceMm(from), point.distanceMm(to));
  }

  @Override
  public double sightTurnRad(Point2 point) {
    double sum = 0.0;
    Point2 start = from;
    for (int quarter = 1; quarter <= 4; quarter++) {
      Point2 end = at(quarter / 4.0);
      sum += Straight.sightTurnRad(point, start, end);
      if (betweenChordAndArc(point, start, end)) {
        sum += anticlockwise ? FULL_TURN_RAD : -FULL_TURN_RAD;
      }
      start = end;
    }
    return sum;
  }

  private boolean betweenChordAndArc(Point2 point, Point2 start, Point2 end) {
    if (centre.distanceMm(point) >= radiusMm()) {
      return false;
    }
    double side =
        (end.xMm() - start.xMm()) * (point.yMm() - start.yMm())
            - (end.yMm() - start.yMm()) * (point.xMm() - start.xMm());
    return anticlockwise ? side < 0.0 : side > 0.0;
  }

  @Override
  public int chordCount(double chordToleranceMm) {
    double radiusMm = radiusMm();
    double sagShare = Math.min(1.0, chordToleranceMm / radiusMm);
    double stepRad = Math.min(Math.PI / 2.0, 2.0 * Math.acos(1.0 - sagShare));
    return Math.max(1, (int) Math.ceil(Math.abs(sweepRad()) / stepRad - 1e-12));
  }

  @Override
  public Point2 at(double fraction) {
    if (fraction == 0.0) {
      return from;
    }
    if (fraction == 1.0) {
      return to;
    }
    return Point2.polar(centre, radiusMm(), startRad() + fraction * sweepRad());
  }
}
