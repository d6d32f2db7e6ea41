package trammel.cutting.sheets;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Random;
import trammel.cutting.internal.Deadline;

/**
 * Which selections of parts fit on which sheets, every question answered once.
 *
 * <p>A selection is a set of bits, one for each part of the list. It is placed by quick fillings in
 * several orders; where these fail and the parts are few, all places are tried.
 */
final class PartRoom {
  /** Parts that a selection has bits for. */
  static final int MOST_PARTS = 60;

  /** Sheets that an answer has bits for. */
  private static final int MOST_SHEETS = 60;

  /** Fillings tried in an order drawn at random after those by size. */
  private static final int SHUFFLED = 6;

  /** Parts of which all places are tried, and corners looked at before that is given up. */
  private static final int FEW = 7;

  private static final int MOST_CORNERS = 1500;

  /** Relations chosen before a question is left open. */
  private static final int MOST_CHOICES = 2000;

  private static final long STEPS_PER_QUESTION = 80;
  private static final long STEPS_PER_PLACING = 150;

  private final SheetModel model;
  private final SheetFill[] fills;
  private final ExactPlacement exact;
  private final RelativePlacement relative;
  private final AreaBound bound;
  private final Random random;
  private final Deadline deadline;

  /** Type of each part; parts of one type lie side by side. */
  private final int[] typeOf;

  /** First part of each type. */
  private final int[] first;

  private final Arrangement[] sorted = new Arrangement[Arrangement.MEASURES];
  private final Arrangement shuffled;
  private final Map<Long, Answer> answers = new LinkedHashMap<>();
  private final Layout trial = new Layout();
  private Layout found;

  /** What is known of one selection. */
  private static final class Answer {
    long fitting;
    long failing;

    /** Sheets on which nothing holds the selection, proven. */
    long impossible;

    /** Sheets of which a long search could not tell. */
    long open;

    final Layout[] layouts;

    Answer(int sheets) {
      layouts = new Layout[sheets];
    }
  }

  /**
   * @param isFree whether all places may be tried, which a shear cannot cut
   */
  PartRoom(SheetModel model, SheetFill[] fills, boolean isFree, Random random, Deadline deadline) {
    this.model = model;
    this.fills = fills;
    this.exact = isFree ? new ExactPlacement(model, MOST_CORNERS) : null;
    this.relative = new RelativePlacement(model, MOST_CHOICES);
    this.bound = new AreaBound(model);
    this.random = random;
    this.deadline = deadline;
    this.first = new int[model.types()];
    int parts = 0;
    for (int t = 0; t < first.length; t++) {
      first[t] = parts;
      parts += model.count[t];
    }
    typeOf = new int[parts];
    for (int t = 0; t < first.length; t++) {
      for (int i = 0; i < model.count[t]; i++) {
        typeOf[first[t] + i] = t;
      }
    }
    for (int m = 0; m < sorted.length; m++) {
      sorted[m] = Arrangement.sorted(model, m);
    }
    shuffled = sorted[0].copy();
  }

  /** Whether the list is short enough for selections. */
  static boolean takes(SheetModel model) {
    long parts = 0;
    for (int count : model.count) {
      parts += count;
    }
    return parts <= MOST_PARTS && model.sheets() <= MOST_SHEETS;
  }

  /** The selection of the first so many parts of each type. */
  long selection(int[] counts) {
    long selection = 0;
    for (int t = 0; t < counts.length; t++) {
      selection |= ((1L << counts[t]) - 1) << first[t];
    }
    return selection;
  }

  /** Area of a selection, square steps. */
  long area(long selection) {
    long area = 0;
    for (long left = selection; left != 0; left &= left - 1) {
      area += model.area(typeOf[Long.numberOfTrailingZeros(left)]);
    }
    return area;
  }

  /** Takes a filling that is known. */
  void know(long selection, int sheet, Layout layout) {
    Answer answer = answer(selection);
    answer.fitting |= 1L << sheet;
    answer.layouts[sheet] = layout;
  }

  /** Whether a selection fits on a sheet, as far as it was found. */
  boolean fits(long selection, int sheet) {
    deadline.spend(STEPS_PER_QUESTION);
    Answer answer = answer(selection);
    if ((answer.fitting >>> sheet & 1) == 0 && (answer.failing >>> sheet & 1) == 0) {
      Layout layout = place(selection, sheet);
      if (layout == null) {
        answer.failing |= 1L << sheet;
      } else {
        answer.fitting |= 1L << sheet;
        answer.layouts[sheet] = layout;
      }
    }
    return (answer.fitting >>> sheet & 1) != 0;
  }

  /** What is known of a selection on a sheet after all that may be tried. */
  enum Fit {
    YES,
    NO,
    OPEN
  }

