package trammel.engine.clearance;

import java.util.Objects;
import trammel.engine.motion.BodyPose;

/**
 * What something moves with: one body, or two if it lies between them.
 *
 * @param from the body that its first end is on
 * @param to the body that its second end is on; the same one for what is fixed to one body
 */
public record Carrier(String from, String to) {
  /** Fixed to the frame or body: rails, crossmembers, floor, tanks. */
  public static final Carrier FRAME = on(BodyPose.FRAME);

  /** Fixed to the axle: tube, housing, brackets, tyres. */
  public static final Carrier AXLE = on(BodyPose.AXLE);

  /** Between the two: links, lateral bar, shocks, springs, driveshaft. */
  public static final Carrier LINK = new Carrier(BodyPose.FRAME, BodyPose.AXLE);

  public Carrier {
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(to, "to");
  }

  /** Fixed to one body. */
  public static Carrier on(String body) {
    return new Carrier(body, body);
  }

  /** Whether it has an end on each of two bodies and stretches between them. */
  public boolean isBetween() {
    return !from.equals(to);
  }

  /** Whether it is fixed to the frame and so stands still. */
  public boolean isStill() {
    return from.equals(BodyPose.FRAME) && to.equals(BodyPose.FRAME);
  }
}
