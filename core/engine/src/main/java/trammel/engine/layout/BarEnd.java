package trammel.engine.layout;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Given;

/**
 * One end of a bar.
 *
 * @param body the body that it is bolted to: frame, axle, or a further body of the linkage
 * @param point centre of the joint at ride (mm)
 * @param joint the joint
 */
public record BarEnd(String body, Point3 point, Joint joint) {
  public BarEnd {
    Given.text("body of a bar's end", body);
    Objects.requireNonNull(point, "point");
    Objects.requireNonNull(joint, "joint");
  }

  /** This end at another place. */
  public BarEnd at(Point3 other) {
    return new BarEnd(body, other, joint);
  }

  /** This end with another joint. */
  public BarEnd with(Joint other) {
    return new BarEnd(body, point, other);
  }
}
