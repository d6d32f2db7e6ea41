package trammel.cutting.bars;

import trammel.cutting.internal.PriceLadder;

/** The best plan so far and the best bound so far. */
final class Incumbent implements PatternGeneration.Sufficient {
  private final PriceLadder ladder;
  private CutList best;
  private long bestPrice;
  private long lowerBound;

  /**
   * @param highest a price that no plan worth having exceeds
   */
  Incumbent(BarModel model, CutList first, long highest) {
    this.best = first;
    this.bestPrice = first == null ? highest + 1 : first.price;
    this.ladder =
        new PriceLadder(model.capacity, model.price, model.available, model.totalSize(), bestPrice);
    this.lowerBound = ladder.atLeast(0);
  }

  void offer(CutList plan) {
    if (plan != null && plan.price < bestPrice) {
      best = plan.copy();
      bestPrice = plan.price;
    }
  }

  /** Takes a proven bound; it is raised to the next total that bars can cost. */
  void raiseBound(double bound) {
    lowerBound = Math.max(lowerBound, Math.min(bestPrice, ladder.atLeast((long) Math.ceil(bound))));
  }

  /** True when no bound up to the value of the relaxation could be raised any further. */
  @Override
  public boolean test(double bound, double value) {
    long raised = ladder.atLeast((long) Math.ceil(bound));
    return raised >= bestPrice || raised >= ladder.atLeast((long) Math.ceil(value));
  }

  /** Nothing cheaper than the best plan exists. */
  void close() {
    lowerBound = bestPrice;
  }

  boolean isClosed() {
    return lowerBound >= bestPrice;
  }

  /** How far the best plan may lie above the optimum, as a part of its price. */
  double gap() {
    return bestPrice == 0 ? 0 : (double) (bestPrice - lowerBound) / bestPrice;
  }

  boolean exists() {
    return best != null;
  }

  CutList best() {
    return best;
  }

  long price() {
    return bestPrice;
  }

  long lowerBound() {
    return lowerBound;
  }

  /** The least total above another that has the room. */
  long nextPrice(long above) {
    return ladder.atLeast(above + 1);
  }

  /** The dearest total that would still be an improvement. */
  long target() {
    return ladder.below(bestPrice);
  }
}
