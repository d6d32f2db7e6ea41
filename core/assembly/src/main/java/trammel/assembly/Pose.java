package trammel.assembly;

import java.util.Map;

/**
 * Where the bodies have gone from ride.
 *
 * @param moved the motion of each body by its name; one that is left out stays
 */
public record Pose(Map<String, Place> moved) {
  /** Everything as it stands at ride. */
  public static final Pose RIDE = new Pose(Map.of());

  public Pose {
    moved = Map.copyOf(moved);
  }

  /** The motion of a body. */
  public Place of(String body) {
    return moved.getOrDefault(body, Place.RIDE);
  }
}
