package trammel.engine.layout;

import java.util.Objects;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkKind;
import trammel.engine.quantity.Given;

/**
 * A bar of the linkage as it is built: its two joints, where they are bolted at ride, and its tube.
 *
 * @param name the name that parts list, drawings and job file use, such as {@code lower-left}
 * @param role what it does
 * @param frame centre of the joint on the frame (mm)
 * @param axle centre of the joint on the axle at ride (mm)
 * @param frameJoint the joint on the frame
 * @param axleJoint the joint on the axle
 * @param tube the tube between them
 * @param bracket the plate of the brackets at both ends; empty where it is not known
 */
public record Bar(
    String name,
    BarRole role,
    Point3 frame,
    Point3 axle,
    Joint frameJoint,
    Joint axleJoint,
    BarTube tube,
    Optional<BracketPlate> bracket) {
  public Bar {
    Given.text("bar name", name);
    Objects.requireNonNull(role, "role");
    Objects.requireNonNull(frameJoint, "frameJoint");
    Objects.requireNonNull(axleJoint, "axleJoint");
    Objects.requireNonNull(tube, "tube");
    Objects.requireNonNull(bracket, "bracket");
    if (frame.distanceMm(axle) < 1) {
      throw new IllegalArgumentException(
          "bar "
              + name
              + " has both its joints within 1 mm of "
              + frame
              + "; the two ends must be apart. Check its pick-up points.");
    }
  }

  /** A bar whose brackets are not known. */
  public Bar(
      String name,
      BarRole role,
      Point3 frame,
      Point3 axle,
      Joint frameJoint,
      Joint axleJoint,
      BarTube tube) {
    this(name, role, frame, axle, frameJoint, axleJoint, tube, Optional.empty());
  }

  /** Distance between the joints' centres at ride (mm). */
  public double lengthMm() {
    return frame.distanceMm(axle);
  }

  /** Axial stiffness (N/mm): both joints in series. */
  public double stiffnessNPerMm() {
    double a = frameJoint.radialStiffnessNPerMm();
    double b = axleJoint.radialStiffnessNPerMm();
    return a * b / (a + b);
  }

  /** True for a bar on the left of the centre plane, judged by the middle of the bar. */
  public boolean onLeft() {
    return frame.yMm() + axle.yMm() > 0;
  }

  /** The same bar as the motion engine sees it. */
  public Link link() {
    LinkKind kind = role == BarRole.LATERAL ? LinkKind.LATERAL : LinkKind.LONGITUDINAL;
    return new Link(name, kind, frame, axle, stiffnessNPerMm());
  }

  /** The centre of the joint at one end at ride (mm). */
  public Point3 point(End end) {
    return end == End.FRAME ? frame : axle;
  }

  /** This bar with one end bolted elsewhere. */
  public Bar withPoint(End end, Point3 point) {
    return end == End.FRAME
        ? new Bar(name, role, point, axle, frameJoint, axleJoint, tube, bracket)
        : new Bar(name, role, frame, point, frameJoint, axleJoint, tube, bracket);
  }

  /** This bar with brackets of another plate. */
  public Bar withBracket(BracketPlate plate) {
    return new Bar(name, role, frame, axle, frameJoint, axleJoint, tube, Optional.of(plate));
  }

  /** This bar with other joints. */
  public Bar withJoints(Joint newFrameJoint, Joint newAxleJoint) {
    return new Bar(name, role, frame, axle, newFrameJoint, newAxleJoint, tube, bracket);
  }
}
