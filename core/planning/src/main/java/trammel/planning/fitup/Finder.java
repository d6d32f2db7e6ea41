package trammel.planning.fitup;

import trammel.engine.geometry.Vector3;
import trammel.planning.fitup.FitUpSheet.FinderAngle;

/**
 * An angle finder that is laid along a part: it reads against gravity, whichever way the part runs
 * in plan, {@code atan(rise / run in plan)}.
 *
 * @param rail along the rails' underside at ride, forward
 * @param noseUpOnStandsRad how much higher the frame's nose is on its stands than at ride (rad)
 */
record Finder(Vector3 rail, double noseUpOnStandsRad) {
  FinderAngle along(String part, String what, Vector3 direction) {
    double onStandsRad = readRad(onStands(direction));
    return new FinderAngle(
        part, what, onStandsRad, onStandsRad - readRad(onStands(rail)), readRad(direction));
  }

  private static double readRad(Vector3 direction) {
    return Math.atan2(direction.z(), Math.hypot(direction.x(), direction.y()));
  }

  /** A direction that is fixed to the frame, turned with it about its cross axis. */
  private Vector3 onStands(Vector3 direction) {
    double sine = Math.sin(noseUpOnStandsRad);
    double cosine = Math.cos(noseUpOnStandsRad);
    return new Vector3(
        direction.x() * cosine - direction.z() * sine,
        direction.y(),
        direction.x() * sine + direction.z() * cosine);
  }
}
