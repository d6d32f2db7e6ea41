package trammel.engine.clearance;

import trammel.engine.geometry.Point3;
import trammel.engine.motion.Placement;

/**
 * A round bar with flat ends square to its axis: tyres, tanks, air springs.
 *
 * @param from centre of one flat end
 * @param to centre of the other, 0.001 to 100 000 mm away
 * @param radiusMm from 0.001 to 100 000 mm
 */
public record Cylinder(Point3 from, Point3 to, double radiusMm) implements Shape {

  /**
   * @throws IllegalArgumentException if the radius, the length or a place is outside its range
   */
  public Cylinder {
    Limits.checkPoint("The cylinder's first end", from);
    Limits.checkPoint("The cylinder's second end", to);
    Limits.checkSize("The cylinder's radius", radiusMm);
    Limits.checkSize("The cylinder's length", from.distanceMm(to));
  }

  /** Length from flat end to flat end in mm. */
  public double lengthMm() {
    return from.distanceMm(to);
  }

  /** The same on the other side of the body's centre plane. */
  public Cylinder mirrored() {
    return new Cylinder(from.mirrored(), to.mirrored(), radiusMm);
  }

  @Override
  public Cylinder moved(Placement placement) {
    return new Cylinder(placement.move(from), placement.move(to), radiusMm);
  }
}
