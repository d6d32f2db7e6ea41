package trammel.cutting.bars;

/**
 * What one piece of each kind is worth in a proof, in whole parts of a price step.
 *
 * <p>Prices less these worths are the reduced costs of the pattern relaxation. Any plan costs the
 * {@link #bound} of the worths, the reduced costs of its bars, and what it cuts beyond the demand.
 */
final class PieceWorth {
  /** Covers the rounding of a few thousand sums and products; far below any price step. */
  private static final double ROUNDING = 1e-9;

  private final BarModel model;

  /** Worth of a piece of each kind, in {@link #scale} parts of a price step. */
  private final long[] worth;

  /** Charge for each bar of limited stock, same unit. */
  private final long[] charge;

  private final long scale;

  PieceWorth(BarModel model, long[] worth, long[] charge, long scale) {
    this.model = model;
    this.worth = worth;
    this.charge = charge;
    this.scale = scale;
  }

  /**
   * The mean of several sets of worths of one model and scale: no pattern gains by it if none gains
   * by any of the sets.
   */
  static PieceWorth mean(PieceWorth... sets) {
    PieceWorth first = sets[0];
    long[] worth = new long[first.worth.length];
    for (int k = 0; k < worth.length; k++) {
      for (PieceWorth set : sets) {
        worth[k] += set.worth[k];
      }
      worth[k] = Math.floorDiv(worth[k], sets.length);
    }
    long[] charge = new long[first.charge.length];
    for (int s = 0; s < charge.length; s++) {
      for (PieceWorth set : sets) {
        charge[s] += set.charge[s];
      }
      charge[s] = -Math.floorDiv(-charge[s], sets.length);
    }
    return new PieceWorth(first.model, worth, charge, first.scale);
  }

  long of(int kind) {
    return worth[kind];
  }

  /** A bar's price with its charge. */
  double barCost(int stock) {
    return (double) model.price[stock] * scale + charge[stock];
  }

  /** Worth of everything asked for, less the charges for all limited stock. */
  private double bound() {
    double bound = 0;
    for (int k = 0; k < worth.length; k++) {
      bound += (double) worth[k] * model.demand[k];
    }
    for (int s = 0; s < charge.length; s++) {
      if (charge[s] > 0) {
        bound -= (double) charge[s] * model.available[s];
      }
    }
    return bound;
  }

  /**
   * The highest reduced cost of a bar in a plan of at most the given price, in parts of a price
   * step.
   */
  double budget(long price) {
    double bound = bound();
    return (double) price * scale - bound + ROUNDING * (Math.abs(bound) + scale);
  }

  double reducedCost(Pattern pattern) {
    double reduced = barCost(pattern.stock);
    for (int i = 0; i < pattern.kinds.length; i++) {
      reduced -= (double) worth[pattern.kinds[i]] * pattern.counts[i];
    }
    return reduced;
  }
}
