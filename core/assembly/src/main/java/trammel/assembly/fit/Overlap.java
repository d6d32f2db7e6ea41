package trammel.assembly.fit;

import java.util.Objects;
import trammel.engine.quantity.Given;

/**
 * Two parts that stand in the same place.
 *
 * @param one id of one part
 * @param other id of the other
 * @param depthMm how deep an edge of one lies in the other at most, as far as it was looked (mm)
 * @param pose number of the pose in which it does, or {@link #AT_RIDE}
 */
public record Overlap(String one, String other, double depthMm, int pose) {
  /** The number of ride among the poses. */
  public static final int AT_RIDE = -1;

  public Overlap {
    Objects.requireNonNull(one, "one");
    Objects.requireNonNull(other, "other");
    Given.positive("depth of an overlap (mm)", depthMm);
  }
}
