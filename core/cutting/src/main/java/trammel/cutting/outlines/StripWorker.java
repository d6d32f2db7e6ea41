package trammel.cutting.outlines;

import java.util.SplittableRandom;
import trammel.cutting.internal.Deadline;

/**
 * Shortens a strip again and again. First it explores: what cannot be pulled apart is disturbed by
 * two large parts changing places. Then it compresses: ever smaller pieces are cut out of the best
 * strip (the two phases of Gardeyn and Vanden Berghe 2025, arXiv:2509.13329, from memory).
 */
final class StripWorker {
  private static final double EXPLORING = 0.7;
  private static final double EXPLORING_FIRST_STEP = 0.024;
  private static final double EXPLORING_STEP = 0.003;
  private static final int EXPLORING_PATIENCE = 200;
  private static final double COMPRESSING_MOST = 0.004;
  private static final double COMPRESSING_LEAST = 0.0002;
  private static final int COMPRESSING_PATIENCE = 40;
  private static final int COMPRESSING_STAGES = 10;
  private static final int EXPLORING_ROUNDS = 6;

  /** Rounds after which workers by counted effort look at what others have found. */
  static final int ROUNDS = EXPLORING_ROUNDS + COMPRESSING_STAGES;

  /** Densities that the first plan, which is loose, is pushed to as long as it comes free. */
  private static final double[] DENSITIES = {0.5, 0.6, 0.68, 0.74, 0.8};

  private static final int SQUEEZING_PATIENCE = 40;
  private static final double SQUEEZING_PART = 0.05;

  /** Parts of the gap up to the record that are given to what almost came free. */
  private static final double LEAST_ROOM = 0.1;

  private static final double MUCH_ROOM = 0.5;
  private static final double MORE_ROOM = 0.4;
  private static final int ROOM_PATIENCE = 30;
  private static final double NOISE = 1e-9;

  private final StripRecord record;
  private final Nest nest;
  private final Deadline deadline;
  private final OutlineSeparation separation;
  private final SplittableRandom random;
  private final LargeParts large;
  private final double shortestMm;
  private final NearMisses misses = new NearMisses();
  private final Nest almost;

  /** Overlap that the last try was left with, mm. */
  private double left;

  private double exploringStep = EXPLORING_FIRST_STEP;

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
    this.almost = first.copy();
    this.shortestMm = shortestMm;
    this.random = random;
    this.deadline = deadline;
    this.separation = new OutlineSeparation(nest, table, random);
    this.large = new LargeParts(nest);
  }

  /** All that one thread does by itself. */
  StripRecord run() {
    squeeze();
    explore(deadline.part(EXPLORING));
    for (int stage = COMPRESSING_STAGES; stage > 0; stage--) {
      compress(stage, deadline.part(1.0 / stage));
    }
    return record;
  }

  /**
   * One round of those that all is divided into.
   *
   * @param round from 0, and less than {@link #ROUNDS}
   */
  StripRecord round(int round) {
    if (round == 0) {
      squeeze();
    }
    if (round < EXPLORING_ROUNDS) {
      double before = (double) round / EXPLORING_ROUNDS * EXPLORING;
      explore(deadline.part(EXPLORING / EXPLORING_ROUNDS / (1 - before)));
    } else {
      int stage = ROUNDS - round;
      compress(stage, deadline.part(1.0 / stage));
    }
    return record;
  }

  /** Pushes the first plan together as a whole, as densely as comes out at once. */
  private void squeeze() {
    boolean free = true;
    for (int d = 0; d < DENSITIES.length && free && !deadline.isPast(); d++) {
      double target = large.areaMm2 / (nest.sheetHeight[0] * DENSITIES[d]);
      if (target < record.length() && target >= shortestMm) {
        record.copyTo(nest);
        spread(target);
        free = separate(SQUEEZING_PATIENCE, deadline.part(SQUEEZING_PART), target);
      }
    }
  }

  /** Moves all items together or apart along the strip to another length of it. */
  private void spread(double length) {
    double ratio = length / nest.sheetWidth[0];
    nest.sheetWidth[0] = length;
    for (int i = 0; i < nest.items(); i++) {
      nest.put(i, nest.way[i], 0, nest.x[i] * ratio, nest.y[i]);
      nest.clamp(i);
    }
  }

  private void explore(Deadline end) {
    while (canShorten(end)) {
      double target = shorten(exploringStep);
      if (exploringStep > EXPLORING_STEP) {
        if (!separate(SQUEEZING_PATIENCE, end, target)) {
          exploringStep = Math.max(EXPLORING_STEP, exploringStep / 2);
        }
      } else {
        insist(target, end);
      }
    }
  }

  /** Tries for one length until that or another gives a shorter strip, or some thread has one. */
  private void insist(double target, Deadline end) {
    double before = record.length();
    misses.clear();
    while (!separate(EXPLORING_PATIENCE, end, target)
        && !end.isPast()
        && record.length() == before) {
      misses.add(nest, left);
      misses.copyOne(nest, random);
      large.swapTwo(nest, random);
    }
  }

  /** One of the stages, the last of them 1, that cut out smaller and smaller pieces. */
  private void compress(int stage, Deadline end) {
    double part = (double) stage / COMPRESSING_STAGES;
    double step = COMPRESSING_LEAST + part * (COMPRESSING_MOST - COMPRESSING_LEAST);
    while (canShorten(end)) {
      separate(COMPRESSING_PATIENCE, end, shorten(step));
    }
  }

  private boolean canShorten(Deadline end) {
    return record.length() > shortestMm * (1 + NOISE) && !end.isPast();
  }

  /** Offers the nest as a record when it comes free, or what comes free with a little more room. */
  private boolean separate(int patience, Deadline end, double target) {
    separation.forget();
    boolean free = separation.run(patience, end, record, target);
    left = separation.leastTotal();
    if (free) {
      record.offer(nest);
    } else if (left < record.length() - target) {
      giveRoom(end, target);
    }
    return free;
  }

  /** Tries again on longer strips, but shorter ones than the record; leaves the nest as it was. */
  private void giveRoom(Deadline end, double target) {
    almost.copyFrom(nest);
    double gap = record.length() - target;
    boolean free = false;
    double part = Math.max(LEAST_ROOM, Math.min(MUCH_ROOM, left / gap));
    while (part < 1 && !free && !end.isPast()) {
      nest.copyFrom(almost);
      double length = target + part * gap;
      spread(length);
      separation.forget();
      free = separation.run(ROOM_PATIENCE, end, record, length);
      part += MORE_ROOM;
    }
    if (free) {
      record.offer(nest);
    }
    nest.copyFrom(almost);
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
