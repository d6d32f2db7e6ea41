package trammel.engine.clearance;

/**
 * A shape with the upright block round it, for one that is asked many times what comes close to it:
 * most of what is far away is known to be so from the blocks. Not for use by several threads at
 * once.
 */
public final class Bounded {
  /** Beyond this over a limit the error of a gap does not matter (mm). */
  private static final double FAR_ENOUGH_MM = 0.01;

  private final Shape shape;
  private final Extent extent;
  private Placed placed;
  private GapFinder finder;

  public Bounded(Shape shape) {
    this.shape = shape;
    extent = Extent.of(shape);
  }

  /** The shape itself. */
  public Shape shape() {
    return shape;
  }

  /**
   * Whether another is closer than a limit: the same as asking for their gap, and sooner known
   * where they are far apart.
   *
   * @param limitMm the limit, mm, above 0; at 0, whether they run into each other or just touch
   */
  public boolean isCloser(Bounded other, double limitMm) {
    return extent.apartMm(other.extent) < limitMm + FAR_ENOUGH_MM
        && finder().isCloser(placed(), other.placed(), limitMm);
  }

  private GapFinder finder() {
    if (finder == null) {
      finder = new GapFinder();
    }
    return finder;
  }

  private Placed placed() {
    if (placed == null) {
      placed = Placed.of(shape);
    }
    return placed;
  }
}
