package trammel.cutting.sheets;

import java.util.Random;
import trammel.cutting.internal.Deadline;

/**
 * Shortens a strip by tight packings and beams of growing effort until time is up.
 *
 * <p>Which weights and aims are best differs from list to list, so that each round draws its own.
 */
final class StripSearch {
  private static final long FIRST_NODES = 1000;
  private static final int FIRST_BEAM = 20;
  private static final int FIRST_AHEAD = 8;
  private static final double GROWTH = 1.12;
  private static final double AHEAD_GROWTH = 1.06;

  /** Weights of waste, of a rough skyline and of chance. */
  private static final double[][] WEIGHTS = {{30, 0.1, 0}, {10, 0.1, 0}, {2, 0.05, 0}};

  private static final double[] KEY_WEIGHTS = {0.03, 0.3, 1};
  private static final int[] BRANCHINGS = {4, 6, 10};
  private static final double MOSTLY = 0.8;
  private static final int[] ENDS = {1, 3, 3, 5};

  private final SheetModel model;
  private final SheetModel transposed;
  private final StripBest best;
  private final Random random;
  private final int aheadRounds;

  /** How often the box is filled along the strip: mostly the way that brought the last gain. */
  private double alongShare = 0.5;

  private final int width;
  private double effort = 1;
  private double ahead = FIRST_AHEAD;
  private Deadline deadline;

  /**
   * @param aheadRounds beams judged by quick ends to each round of plain ones
   */
  StripSearch(SheetModel model, StripBest best, Random random, int aheadRounds) {
    this.aheadRounds = aheadRounds;
    this.model = model;
    this.transposed = model.transposed();
    this.best = best;
    this.random = random;
    this.width = model.sheetWidth[0];
  }

  /** Searches on until a deadline, or until the best meets the bound; hands over the best. */
  StripBest run(Deadline end) {
    deadline = end;
    while (!isOver()) {
      tight((long) (FIRST_NODES * effort));
      for (int i = 0; i < BRANCHINGS.length && !isOver(); i++) {
        beam((int) (FIRST_BEAM * effort), BRANCHINGS[i]);
      }
      for (int i = 0; i < aheadRounds && !isOver(); i++) {
        beamAhead((int) ahead);
      }
      effort *= GROWTH;
      ahead *= AHEAD_GROWTH;
    }
    return best;
  }

  private boolean isOver() {
    return best.isOptimal() || deadline.isPast();
  }

  private void tight(long nodes) {
    for (int above = 0; above < 3 && best.lowest() + above < best.top(); above++) {
      int aim = best.lowest() + above;
      best.offer(new TightSearch(model, width, aim, random, deadline).find(nodes));
    }
  }

  /** Aims anywhere between the bound and the best: a tight aim prunes bad starts early. */
  private int aim() {
    int above = best.top() - best.lowest();
    return best.lowest() + (above > 0 ? random.nextInt(above) : 0);
  }

  private double[] weights() {
    return WEIGHTS[random.nextInt(WEIGHTS.length)];
  }

  private void beam(int size, int branching) {
    BeamSearch search = new BeamSearch(model, width, aim(), random, weights(), deadline);
    best.offer(search.find(size, branching));
  }

  /**
   * A small beam whose layouts are judged by quick ends, aimed mostly just below the best. The box
   * of that length is filled along the strip or across it; lists differ in which is easier.
   */
  private void beamAhead(int size) {
    int just = Math.max(best.lowest(), best.top() - 1);
    int aim = random.nextInt(4) == 0 ? aim() : just;
    int ends = ENDS[random.nextInt(ENDS.length)];
    double weight = KEY_WEIGHTS[random.nextInt(KEY_WEIGHTS.length)];
    int branching = BRANCHINGS[random.nextInt(BRANCHINGS.length)];
    boolean along = random.nextDouble() < alongShare;
    BeamSearch search =
        along
            ? new BeamSearch(model, width, aim, random, weights(), deadline)
            : new BeamSearch(transposed, aim, width, random, weights(), deadline);
    Layout found = search.lookingAhead(ends, weight).find(size, branching);
    if (found != null) {
      best.offer(along ? found : found.transposed());
      alongShare = along ? MOSTLY : 1 - MOSTLY;
    }
  }
}
