package trammel.cutting.sheets;

import java.util.Arrays;
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

  /** What is known of a selection on a sheet after all that may be tried. */
  enum Fit {
    YES,
    NO,
    OPEN
  }

  /** Is handed fillings. */
  interface FillingTaker {
    void take(int sheet, long selection);
  }

  /** What is known of one selection; a set of sheets is a bit for each. */
  private static final class Answer {
    long fitting;

    /** Sheets on which quick fillings did not place it. */
    long failing;

    /** Sheets on which nothing holds the selection, proven. */
    long impossible;

    /** Sheets of which a long search could not tell. */
    long open;

    final Layout[] layouts;

    Answer(int sheets) {
      layouts = new Layout[sheets];
    }

    void fits(int sheet, Layout layout) {
      fitting |= 1L << sheet;
      layouts[sheet] = layout;
    }

    static boolean has(long sheets, int sheet) {
      return (sheets >>> sheet & 1) != 0;
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
    return Arrays.stream(model.count).sum() <= MOST_PARTS && model.sheets() <= MOST_SHEETS;
  }

  /** The first part of each type. */
  int[] firstParts() {
    return first.clone();
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
    answer(selection).fits(sheet, layout);
  }

  /** Whether a selection fits on a sheet, as far as it was found. */
  boolean fits(long selection, int sheet) {
    deadline.spend(STEPS_PER_QUESTION);
    Answer answer = answer(selection);
    if (!Answer.has(answer.fitting | answer.failing, sheet)) {
      Layout layout = place(selection, sheet);
      if (layout == null) {
        answer.failing |= 1L << sheet;
      } else {
        answer.fits(sheet, layout);
      }
    }
    return Answer.has(answer.fitting, sheet);
  }

  /** Whether a selection fits on a sheet, all places tried if need be. */
  Fit decided(long selection, int sheet) {
    if (fits(selection, sheet)) {
      return Fit.YES;
    }
    Answer answer = answer(selection);
    if (!Answer.has(answer.impossible | answer.open, sheet)) {
      decide(selection, sheet, answer);
    }
    if (Answer.has(answer.fitting, sheet)) {
      return Fit.YES;
    }
    return Answer.has(answer.impossible, sheet) ? Fit.NO : Fit.OPEN;
  }

  private void decide(long selection, int sheet, Answer answer) {
    int[] counts = counts(selection);
    if (bound.rulesOut(counts, sheet) || failsOnLarger(answer, sheet)) {
      answer.impossible |= 1L << sheet;
    } else if (!decidedByRelations(counts, sheet, answer)) {
      decideByCorners(counts, sheet, answer);
    }
  }

  private boolean failsOnLarger(Answer answer, int sheet) {
    for (int s = 0; s < model.sheets(); s++) {
      boolean larger =
          model.sheetWidth[s] >= model.sheetWidth[sheet]
              && model.sheetHeight[s] >= model.sheetHeight[sheet];
      if (larger && Answer.has(answer.impossible, s)) {
        return true;
      }
    }
    return false;
  }

  private boolean decidedByRelations(int[] counts, int sheet, Answer answer) {
    if (Arrays.stream(counts).sum() > RelativePlacement.MOST_PARTS) {
      return false;
    }
    boolean fits = relative.fits(counts, sheet);
    deadline.spend(relative.effort());
    if (fits) {
      answer.fits(sheet, relative.layout());
    } else if (!relative.isOpen()) {
      answer.impossible |= 1L << sheet;
    }
    return fits || !relative.isOpen();
  }

  private void decideByCorners(int[] counts, int sheet, Answer answer) {
    Layout layout = fromCornerToCorner(counts, sheet);
    if (layout != null) {
      answer.fits(sheet, layout);
    } else if (exact.isOpen()) {
      answer.open |= 1L << sheet;
    } else {
      answer.impossible |= 1L << sheet;
    }
  }

  private Layout fromCornerToCorner(int[] counts, int sheet) {
    boolean fits = exact.fits(counts, sheet);
    deadline.spend(exact.effort());
    return fits ? exact.layout() : null;
  }

  /** Hands over every filling found so far. */
  void forEach(FillingTaker taker) {
    answers.forEach(
        (selection, answer) -> {
          for (int s = 0; s < model.sheets(); s++) {
            if (Answer.has(answer.fitting, s)) {
              taker.take(s, selection);
            }
          }
        });
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
    Layout layout = quickly(counts, area, sheet);
    if (layout == null && exact != null && Long.bitCount(selection) <= FEW) {
      return fromCornerToCorner(counts, sheet);
    }
    return layout;
  }

  /** By fillings in several orders. */
  private Layout quickly(int[] counts, long area, int sheet) {
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
    return null;
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
