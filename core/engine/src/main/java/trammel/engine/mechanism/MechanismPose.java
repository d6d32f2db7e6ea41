package trammel.engine.mechanism;

import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.Placement;

/** Where the axle and all further bodies of a mechanism stand. */
public final class MechanismPose {
  /** A joint nearer to its body's pivot than this has no arm to speak of (mm). */
  private static final double SHORTEST_ARM_MM = 0.1;

  private final Mechanism mechanism;
  private final AxlePose axle;
  private final Stand stand;
  private final List<BodyTurn> turns;

  MechanismPose(Mechanism mechanism, AxlePose axle, Stand stand, List<BodyTurn> turns) {
    this.mechanism = mechanism;
    this.axle = axle;
    this.stand = stand;
    this.turns = List.copyOf(turns);
  }

  /** Where the axle stands. */
  public AxlePose axle() {
    return axle;
  }

  /** How far each further body has turned, in the order of the mechanism. */
  public List<BodyTurn> turns() {
    return turns;
  }

  /**
   * Where a point of a body stands now.
   *
   * @throws NullPointerException if the mechanism has no such body
   */
  public Point3 move(BodyPoint point) {
    return point(stand.at(stand.coordinates.index(point.body()), point.atRide()));
  }

  /**
   * How a direction fixed to a body, given at ride, points now.
   *
   * @throws NullPointerException if the mechanism has no such body
   */
  public Vector3 turn(String body, Vector3 atRide) {
    double[] direction = {atRide.x(), atRide.y(), atRide.z()};
    return vector(Rotation.turned(stand.turnOf(stand.coordinates.index(body)), direction));
  }

  private Vector3 turnBack(String body, Vector3 now) {
    double[] direction = {now.x(), now.y(), now.z()};
    return vector(Rotation.turnedBack(stand.turnOf(stand.coordinates.index(body)), direction));
  }

  /**
   * Readings of all links, in the order of the mechanism. Directions run from a link's first end to
   * its second; its second end counts as the frame's.
   */
  public List<LinkReading> links() {
    Placement placement = axle.placement();
    return mechanism.links().stream().map(link -> link.at(placement)).toList();
  }

  /** Angle between link and arm at the link's first end; see {@link #armAngleRad}. */
  public OptionalDouble fromArmAngleRad(ElasticLink link) {
    return armAngleRad(link.from(), link.to());
  }

  /** Angle between link and arm at the link's second end; see {@link #armAngleRad}. */
  public OptionalDouble toArmAngleRad(ElasticLink link) {
    return armAngleRad(link.to(), link.from());
  }

  /**
   * Angle at an end of a link between the lines to its body's pivot and to the link's other end
   * (rad, 0 to pi): a quarter turn has the best leverage, 0 and pi have none. Empty if the end is
   * on frame or axle, or at the pivot itself.
   */
  private OptionalDouble armAngleRad(BodyPoint end, BodyPoint other) {
    for (FurtherBody body : mechanism.bodies()) {
      if (body.name().equals(end.body())) {
        Point3 joint = move(end);
        Point3 pivot = move(new BodyPoint(end.body(), body.pivot().point()));
        return joint.distanceMm(pivot) < SHORTEST_ARM_MM
            ? OptionalDouble.empty()
            : OptionalDouble.of(joint.to(pivot).angleToRad(joint.to(move(other))));
      }
    }
    return OptionalDouble.empty();
  }

  /** Travel of a slide along its line from ride, positive in its direction (mm). */
  public double travelMm(ExactJoint.Slide slide) {
    Vector3 direction = slide.direction().normalized();
    double atRideMm = slide.line().atRide().to(slide.point().atRide()).dot(direction);
    Vector3 now = move(slide.line()).to(move(slide.point()));
    return now.dot(turn(slide.line().body(), direction)) - atRideMm;
  }

  /** Deflection of a bush in the axes that turn with the body it sits on (mm). */
  public Vector3 deflectionMm(Bush bush) {
    Point3 seat = move(new BodyPoint(bush.on(), bush.point()));
    Point3 held = move(new BodyPoint(bush.body(), bush.point()));
    return turnBack(bush.on(), seat.to(held));
  }

  private static Point3 point(double[] three) {
    return new Point3(three[0], three[1], three[2]);
  }

  private static Vector3 vector(double[] three) {
    return new Vector3(three[0], three[1], three[2]);
  }
}
