package trammel.engine.clearance;

import trammel.engine.geometry.Point3;
import trammel.engine.motion.Placement;

/**
 * A round bar with half-ball ends: all points within a radius of a straight line. Links, shafts and
 * axle tubes. With both ends in one place it is a ball.
 *
 * @param from one end of the centre line; the half-ball reaches a radius beyond it
 * @param to the other end of the centre line, at most 100 000 mm away
 * @param radiusMm from 0.001 to 100 000 mm
 */
public record Capsule(Point3 from, Point3 to, double radiusMm) implements Shape {

  /**
   * @throws IllegalArgumentException if the radius, the length or a place is outside its range
   */
  public Capsule {
    Limits.checkPoint("The capsule's first end", from);
    Limits.checkPoint("The capsule's second end", to);
    Limits.checkSize("The capsule's radius", radiusMm);
    double lengthMm = from.distanceMm(to);
    if (lengthMm > Limits.GREATEST_SIZE_MM) {
      throw new IllegalArgumentException(
          "The capsule is "
              + lengthMm
              + " mm long; it must be at most "
              + Limits.GREATEST_SIZE_MM
              + " mm. Check its end points.");
    }
  }

  /** Length of the centre line in mm, without the half-balls. */
  public double lengthMm() {
    return from.distanceMm(to);
  }

  /** The same on the other side of the body's centre plane. */
  public Capsule mirrored() {
    return new Capsule(from.mirrored(), to.mirrored(), radiusMm);
  }

  @Override
  public Capsule moved(Placement placement) {
    return new Capsule(placement.move(from), placement.move(to), radiusMm);
  }
}
