package trammel.cutting.sheets;

import java.util.Arrays;
import trammel.cutting.internal.Deadline;

/**
 * Lists the fillings of a sheet that are worth more than an amount, every part having a worth of
 * its own.
 *
 * <p>Parts are taken or left in order of their worth for their area; a selection is given up once
 * even parts cut to measure could not bring its worth high enough (Pisinger and Sigurd, Discrete
 * Optimization 2 (2005), price fillings in such a search, from memory).
 */
final class WorthyFillings {
  private static final long STEPS_PER_SELECTION = 60;

  private final SheetModel model;
  private final PartRoom room;
  private final Deadline deadline;
  private final double[] worth;
  private final int[] order;
  private final int[] counts;
  private int sheet;
  private double above;
  private PartRoom.FillingTaker taker;
  private int left;
  private boolean complete;
  private double highest;

  WorthyFillings(SheetModel model, PartRoom room, double[] worth, Deadline deadline) {
    this.model = model;
    this.room = room;
    this.worth = worth;
    this.deadline = deadline;
    this.counts = new int[model.types()];
    Integer[] sorted = new Integer[model.types()];
    for (int t = 0; t < sorted.length; t++) {
      sorted[t] = t;
    }
    Arrays.sort(
        sorted, (a, b) -> Double.compare(worth[b] / model.area(b), worth[a] / model.area(a)));
    order = new int[sorted.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = sorted[i];
    }
  }

  /**
   * Lists fillings of one sheet.
   *
   * @param above what fillings must be worth more than
   * @param most fillings wanted
   * @param taker is handed each filling found, and larger ones as well as parts of them
   */
  void list(int sheet, double above, int most, PartRoom.FillingTaker taker) {
    this.sheet = sheet;
    this.above = above;
    this.taker = taker;
    this.left = most;
    this.complete = true;
    this.highest = above;
    Arrays.fill(counts, 0);
    extend(0, 0, model.sheetArea(sheet), true);
  }

  /** Whether all fillings were found, and none stayed open. */
  boolean isComplete() {
    return complete;
  }

  /**
   * No filling of the sheet is worth more, open ones counted as if they fitted; only after a list
   * that did not run out of effort or of the number wanted.
   */
  double highest() {
    return highest;
  }

  boolean ranOut() {
    return left <= 0;
  }

  private void extend(int at, double sum, long areaLeft, boolean fits) {
    if (left <= 0) {
      return;
    }
    deadline.spend(STEPS_PER_SELECTION);
    if (at == order.length) {
      end(sum, fits);
      return;
    }
    if (sum + mostOf(at, areaLeft) <= above) {
      return;
    }
    if (deadline.isPast()) {
      left = 0;
      complete = false;
      return;
    }
    int type = order[at];
    for (int n = most(type, areaLeft); n >= 0; n--) {
      counts[type] = n;
      boolean stillFits = n == 0 ? fits : decided() == PartRoom.Fit.YES;
      extend(at + 1, sum + n * worth[type], areaLeft - n * model.area(type), stillFits);
    }
  }

  /** Every part is taken or left. */
  private void end(double sum, boolean fits) {
    if (sum <= above) {
      return;
    }
    highest = Math.max(highest, sum);
    if (fits) {
      taker.take(sheet, room.selection(counts));
      left--;
    } else {
      complete = false;
    }
  }

  /** So many more parts of a type that it is not known that they do not fit. */
  private int most(int type, long areaLeft) {
    int most = (int) Math.min(model.count[type], areaLeft / model.area(type));
    if (!model.fits(type, sheet)) {
      return 0;
    }
    for (int n = 1; n <= most; n++) {
      counts[type] = n;
      if (decided() == PartRoom.Fit.NO) {
        return n - 1;
      }
    }
    return most;
  }

  private PartRoom.Fit decided() {
    return room.decided(room.selection(counts), sheet);
  }

  /** What the parts from a place on could bring at most if they could be cut to measure. */
  private double mostOf(int from, long area) {
    double sum = 0;
    double areaLeft = area;
    for (int i = from; i < order.length && areaLeft > 0; i++) {
      int type = order[i];
      if (worth[type] <= 0 || !model.fits(type, sheet)) {
        continue;
      }
      double all = (double) model.area(type) * model.count[type];
      double part = Math.min(1, areaLeft / all);
      sum += part * worth[type] * model.count[type];
      areaLeft -= all;
    }
    return sum;
  }
}
