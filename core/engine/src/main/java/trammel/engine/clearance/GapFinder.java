package trammel.engine.clearance;

/**
 * Signed gap between two placed shapes. Holds its working memory, so that one finder serves a whole
 * sweep without allocating; not for use by two threads at a time.
 */
final class GapFinder {

  final NearestPoints near = new NearestPoints();

  private final SimplexWalk walk = new SimplexWalk();
  private final double[] onA = new double[3];
  private final double[] onB = new double[3];
  private OverlapHull hull;

  /** Leaves the gap, the points and the clearing direction in {@link #near}. */
  void find(Placed a, Placed b) {
    findFrom(a, b, a.centreX() - b.centreX(), a.centreY() - b.centreY(), a.centreZ() - b.centreZ());
  }

  /**
   * The same, started from a direction that cleared them nearby; the result does not depend on it.
   */
  void findFrom(Placed a, Placed b, double startX, double startY, double startZ) {
    if (a.isLine() && b.isLine()) {
      LinePair.find(a, b, near);
    } else if (!walk.find(a, b, startX, startY, startZ, near)) {
      if (hull == null) {
        hull = new OverlapHull();
      }
      hull.find(a, b, near);
    }
    near.thicken(a.marginMm(), b.marginMm());
  }

  /**
   * Whether the gap is less than a limit.
   *
   * @param limitMm 0 or more; at 0 cores that touch count
   */
  boolean isCloser(Placed a, Placed b, double limitMm) {
    double coresMm = limitMm + a.marginMm() + b.marginMm();
    if (a.isLine() && b.isLine()) {
      LinePair.find(a, b, near);
      return near.gapMm < coresMm;
    }
    return walk.isCloser(a, b, coresMm);
  }

  /**
   * A value in mm that the signed gap cannot be less than: the room between two planes square to a
   * unit direction that points from b to a.
   */
  double leastPossibleMm(Placed a, Placed b, double clearX, double clearY, double clearZ) {
    a.furthest(-clearX, -clearY, -clearZ, onA, 0);
    b.furthest(clearX, clearY, clearZ, onB, 0);
    return clearX * (onA[0] - onB[0])
        + clearY * (onA[1] - onB[1])
        + clearZ * (onA[2] - onB[2])
        - a.marginMm()
        - b.marginMm();
  }
}
