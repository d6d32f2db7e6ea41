package trammel.cutting.outlines;

import java.util.SplittableRandom;
import trammel.cutting.internal.Deadline;

/**
 * Pulls overlapping outlines apart by moving one at a time to where it overlaps least, while pairs
 * that stay entangled weigh more and more (guided local search after Egeblad, Nielsen and Odgaard
 * 2007; restarts from the least overlap after Gardeyn and Vanden Berghe 2025, arXiv:2509.13329;
 * both from memory).
 */
final class OutlineSeparation {
  /** What is less than this much better does not count as a gain. */
  private static final double GAIN = 0.98;

  /** Places are looked for as finely as this part of all that still overlaps. */
  private static final double FINE = 0.05;

  private static final double NOISE = 1e-10;

  private final Nest nest;
  private final NestOverlap overlap;
  private final PlaceSearch places;
  private final SplittableRandom random;
  private final int[] order;
  private final Nest least;
  private double leastTotal;

  OutlineSeparation(Nest nest, NoFitTable table, SplittableRandom random) {
    this.nest = nest;
    this.random = random;
    this.overlap = new NestOverlap(nest, table);
    this.places = new PlaceSearch(nest, overlap, random);
    this.least = nest.copy();
    this.order = new int[nest.items()];
    for (int i = 0; i < order.length; i++) {
      order[i] = i;
    }
  }

  /** All pairs weigh what their sizes say again. */
  void forget() {
    overlap.forget();
  }

  /** Overlap of the nest as the last run left it, mm. */
  double leastTotal() {
    return leastTotal;
  }

  /**
   * Works until nothing overlaps or a number of rounds has brought no gain, twice in a row from the
   * least overlap found; leaves the nest with the least overlap found.
   *
   * @param target the run ends early once the record is no longer than this
   * @return true when nothing overlaps
   */
  boolean run(int patience, Deadline deadline, StripRecord record, double target) {
    leastTotal = overlap.total();
    least.copyFrom(nest);
    boolean gained = true;
    while (gained && leastTotal > 0 && !deadline.isPast()) {
      double before = leastTotal;
      rounds(patience, deadline, record, target);
      nest.copyFrom(least);
      gained = leastTotal < GAIN * before && !isBeaten(record, target);
    }
    return leastTotal == 0;
  }

  private static boolean isBeaten(StripRecord record, double target) {
    return record != null && record.length() <= target;
  }

  private void rounds(int patience, Deadline deadline, StripRecord record, double target) {
    int idle = 0;
    while (leastTotal > 0 && idle < patience && !deadline.isPast() && !isBeaten(record, target)) {
      places.lookDownTo(Math.max(FINE * leastTotal, NOISE * nest.sheetHeight[0]));
      round(deadline);
      double total = overlap.reweigh();
      idle = total < GAIN * leastTotal ? 0 : idle + 1;
      if (total < leastTotal) {
        leastTotal = total;
        least.copyFrom(nest);
      }
    }
  }

  private void round(Deadline deadline) {
    for (int i = order.length - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      int held = order[i];
      order[i] = order[j];
      order[j] = held;
    }
    for (int item : order) {
      if (deadline.isPast()) {
        return;
      }
      double cost = overlap.weighted(item);
      if (cost > 0) {
        places.move(item, cost);
        deadline.spend(overlap.workDone());
      }
    }
  }
}
