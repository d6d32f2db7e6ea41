package trammel.engine.clearance;

import trammel.engine.geometry.Point3;
import trammel.engine.motion.Placement;

/**
 * A ball.
 *
 * @param centre its centre, vehicle axes, within 1 km of the origin
 * @param radiusMm from 0.001 to 100 000 mm
 */
public record Sphere(Point3 centre, double radiusMm) implements Shape {

  /**
   * @throws IllegalArgumentException if the radius or the place is outside its range
   */
  public Sphere {
    Limits.checkPoint("The sphere's centre", centre);
    Limits.checkSize("The sphere's radius", radiusMm);
  }

  @Override
  public Sphere moved(Placement placement) {
    return new Sphere(placement.move(centre), radiusMm);
  }
}
