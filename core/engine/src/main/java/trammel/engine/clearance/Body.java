package trammel.engine.clearance;

import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * Something that takes up room in the rear suspension, as it stands at ride.
 *
 * @param name what the fabricator calls it; every body of a sweep has its own
 * @param shape where it is at ride. A body between two others is a capsule or cylinder from its end
 *     on the first ({@code from}) to its end on the second ({@code to}); it stretches with the
 *     distance between them, as a shock does
 * @param carrier what it moves with
 */
public record Body(String name, Shape shape, Carrier carrier) {

  /**
   * @throws IllegalArgumentException if the name is blank, or a link is neither capsule nor
   *     cylinder
   */
  public Body {
    if (name.isBlank()) {
      throw new IllegalArgumentException(
          "A body for the clearance check has no name; it must have one of its own. Name the part.");
    }
    if (carrier.isBetween() && !(shape instanceof Capsule || shape instanceof Cylinder)) {
      throw new IllegalArgumentException(
          "The body '"
              + name
              + "' lies between two bodies but has no two ends; it must be a capsule or a"
              + " cylinder, from its one end to its other. Give it as one of these, or fix it to one"
              + " body.");
    }
  }

  /** The shape at a pose of the axle. */
  public Shape at(AxlePose pose) {
    return at(pose.placement());
  }

  /** The same, for placing many shapes at one pose. */
  public Shape at(Placement placement) {
    if (carrier.isStill()) {
      return shape;
    }
    Placement to = placement.of(carrier.to());
    if (!carrier.isBetween()) {
      return shape.moved(to);
    }
    Placement from = placement.of(carrier.from());
    if (shape instanceof Capsule capsule) {
      return new Capsule(from.move(capsule.from()), to.move(capsule.to()), capsule.radiusMm());
    }
    Cylinder cylinder = (Cylinder) shape;
    return new Cylinder(from.move(cylinder.from()), to.move(cylinder.to()), cylinder.radiusMm());
  }

  /** Length at ride of a body that has two ends, mm; zero for others. */
  double lengthMm() {
    if (shape instanceof Capsule capsule) {
      return capsule.lengthMm();
    }
    return shape instanceof Cylinder cylinder ? cylinder.lengthMm() : 0;
  }
}
