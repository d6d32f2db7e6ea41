package trammel.brackets.material;

import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The bolt sizes that can be bought.
 *
 * @param sizes the sizes, in the order of the catalog
 */
public record BoltSizes(List<BoltSize> sizes) {
  /** Sizes given in inches and in mm differ by rounding (mm). */
  private static final double SAME_MM = 0.1;

  public BoltSizes {
    sizes = List.copyOf(sizes);
  }

  /** These sizes. */
  public static BoltSizes of(Collection<BoltSize> sizes) {
    return new BoltSizes(List.copyOf(sizes));
  }

  /**
   * The bolt size of a diameter.
   *
   * @throws MissingEntryException if there is none
   */
  public BoltSize of(double diameterMm) {
    for (BoltSize size : sizes) {
      if (Math.abs(size.diameterMm() - diameterMm) < SAME_MM) {
        return size;
      }
    }
    throw new MissingEntryException(
        "the catalog has no bolt of "
            + diameterMm
            + " mm, which a joint of this layout takes; it has "
            + sizes.stream().map(BoltSize::key).collect(Collectors.joining(", "))
            + ". Add the size to the catalog or choose another joint or shock.");
  }

  /**
   * The bolt size nearest to a diameter, for a joint that can be drilled to suit.
   *
   * @throws MissingEntryException if there is no size at all
   */
  public BoltSize nearest(double diameterMm) {
    BoltSize nearest = null;
    for (BoltSize size : sizes) {
      if (nearest == null
          || Math.abs(size.diameterMm() - diameterMm)
              < Math.abs(nearest.diameterMm() - diameterMm)) {
        nearest = size;
      }
    }
    if (nearest == null) {
      throw new MissingEntryException(
          "the catalog has no bolts; mounts need some. Add them to the catalog.");
    }
    return nearest;
  }
}
