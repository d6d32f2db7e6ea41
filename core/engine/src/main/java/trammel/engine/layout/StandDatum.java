package trammel.engine.layout;

import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Given;

/**
 * Turns what was measured on the frame as it sits on the stands into vehicle axes at ride height.
 * The frame turns in side view about the axle mark on the underside of the rail and is then set to
 * its ride height there, so the axle mark stays plumb above the axle.
 *
 * <p>Rake is the slope of the straight run of the rail against level, positive when the frame is
 * higher at the rear.
 *
 * @param rakeOnStandsRad rake as it sits on the stands (rad)
 * @param rakeAtRideRad rake at ride height (rad)
 * @param undersideOnStandsMm height of the rail's underside at the axle mark above the floor, on
 *     the stands (mm)
 * @param undersideAtRideMm the same above ground at ride height (mm)
 */
public record StandDatum(
    double rakeOnStandsRad,
    double rakeAtRideRad,
    double undersideOnStandsMm,
    double undersideAtRideMm) {
  public StandDatum {
    Given.within("rake on the stands (rad)", rakeOnStandsRad, -0.5, 0.5);
    Given.within("rake at ride (rad)", rakeAtRideRad, -0.5, 0.5);
    Given.positive("rail underside on the stands (mm)", undersideOnStandsMm);
    Given.positive("rail underside at ride (mm)", undersideAtRideMm);
  }

  /**
   * A point of the frame in vehicle axes at ride.
   *
   * @param onStands forward of the axle mark, left of the centre plane, up from the level floor, as
   *     the frame sits on the stands (mm)
   */
  public Point3 toRide(Point3 onStands) {
    double noseDown = noseDownRad();
    double cos = Math.cos(noseDown);
    double sin = Math.sin(noseDown);
    double up = onStands.zMm() - undersideOnStandsMm;
    return new Point3(
        onStands.xMm() * cos + up * sin,
        onStands.yMm(),
        undersideAtRideMm - onStands.xMm() * sin + up * cos);
  }

  /** A side-view angle of the frame, read from level on the stands, from level at ride (rad). */
  public double toRideRad(double fromLevelOnStandsRad) {
    return fromLevelOnStandsRad - noseDownRad();
  }

  /** A side-view angle read from the frame's straight run, from level on the stands (rad). */
  public double fromFrameRad(double fromFrameRad) {
    return fromFrameRad - rakeOnStandsRad;
  }

  /** How far the nose goes down from the stands to ride (rad). */
  public double noseDownRad() {
    return rakeAtRideRad - rakeOnStandsRad;
  }
}
