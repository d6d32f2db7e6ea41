package trammel.engine.layout;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Point3;
import trammel.engine.mechanism.BodyPoint;
import trammel.engine.mechanism.ElasticLink;
import trammel.engine.motion.BodyPose;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkKind;
import trammel.engine.quantity.Given;

/**
 * A bar of the linkage as it is built: its two joints, where they are bolted at ride, and its tube.
 * One end is nearer to the frame and one nearer to the axle, if not on them: a bar from the frame
 * to a rocker on the axle has its axle end on the rocker.
 *
 * @param name the name that parts list, drawings and job file use, such as {@code lower-left}
 * @param duties what it is there for, one duty at least
 * @param frameEnd the end on the frame or on the frame's side
 * @param axleEnd the end on the axle or on the axle's side
 * @param tube the tube between them
 * @param bracket the plate of the brackets at both ends; empty where it is not known
 */
public record Bar(
    String name,
    Set<Duty> duties,
    BarEnd frameEnd,
    BarEnd axleEnd,
    BarTube tube,
    Optional<BracketPlate> bracket) {
  public Bar {
    Given.text("bar name", name);
    duties = Set.copyOf(duties);
    Objects.requireNonNull(tube, "tube");
    Objects.requireNonNull(bracket, "bracket");
    if (duties.isEmpty()) {
      throw new IllegalArgumentException(
          "bar " + name + " has no duty; say what it is there for. Give it one duty at least.");
    }
    if (frameEnd.body().equals(axleEnd.body())) {
      throw new IllegalArgumentException(
          "both ends of bar "
              + name
              + " are on the "
              + axleEnd.body()
              + "; a bar joins two bodies. Put one end on another body.");
    }
    if (frameEnd.point().distanceMm(axleEnd.point()) < 1) {
      throw new IllegalArgumentException(
          "bar "
              + name
              + " has both its joints within 1 mm of "
              + frameEnd.point()
              + "; the two ends must be apart. Check its pick-up points.");
    }
  }

  /** A bar between frame and axle. */
  public Bar(
      String name,
      Set<Duty> duties,
      Point3 frame,
      Point3 axle,
      Joint frameJoint,
      Joint axleJoint,
      BarTube tube,
      Optional<BracketPlate> bracket) {
    this(
        name,
        duties,
        new BarEnd(BodyPose.FRAME, frame, frameJoint),
        new BarEnd(BodyPose.AXLE, axle, axleJoint),
        tube,
        bracket);
  }

  /** A bar between frame and axle whose brackets are not known. */
  public Bar(
      String name,
      Set<Duty> duties,
      Point3 frame,
      Point3 axle,
      Joint frameJoint,
      Joint axleJoint,
      BarTube tube) {
    this(name, duties, frame, axle, frameJoint, axleJoint, tube, Optional.empty());
  }

  /** Centre of the joint on the frame or on the frame's side at ride (mm). */
  public Point3 frame() {
    return frameEnd.point();
  }

  /** Centre of the joint on the axle or on the axle's side at ride (mm). */
  public Point3 axle() {
    return axleEnd.point();
  }

  /** The joint on the frame or on the frame's side. */
  public Joint frameJoint() {
    return frameEnd.joint();
  }

  /** The joint on the axle or on the axle's side. */
  public Joint axleJoint() {
    return axleEnd.joint();
  }

  /** Whether it holds the axle sideways and does nothing else: it runs across the vehicle. */
  public boolean isAcross() {
    return duties.equals(Set.of(Duty.SIDEWAYS));
  }

  /** Whether it runs from the frame to the axle itself, with no body between. */
  public boolean isPlain() {
    return frameEnd.body().equals(BodyPose.FRAME) && axleEnd.body().equals(BodyPose.AXLE);
  }

  /** The two bodies that it lies between. */
  public Carrier carrier() {
    return new Carrier(frameEnd.body(), axleEnd.body());
  }

  /** Distance between the joints' centres at ride (mm). */
  public double lengthMm() {
    return frame().distanceMm(axle());
  }

  /** Axial stiffness (N/mm): both joints in series. */
  public double stiffnessNPerMm() {
    double a = frameJoint().radialStiffnessNPerMm();
    double b = axleJoint().radialStiffnessNPerMm();
    return a * b / (a + b);
  }

  /** True for a bar on the left of the centre plane, judged by the middle of the bar. */
  public boolean onLeft() {
    return frame().yMm() + axle().yMm() > 0;
  }

  /**
   * The same bar as the engine sees it on an axle that has plain bars only.
   *
   * @throws IllegalArgumentException if it does not run from the frame to the axle
   */
  public Link link() {
    return elastic().plain();
  }

  /** The same bar as the engine sees it. */
  public ElasticLink elastic() {
    return new ElasticLink(
        name,
        isAcross() ? LinkKind.LATERAL : LinkKind.LONGITUDINAL,
        new BodyPoint(axleEnd.body(), axle()),
        new BodyPoint(frameEnd.body(), frame()),
        stiffnessNPerMm());
  }

  /** One of its ends. */
  public BarEnd at(End end) {
    return end == End.FRAME ? frameEnd : axleEnd;
  }

  /** The centre of the joint at one end at ride (mm). */
  public Point3 point(End end) {
    return at(end).point();
  }

  /** This bar with one end bolted elsewhere on the same body. */
  public Bar withPoint(End end, Point3 point) {
    return end == End.FRAME
        ? new Bar(name, duties, frameEnd.at(point), axleEnd, tube, bracket)
        : new Bar(name, duties, frameEnd, axleEnd.at(point), tube, bracket);
  }

  /** This bar with brackets of another plate. */
  public Bar withBracket(BracketPlate plate) {
    return new Bar(name, duties, frameEnd, axleEnd, tube, Optional.of(plate));
  }

  /** This bar with other joints. */
  public Bar withJoints(Joint newFrameJoint, Joint newAxleJoint) {
    return new Bar(
        name, duties, frameEnd.with(newFrameJoint), axleEnd.with(newAxleJoint), tube, bracket);
  }

  /** This bar with one end on another body, at the same place. */
  public Bar withBody(End end, String body) {
    BarEnd changed = new BarEnd(body, point(end), at(end).joint());
    return end == End.FRAME
        ? new Bar(name, duties, changed, axleEnd, tube, bracket)
        : new Bar(name, duties, frameEnd, changed, tube, bracket);
  }
}
