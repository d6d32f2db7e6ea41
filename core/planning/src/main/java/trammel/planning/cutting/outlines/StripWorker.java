package trammel.planning.cutting.outlines;

import java.util.SplittableRandom;
import trammel.planning.cutting.Deadline;

/**
 * Shortens a strip again and again. First it explores: what cannot be pulled apart is disturbed by
 * two large parts changing places. Then it compresses: ever smaller pieces are cut out of the best
 * strip (the two phases of Gardeyn and Vanden Berghe 2025, arXiv:2509.13329, from memory).
 */
final class StripWorker {
  private static final double EXPLORING = 0.7;
  private static final double EXPLORING_FIRST_STEP = 0.024;
  private static final double EXPLORING_STEP = 0.003;
  private static final int EXPLORING_PATIENCE = 100;
  private static final double COMPRESSING_MOST = 0.004;
  private static final double COMPRESSING_LEAST = 0.0002;
  private static final int COMPRESSING_PATIENCE = 40;
  private static final int COMPRESSING_STAGES = 10;

  /** Densities tried at once with the first plan, which is loose. */
  private static final double[] DENSITIES = {0.8, 0.74, 0.68, 0.6, 0.5};

  private static final int SQUEEZING_PATIENCE = 40;
  private static final double SQUEEZING_PART = 0.05;
  private static final double NOISE = 1e-9;

  private final StripRecord record;
  private final Nest nest;
  private final OutlineSeparation separation;
  private final SplittableRandom random;
  private final Deadline deadline;
  private final LargeParts large;
  private final double shortestMm;
  private final NearMisses misses = new NearMisses();

  /**
   * @param first a plan without overlap
   * @param shortestMm no strip can be shorter
   */
  StripWorker(
      StripRecord record,
      Nest first,
      double shortestMm,
      NoFitTable table,
      SplittableRandom random,
      Deadline deadline) {
    this.record = record;
    this.nest = first.copy();
    this.shortestMm = shortestMm;
    this.random = random;
    this.deadline = deadline;
    this.separation = new OutlineSeparation(nest, table, random);
    this.large = new LargeParts(nest);
  }

  void run() {
    squeeze();
    explore(deadline.part(EXPLORING));
    compress();
  }

  /** Pushes the first plan together as a whole, as densely as comes out at once. */
  private void squeeze() {
    for (double density : DENSITIES) {
      double target = large.areaMm2 / (nest.sheetHeight[0] * density);
      if (target >= record.length() || target < shortestMm || deadline.isPast()) {
        continue;
      }
      record.copyTo(nest);
      double ratio = target / nest.sheetWidth[0];
      nest.sheetWidth[0] = target;
      for (int i = 0; i < nest.items(); i++) {
        nest.put(i, nest.way[i], 0, nest.x[i] * ratio, nest.y[i]);
        nest.clamp(i);
      }
      if (separate(SQUEEZING_PATIENCE, deadline.part(SQUEEZING_PART), target)) {
        return;
      }
    }
  }

  private void explore(Deadline end) {
    double step = EXPLORING_FIRST_STEP;
    while (canShorten(end)) {
      double target = shorten(step);
      if (step > EXPLORING_STEP) {
        if (!separate(SQUEEZING_PATIENCE, end, target)) {
          step = Math.max(EXPLORING_STEP, step / 2);
        }
      } else {
        insist(target, end);
      }
    }
  }

  /** Tries for one length until it comes free or some thread has a strip as short. */
  private void insist(double target, Deadline end) {
    misses.clear();
    while (!separate(EXPLORING_PATIENCE, end, target)
        && !end.isPast()
        && record.length() > target) {
      misses.add(nest, separation.leastTotal());
      misses.copyOne(nest, random);
      large.swapTwo(nest, random);
    }
  }

  private void compress() {
    for (int stage = COMPRESSING_STAGES; stage > 0; stage--) {
      Deadline end = deadline.part(1.0 / stage);
      double part = (double) stage / COMPRESSING_STAGES;
      double step = COMPRESSING_LEAST + part * (COMPRESSING_MOST - COMPRESSING_LEAST);
      while (canShorten(end)) {
        separate(COMPRESSING_PATIENCE, end, shorten(step));
      }
    }
  }

  private boolean canShorten(Deadline end) {
    return record.length() > shortestMm * (1 + NOISE) && !end.isPast();
  }

  /** Offers the nest as a record when it comes free. */
  private boolean separate(int patience, Deadline end, double target) {
    separation.forget();
    boolean free = separation.run(patience, end, record, target);
    if (free) {
      record.offer(nest);
    }
    return free;
  }

  /**
   * Cuts a piece out of the shortest strip at some place and moves all behind it back.
   *
   * @return the new length, mm
   */
  private double shorten(double part) {
    record.copyTo(nest);
    double byMm = nest.sheetWidth[0] * part;
    double target = nest.sheetWidth[0] - byMm;
    double cut = random.nextDouble() * target;
    nest.sheetWidth[0] = target;
    for (int i = 0; i < nest.items(); i++) {
      if (nest.middleX(i) > cut) {
        nest.put(i, nest.way[i], 0, nest.x[i] - byMm, nest.y[i]);
      }
      nest.clamp(i);
    }
    return target;
  }
}
