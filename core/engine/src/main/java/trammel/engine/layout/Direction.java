package trammel.engine.layout;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** The three ways in which a fabricator moves a mounting point. */
public enum Direction {
  /** Along the vehicle, forward positive. */
  FORWARD,
  /** Across the vehicle, away from the centre plane positive. */
  OUTBOARD,
  /** Upright, up positive. */
  UP;

  /**
   * A point moved this way.
   *
   * @param point the point (mm)
   * @param distanceMm how far (mm), negative for the other way
   */
  public Point3 move(Point3 point, double distanceMm) {
    return switch (this) {
      case FORWARD -> point.plus(new Vector3(distanceMm, 0, 0));
      case OUTBOARD -> point.plus(new Vector3(0, point.yMm() < 0 ? -distanceMm : distanceMm, 0));
      case UP -> point.plus(new Vector3(0, 0, distanceMm));
    };
  }
}
