package trammel.engine.mechanism;

import java.util.Objects;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.Link;
import trammel.engine.motion.LinkKind;
import trammel.engine.motion.LinkReading;
import trammel.engine.motion.Placement;

/**
 * A bar between points of any two bodies, ball-jointed at both ends, free of force at ride.
 *
 * @param name what the shop calls it; unlike every other link
 * @param kind what it is there for
 * @param from one end
 * @param to the other end; the link's angles are those of the way from the one to the other
 * @param stiffnessNPerMm axial stiffness of bar and both bushings in series (N/mm, above 0)
 */
public record ElasticLink(
    String name, LinkKind kind, BodyPoint from, BodyPoint to, double stiffnessNPerMm) {
  public ElasticLink {
    Objects.requireNonNull(name, "name of the link");
    Objects.requireNonNull(kind, "kind of the link");
    Objects.requireNonNull(from, "first end of the link");
    Objects.requireNonNull(to, "second end of the link");
  }

  /** A plain bar, which runs from the axle to the frame. */
  public static ElasticLink of(Link link) {
    return new ElasticLink(
        link.name(),
        link.kind(),
        new BodyPoint(Mechanism.AXLE, link.axle()),
        new BodyPoint(Mechanism.FRAME, link.frame()),
        link.stiffnessNPerMm());
  }

  /** Whether it runs from the axle to the frame. */
  public boolean isPlain() {
    return from.body().equals(Mechanism.AXLE) && to.body().equals(Mechanism.FRAME);
  }

  /**
   * The plain bar that it is.
   *
   * @throws IllegalArgumentException if it runs between other bodies, or the bar is impossible
   */
  public Link plain() {
    if (!isPlain()) {
      throw new IllegalArgumentException(
          "Link '"
              + name
              + "' runs from the "
              + from.body()
              + " to the "
              + to.body()
              + "; only a link from the axle to the frame is a plain bar.");
    }
    return new Link(name, kind, to.atRide(), from.atRide(), stiffnessNPerMm);
  }

  /** Distance between the ends at ride (mm). */
  public double lengthMm() {
    return from.atRide().distanceMm(to.atRide());
  }

  /** From the first end to the second at ride (mm). */
  public Vector3 wayAtRide() {
    return from.atRide().to(to.atRide());
  }

  /**
   * What it does at a pose. Its second end counts as the frame's.
   *
   * @param placement where all bodies stand
   */
  public LinkReading at(Placement placement) {
    Placement first = placement.of(from.body());
    Placement second = placement.of(to.body());
    Vector3 now = first.move(from.atRide()).to(second.move(to.atRide()));
    double lengthMm = now.norm();
    double stretchMm = lengthMm - lengthMm();
    return new LinkReading(
        name,
        lengthMm,
        stretchMm,
        stretchMm * stiffnessNPerMm,
        now.normalized(),
        second.turnBack(now).angleToRad(wayAtRide()),
        first.turnBack(now).angleToRad(wayAtRide()));
  }
}
