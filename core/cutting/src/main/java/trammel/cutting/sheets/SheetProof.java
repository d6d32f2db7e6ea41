package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.cutting.bars.FillingCover;
import trammel.cutting.internal.Deadline;

/**
 * Raises the bound of a short list by the worth of its parts, and settles it where that is near
 * enough (column generation, Gilmore and Gomory, Operations Research 13 (1965); fillings whose
 * worth says that they could still be in a better plan are then listed, and the cheapest choice of
 * them is the optimum).
 */
final class SheetProof {
  /** Fillings that start the worth of parts, and that one choice is made among. */
  private static final int MOST_FIRST = 8000;

  private static final int MOST_LISTED = 12_000;

  /** Fillings of one size taken into account at once. */
  private static final int PER_ROUND = 12;

  private static final int MOST_ROUNDS = 120;
  private static final double NOISE = 1e-7;

  private final SheetModel model;
  private final PartRoom room;
  private final Deadline deadline;
  private final FillingCover cover;
  private final List<Long> selections = new ArrayList<>();
  private double bound = Double.NEGATIVE_INFINITY;
  private double[] boundWorth;
  private boolean proven;

  SheetProof(SheetModel model, PartRoom room, Deadline deadline) {
    this.model = model;
    this.room = room;
    this.deadline = deadline;
    this.cover = new FillingCover(model.count, model.price, model.available);
  }

  /** No plan is cheaper than this, price steps; 0 when nothing was found out. */
  double bound() {
    return Math.max(0, bound);
  }

  /** Whether nothing is cheaper than the plan found, or than the price given if none was. */
  boolean isProven() {
    return proven;
  }

  /**
   * The cheapest choice of fillings found so far, those left out whose worth says that they are in
   * no better choice.
   *
   * @param price of the best plan known
   * @return a cheaper plan, if there is one
   */
  Optional<SheetSet> recombined(long price) {
    room.forEach(this::start);
    double[] worth = cover.worth(price, deadline);
    double gap = price - 1 - worthOf(model.count, worth);
    FillingCover some = new FillingCover(model.count, model.price, model.available);
    List<Long> chosen = new ArrayList<>();
    for (int i = 0; i < selections.size(); i++) {
      int sheet = cover.stock(i);
      int[] counts = room.counts(selections.get(i));
      double loss = model.price[sheet] - worthOf(counts, worth);
      if (loss <= gap + NOISE * price && some.add(sheet, counts) >= 0) {
        chosen.add(selections.get(i));
      }
    }
    return some.cheaperThan(price, deadline).map(numbers -> plan(numbers, some, chosen));
  }

  /**
   * @param price of the best plan known
   * @return a cheaper plan, if one was found
   */
  Optional<SheetSet> cheaperThan(long price) {
    room.forEach(this::start);
    if (!raise(price)) {
      return Optional.empty();
    }
    double gap = price - 1 - bound;
    if (gap < -NOISE) {
      proven = true;
      return Optional.empty();
    }
    boolean all = listWithin(gap + NOISE * price);
    FillingCover.Choice choice = cover.choose(price, deadline);
    proven = all && choice.isComplete();
    return choice.fillings().map(numbers -> plan(numbers, cover, selections));
  }

  private void start(int sheet, long selection) {
    if (cover.size() < MOST_FIRST) {
      add(sheet, selection);
    }
  }

  private void add(int sheet, long selection) {
    if (cover.size() < MOST_LISTED && cover.add(sheet, room.counts(selection)) >= 0) {
      selections.add(selection);
    }
  }

  private static double worthOf(int[] counts, double[] worth) {
    double sum = 0;
    for (int t = 0; t < counts.length; t++) {
      sum += worth[t] * counts[t];
    }
    return sum;
  }

  /** Worths until no filling is worth more than its sheet; false when the effort was not enough. */
  private boolean raise(long price) {
    for (int round = 0; round < MOST_ROUNDS && !deadline.isPast(); round++) {
      int before = cover.size();
      boolean allSeen = addWorthy(cover.worth(price, deadline));
      if (allSeen && cover.size() == before) {
        return true;
      }
    }
    return false;
  }

  /**
   * Adds fillings worth more than their sheets, and raises the bound by the highest worth on each:
   * sheets open in number scale all worths down to what they cost, limited ones are charged for.
   *
   * @return false when there may be more of them on some sheet than were looked at
   */
  private boolean addWorthy(double[] worth) {
    WorthyFillings fillings = new WorthyFillings(model, room, worth, deadline);
    boolean allSeen = true;
    double scale = 1;
    double charged = 0;
    for (int s = 0; s < model.sheets(); s++) {
      fillings.list(s, model.price[s] * (1 + NOISE) + NOISE, PER_ROUND, this::add);
      if (fillings.ranOut()) {
        allSeen = false;
      } else if (model.available[s] == SheetModel.UNLIMITED) {
        scale = Math.max(scale, fillings.highest() / model.price[s]);
      } else {
        charged += model.available[s] * Math.max(0, fillings.highest() - model.price[s]);
      }
    }
    if (allSeen) {
      raiseTo(worthOf(model.count, worth) / scale - charged, worth, scale);
    }
    return allSeen;
  }

  private void raiseTo(double found, double[] worth, double scale) {
    if (found > bound) {
      bound = found;
      boundWorth = worth.clone();
      for (int t = 0; t < worth.length; t++) {
        boundWorth[t] /= scale;
      }
    }
  }

  /**
   * Lists every filling that a cheaper plan could hold; false when they could not all be listed.
   */
  private boolean listWithin(double gap) {
    WorthyFillings fillings = new WorthyFillings(model, room, boundWorth, deadline);
    boolean all = true;
    for (int s = 0; s < model.sheets() && all; s++) {
      int most = MOST_LISTED - cover.size();
      fillings.list(s, model.price[s] - gap - NOISE, most, this::add);
      all = fillings.isComplete() && !fillings.ranOut();
    }
    return all;
  }

  private SheetSet plan(int[] numbers, FillingCover cover, List<Long> selections) {
    SheetSet set = new SheetSet();
    int[] needed = model.count.clone();
    for (int number : numbers) {
      int sheet = cover.stock(number);
      set.add(model, sheet, room.layout(selections.get(number), sheet).without(needed));
    }
    return set;
  }
}
