package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.cutting.bars.FillingCover;
import trammel.cutting.internal.Deadline;

/**
 * The cheapest plan when few parts fit on each sheet: all selections of parts that one sheet can
 * hold are listed, and the cheapest of them that together hold all parts are chosen (set covering,
 * Gilmore and Gomory, Oper. Res. 13 (1965), from memory).
 *
 * <p>Selections grow by one part at a time, and only from selections that fit, as every part of a
 * packing is a packing.
 */
final class AllFillings {
  /** Selections that fit, above which the list is given up. */
  private static final int MOST_SELECTIONS = 40_000;

  /** Fillings that none other outdoes, above which no choice among them is made. */
  private static final int MOST_FILLINGS = 12_000;

  /** Sheets of the stock list; more than that have no room in a set of bits. */
  private static final int MOST_SHEETS = 62;

  private final SheetModel model;
  private final Deadline deadline;
  private final ExactPlacement placement;
  private final Map<Selection, Long> sheetsOf = new HashMap<>();
  private boolean open;
  private boolean proven;

  /** Parts of each type. */
  private record Selection(int[] counts) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Selection && Arrays.equals(counts, ((Selection) other).counts);
    }

    @Override
    public int hashCode() {
      return Arrays.hashCode(counts);
    }

    Selection with(int type, int change) {
      int[] changed = counts.clone();
      changed[type] += change;
      return new Selection(changed);
    }
  }

  AllFillings(SheetModel model, Deadline deadline) {
    this.model = model;
    this.deadline = deadline;
    this.placement = new ExactPlacement(model);
  }

  /**
   * @param price price of the best plan known
   * @return a cheaper plan, the cheapest of all if {@link #isProven()}; empty when none was found
   */
  Optional<SheetSet> cheaperThan(long price) {
    if (model.sheets() > MOST_SHEETS || !list()) {
      return Optional.empty();
    }
    FillingCover cover = new FillingCover(model.count, model.price, model.available);
    List<Selection> selections = new ArrayList<>();
    addBest(cover, selections);
    if (cover.size() > MOST_FILLINGS) {
      return Optional.empty();
    }
    FillingCover.Choice choice = cover.choose(price, deadline);
    proven = choice.isComplete() && !open;
    return choice.fillings().map(numbers -> plan(numbers, cover, selections));
  }

  /** True when nothing is cheaper than the plan found, or than the price given if none was. */
  boolean isProven() {
    return proven;
  }

  /** Lists all selections that fit; false when there are too many or time is up. */
  private boolean list() {
    List<Selection> level = new ArrayList<>();
    Selection none = new Selection(new int[model.types()]);
    sheetsOf.put(none, (1L << model.sheets()) - 1);
    level.add(none);
    while (!level.isEmpty()) {
      List<Selection> next = new ArrayList<>();
      for (Selection selection : level) {
        if (sheetsOf.size() > MOST_SELECTIONS || deadline.isPast()) {
          return false;
        }
        grow(selection, next);
      }
      level = next;
    }
    return true;
  }

  private void grow(Selection selection, List<Selection> next) {
    int from = model.types() - 1;
    while (from > 0 && selection.counts[from] == 0) {
      from--;
    }
    for (int type = from; type < model.types(); type++) {
      if (selection.counts[type] < model.count[type]) {
        Selection larger = selection.with(type, 1);
        long sheets = fitting(larger, candidates(larger));
        if (sheets != 0) {
          sheetsOf.put(larger, sheets);
          next.add(larger);
        }
      }
    }
  }

  /** Sheets on which the selection fits whichever part is taken away. */
  private long candidates(Selection selection) {
    long sheets = -1;
    for (int type = 0; type < model.types() && sheets != 0; type++) {
      if (selection.counts[type] > 0) {
        sheets &= sheetsOf.getOrDefault(selection.with(type, -1), 0L);
      }
    }
    return sheets;
  }

  private long fitting(Selection selection, long candidates) {
    long sheets = 0;
    for (int s = 0; s < model.sheets(); s++) {
      if ((candidates >>> s & 1) == 0) {
        continue;
      }
      boolean fits = placement.fits(selection.counts, s);
      deadline.spend(placement.effort());
      if (fits) {
        sheets |= 1L << s;
      } else {
        open |= placement.isOpen();
      }
    }
    return sheets;
  }

  /** Adds the fillings that hold no more on the same sheet and cost no less on another. */
  private void addBest(FillingCover cover, List<Selection> selections) {
    for (Map.Entry<Selection, Long> entry : sheetsOf.entrySet()) {
      long sheets = entry.getValue() & ~larger(entry.getKey());
      for (int s = 0; s < model.sheets() && cover.size() <= MOST_FILLINGS; s++) {
        if ((sheets >>> s & 1) != 0
            && !isCheaperElsewhere(entry.getValue(), s)
            && cover.add(s, entry.getKey().counts) >= 0) {
          selections.add(entry.getKey());
        }
      }
    }
  }

  /** Sheets that hold the selection and one part more. */
  private long larger(Selection selection) {
    long sheets = 0;
    for (int type = 0; type < model.types(); type++) {
      if (selection.counts[type] < model.count[type]) {
        sheets |= sheetsOf.getOrDefault(selection.with(type, 1), 0L);
      }
    }
    return sheets;
  }

  private boolean isCheaperElsewhere(long sheets, int sheet) {
    for (int s = 0; s < model.sheets(); s++) {
      if ((sheets >>> s & 1) != 0
          && model.available[s] == SheetModel.UNLIMITED
          && (model.price[s] < model.price[sheet]
              || (model.price[s] == model.price[sheet] && s < sheet))) {
        return true;
      }
    }
    return false;
  }

  private SheetSet plan(int[] numbers, FillingCover cover, List<Selection> selections) {
    SheetSet set = new SheetSet();
    int[] needed = model.count.clone();
    for (int number : numbers) {
      int sheet = cover.stock(number);
      if (!placement.fits(selections.get(number).counts, sheet)) {
        throw new IllegalStateException("a selection that fitted fits no more");
      }
      set.add(model, sheet, placement.layout().without(needed));
    }
    return set;
  }
}
