package trammel.engine.motion;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/**
 * A bar between a point of the frame and a point of the axle, ball-jointed at both ends, free of
 * force at ride height.
 *
 * @param name what the shop calls it; unique in its linkage
 * @param kind what it is there for
 * @param frame centre of the pivot on the body at ride (mm)
 * @param axle centre of the pivot on the axle at ride (mm)
 * @param stiffnessNPerMm axial stiffness of bar and both bushings in series (N/mm)
 */
public record Link(String name, LinkKind kind, Point3 frame, Point3 axle, double stiffnessNPerMm) {

  /** A bar shorter than this has no direction that can be trusted (mm). */
  static final double SHORTEST_MM = 1e-6;

  /** Ten kilometres: anything farther away is a slip of units (mm). */
  static final double FARTHEST_MM = 1e7;

  /**
   * @throws IllegalArgumentException if the name is blank, the link has no length, a pivot lies out
   *     of all proportion or the stiffness is not a positive number
   */
  public Link {
    Objects.requireNonNull(name, "name of the link");
    Objects.requireNonNull(kind, "kind of the link");
    Objects.requireNonNull(frame, "frame pivot of the link");
    Objects.requireNonNull(axle, "axle pivot of the link");
    if (name.isBlank()) {
      throw new IllegalArgumentException(
          "A link has no name; give each link a name of its own, such as lower_left.");
    }
    requireWithinReach(name, frame);
    requireWithinReach(name, axle);
    double lengthMm = frame.distanceMm(axle);
    if (lengthMm < SHORTEST_MM) {
      throw new IllegalArgumentException(
          "Link '"
              + name
              + "' is "
              + lengthMm
              + " mm long; a link must be at least 0.000001 mm long. Check whether its axle pivot"
              + " was copied from its frame pivot.");
    }
    if (!(stiffnessNPerMm > 0 && stiffnessNPerMm < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(
          "Link '"
              + name
              + "' has a stiffness of "
              + stiffnessNPerMm
              + " N/mm; it must be above 0 and finite. Give the stiffness of its two bushings in"
              + " series, for example 10000 N/mm.");
    }
  }

  /** Distance between the pivots at ride (mm). */
  public double lengthMm() {
    return frame.distanceMm(axle);
  }

  /** From the axle pivot to the frame pivot at ride (mm). */
  public Vector3 axleToFrame() {
    return axle.to(frame);
  }

  /** The same link on the other side of the body. */
  public Link mirrored() {
    return new Link(name, kind, frame.mirrored(), axle.mirrored(), stiffnessNPerMm);
  }

  private static void requireWithinReach(String name, Point3 pivot) {
    double farthestMm =
        Math.max(Math.abs(pivot.xMm()), Math.max(Math.abs(pivot.yMm()), Math.abs(pivot.zMm())));
    if (farthestMm > FARTHEST_MM) {
      throw new IllegalArgumentException(
          "Link '"
              + name
              + "' has a pivot "
              + farthestMm
              + " mm away from the axle; at most 10000000 mm are allowed. Check the unit of its"
              + " points.");
    }
  }
}
