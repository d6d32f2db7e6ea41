package trammel.engine.clearance;

import trammel.engine.geometry.Point3;

/**
 * Least distance between two shapes.
 *
 * @param gapMm signed: the room between them if positive; if negative, how far one of them has to
 *     move for them just to touch
 * @param onFirst point of the first shape nearest to the second, or deepest inside it
 * @param onSecond its counterpart on the second shape, as far away as the gap is wide or deep
 */
public record Gap(double gapMm, Point3 onFirst, Point3 onSecond) {
  /**
   * The gap between two shapes, with an error of about 1e-6 mm for bodies the size of a vehicle. In
   * penetration it is the depth of the shortest way out, with an error of about 1e-4 mm.
   */
  public static Gap between(Shape first, Shape second) {
    GapFinder finder = new GapFinder();
    finder.find(Placed.of(first), Placed.of(second));
    return of(finder.near);
  }

  /**
   * Whether two shapes are closer than a limit, as {@link Bounded#isCloser} says.
   *
   * @param limitMm the limit, mm, above 0; at 0, whether they run into each other or just touch
   */
  public static boolean isCloser(Shape first, Shape second, double limitMm) {
    return new Bounded(first).isCloser(new Bounded(second), limitMm);
  }

  static Gap of(NearestPoints near) {
    return new Gap(
        near.gapMm, new Point3(near.ax, near.ay, near.az), new Point3(near.bx, near.by, near.bz));
  }

  /** Whether the two shapes run into each other. */
  public boolean isOverlap() {
    return gapMm < 0;
  }
}
