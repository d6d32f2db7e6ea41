package trammel.engine.clearance;

/** Gap of one pair after another at given places; cuts the links back where the pair says so. */
final class PairGap {

  private final GapFinder finder = new GapFinder();
  private final Placed shortenedFirst = new Placed();
  private final Placed shortenedSecond = new Placed();
  private ClearancePair pair;
  private boolean hasDirection;
  private double clearX;
  private double clearY;
  private double clearZ;

  void start(ClearancePair nextPair) {
    pair = nextPair;
    hasDirection = false;
  }

  /**
   * The signed gap, or, if it cannot be as small as the limit, a value between the limit and the
   * gap. The direction that cleared the pair last time usually proves that at once.
   */
  double gapOrMoreThan(double limitMm, Placed first, Placed second) {
    Placed a = shortened(first, pair.firstCut(), shortenedFirst);
    Placed b = shortened(second, pair.secondCut(), shortenedSecond);
    if (hasDirection) {
      double leastMm = finder.leastPossibleMm(a, b, clearX, clearY, clearZ);
      if (leastMm > limitMm) {
        return leastMm;
      }
      finder.findFrom(a, b, clearX, clearY, clearZ);
    } else {
      finder.find(a, b);
    }
    clearX = finder.near.clearX;
    clearY = finder.near.clearY;
    clearZ = finder.near.clearZ;
    hasDirection = true;
    return finder.near.gapMm;
  }

  Gap gap(Placed first, Placed second) {
    hasDirection = false;
    gapOrMoreThan(Double.POSITIVE_INFINITY, first, second);
    return Gap.of(finder.near);
  }

  private static Placed shortened(Placed whole, EndCut cut, Placed scratch) {
    if (cut.isNone()) {
      return whole;
    }
    scratch.setShortened(whole, cut.frameEndMm(), cut.axleEndMm());
    return scratch;
  }
}
