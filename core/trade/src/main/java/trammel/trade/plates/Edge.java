package trammel.trade.plates;

/** One directed piece of an outline: a straight line or a circular arc. */
public sealed interface Edge permits Straight, Arc {
  Point2 from();

  Point2 to();

  double lengthMm();

  /**
   * Half the integral of (x dy - y dx) along the edge, mm2. Summed over a closed path it is the
   * enclosed area (Green's theorem), anticlockwise positive, exact for arcs.
   */
  double sweptAreaMm2();

  /** Direction of travel at the start, anticlockwise from x. */
  double startHeadingRad();

  /** Direction of travel at the end, anticlockwise from x. */
  double endHeadingRad();

  Edge reversed();

  Edge placed(Placement placement);

  Bounds bounds();

  /** Least distance from the point to any point of the edge. */
  double distanceMm(Point2 point);

  /** The angle, signed, through which the line of sight from the point turns along the edge. */
  double sightTurnRad(Point2 point);

  /** How many equal chords keep the edge within the tolerance of its chords. */
  int chordCount(double chordToleranceMm);

  /** The point at a fraction (0 to 1) of the way along. */
  Point2 at(double fraction);
}