  /** Whether a selection fits on a sheet, all places tried if need be. */
  Fit decided(long selection, int sheet) {
    if (fits(selection, sheet)) {
      return Fit.YES;
    }
    Answer answer = answer(selection);
    if ((answer.impossible >>> sheet & 1) == 0 && (answer.open >>> sheet & 1) == 0) {
      Fit fit = decide(selection, sheet, answer);
      answer.impossible |= fit == Fit.NO ? 1L << sheet : 0;
      answer.open |= fit == Fit.OPEN ? 1L << sheet : 0;
      if (fit == Fit.YES) {
        answer.fitting |= 1L << sheet;
        answer.layouts[sheet] = found;
      }
      return fit;
    }
    return (answer.impossible >>> sheet & 1) != 0 ? Fit.NO : Fit.OPEN;
  }

  private Fit decide(long selection, int sheet, Answer answer) {
    int[] counts = counts(selection);
    if (bound.rulesOut(counts, sheet)) {
      return Fit.NO;
    }
    for (int s = 0; s < model.sheets(); s++) {
      boolean larger =
          model.sheetWidth[s] >= model.sheetWidth[sheet]
              && model.sheetHeight[s] >= model.sheetHeight[sheet];
      if (larger && (answer.impossible >>> s & 1) != 0) {
        return Fit.NO;
      }
    }
    if (Long.bitCount(selection) <= RelativePlacement.MOST_PARTS) {
      boolean fits = relative.fits(counts, sheet);
      deadline.spend(RelativePlacement.STEPS_PER_CHOICE * relative.choices());
      if (fits || !relative.isOpen()) {
        found = relative.layout();
        return fits ? Fit.YES : Fit.NO;
      }
    }
    boolean fits = exact.fits(counts, sheet);
    deadline.spend(ExactPlacement.STEPS_PER_CORNER * (1 + exact.steps()));
    found = exact.layout();
    return fits ? Fit.YES : exact.isOpen() ? Fit.OPEN : Fit.NO;
  }

  /** Hands over every filling found so far. */
  void forEach(FillingTaker taker) {
    answers.forEach(
        (selection, answer) -> {
          for (int s = 0; s < model.sheets(); s++) {
            if ((answer.fitting >>> s & 1) != 0) {
              taker.take(s, selection);
            }
          }
        });
  }

  /** Is handed fillings. */
  interface FillingTaker {
    void take(int sheet, long selection);
  }

  /** The layout of a selection that fits. */
  Layout layout(long selection, int sheet) {
    return answer(selection).layouts[sheet];
  }

  /** Parts of one type are alike: the first ones stand for all. */
  private Answer answer(long selection) {
    return answers.computeIfAbsent(canonical(selection), key -> new Answer(model.sheets()));
  }

  private long canonical(long selection) {
    if (first.length == typeOf.length) {
      return selection;
    }
    long key = 0;
    for (int t = 0; t < first.length; t++) {
      long mask = (1L << model.count[t]) - 1;
      int count = Long.bitCount(selection >>> first[t] & mask);
      key |= ((1L << count) - 1) << first[t];
    }
    return key;
  }

  /** Parts of each type of a selection. */
  int[] counts(long selection) {
    int[] counts = new int[model.types()];
    for (long left = selection; left != 0; left &= left - 1) {
      counts[typeOf[Long.numberOfTrailingZeros(left)]]++;
    }
    return counts;
  }

  private Layout place(long selection, int sheet) {
    int[] counts = counts(selection);
    long area = model.area(counts);
    if (area > model.sheetArea(sheet)) {
      return null;
    }
    for (int t = 0; t < counts.length; t++) {
      if (counts[t] > 0 && !model.fits(t, sheet)) {
        return null;
      }
    }
    deadline.spend(STEPS_PER_PLACING);
    int parts = Long.bitCount(selection);
    for (int i = 0; i < sorted.length + SHUFFLED; i++) {
      Arrangement arrangement = i < sorted.length ? sorted[i] : shuffle();
      for (SheetFill fill : fills) {
        int width = model.sheetWidth[sheet];
        int height = model.sheetHeight[sheet];
        if (fill.fill(width, height, arrangement, counts.clone(), trial) == area) {
          return trial.copy();
        }
      }
    }
    if (exact == null || parts > FEW) {
      return null;
    }
    boolean fits = exact.fits(counts, sheet);
    deadline.spend(ExactPlacement.STEPS_PER_CORNER * (1 + exact.steps()));
    return fits ? exact.layout() : null;
  }

  private Arrangement shuffle() {
    shuffled.shuffle(random);
    for (int t = 0; t < shuffled.turnFirst.length; t++) {
      shuffled.turnFirst[t] = random.nextBoolean();
      shuffled.splitUp[t] = random.nextBoolean();
    }
    return shuffled;
  }
}
