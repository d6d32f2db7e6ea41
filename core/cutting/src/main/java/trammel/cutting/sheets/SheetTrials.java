package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * Tries to place all parts on one given set of sheets by changing the arrangement a little at a
 * time, and keeping what leaves no more area out.
 */
final class SheetTrials {
  /** Trials without gain after which the search starts from somewhere else. */
  private static final int PATIENCE = 400;

  private final SheetModel model;
  private final SheetFill[] fills;
  private final Random random;
  private final int[] sheets;
  private final Arrangement current;
  private final Arrangement trial;
  private final int[] sheetOrder;
  private final int[] trialSheetOrder;
  private final int[] remaining;
  private final Layout[] layouts;
  private final long price;
  private SheetFill fill;
  private long leftOut = Long.MAX_VALUE;
  private int starts;
  private int withoutGain;

  SheetTrials(SheetModel model, SheetFill[] fills, Random random, int[] sheets) {
    this.model = model;
    this.fills = fills;
    this.fill = fills[0];
    this.random = random;
    this.sheets = sheets;
    this.current = Arrangement.sorted(model, 0);
    this.trial = current.copy();
    this.sheetOrder = new int[sheets.length];
    for (int i = 0; i < sheets.length; i++) {
      sheetOrder[i] = i;
    }
    this.trialSheetOrder = sheetOrder.clone();
    this.remaining = new int[model.types()];
    this.layouts = new Layout[sheets.length];
    long total = 0;
    for (int i = 0; i < sheets.length; i++) {
      layouts[i] = new Layout();
      total += model.price[sheets[i]];
    }
    this.price = total;
  }

  long price() {
    return price;
  }

  /**
   * One trial.
   *
   * @return true when it placed all parts; see {@link #result()}
   */
  boolean step() {
    if (leftOut == Long.MAX_VALUE || withoutGain > PATIENCE) {
      restart();
    } else {
      trial.takeFrom(current);
      System.arraycopy(sheetOrder, 0, trialSheetOrder, 0, sheetOrder.length);
      int changes = 1 + random.nextInt(3);
      for (int i = 0; i < changes; i++) {
        if (sheets.length > 1 && random.nextInt(8) == 0) {
          swapSheets();
        } else {
          trial.change(random, true);
        }
      }
    }
    long left = place();
    withoutGain++;
    if (left <= leftOut) {
      withoutGain = left < leftOut ? 0 : withoutGain;
      leftOut = left;
      current.takeFrom(trial);
      System.arraycopy(trialSheetOrder, 0, sheetOrder, 0, sheetOrder.length);
    }
    return left == 0;
  }

  private void restart() {
    withoutGain = 0;
    leftOut = Long.MAX_VALUE;
    if (starts < Arrangement.MEASURES) {
      trial.takeFrom(Arrangement.sorted(model, starts));
    } else {
      trial.takeFrom(Arrangement.sorted(model, random.nextInt(Arrangement.MEASURES)));
      int changes = random.nextInt(2 * model.types() + 1);
      for (int i = 0; i < changes; i++) {
        trial.change(random, true);
      }
    }
    fill = fills[starts % fills.length];
    starts++;
  }

  private void swapSheets() {
    int a = random.nextInt(sheets.length);
    int b = random.nextInt(sheets.length);
    int held = trialSheetOrder[a];
    trialSheetOrder[a] = trialSheetOrder[b];
    trialSheetOrder[b] = held;
  }

  private long place() {
    System.arraycopy(model.count, 0, remaining, 0, remaining.length);
    long left = model.area(remaining);
    for (int i : trialSheetOrder) {
      int sheet = sheets[i];
      left -=
          fill.fill(
              model.sheetWidth[sheet], model.sheetHeight[sheet], trial, remaining, layouts[i]);
    }
    return left;
  }

  /** The sheets as the last trial filled them; empty ones are left out. */
  SheetSet result() {
    SheetSet result = new SheetSet();
    for (int i = 0; i < sheets.length; i++) {
      if (layouts[i].parts > 0) {
        result.add(model, sheets[i], layouts[i].copy());
      }
    }
    return result;
  }

  /**
   * All sets of sheets that cost exactly a given total and have at least the area needed. Sheets
   * that cost nothing are in every set.
   *
   * @param most sets to list at most
   */
  static List<int[]> setsAt(SheetModel model, long total, long neededArea, int most) {
    List<Integer> free = new ArrayList<>();
    long area = 0;
    for (int s = 0; s < model.sheets(); s++) {
      if (model.price[s] == 0) {
        int count = Math.min(model.available[s], pieces(model));
        for (int i = 0; i < count; i++) {
          free.add(s);
          area += model.sheetArea(s);
        }
      }
    }
    List<int[]> sets = new ArrayList<>();
    int[] chosen = new int[0];
    addSets(model, 0, total, neededArea - area, free, chosen, sets, most);
    return sets;
  }

  private static int pieces(SheetModel model) {
    int pieces = 0;
    for (int c : model.count) {
      pieces += c;
    }
    return pieces;
  }

  private static void addSets(
      SheetModel model,
      int from,
      long money,
      long area,
      List<Integer> free,
      int[] chosen,
      List<int[]> sets,
      int most) {
    if (sets.size() >= most) {
      return;
    }
    if (money == 0) {
      if (area <= 0) {
        int[] set = Arrays.copyOf(chosen, chosen.length + free.size());
        for (int i = 0; i < free.size(); i++) {
          set[chosen.length + i] = free.get(i);
        }
        sets.add(set);
      }
      return;
    }
    for (int s = from; s < model.sheets(); s++) {
      int already = 0;
      for (int c : chosen) {
        already += c == s ? 1 : 0;
      }
      if (model.price[s] > 0 && model.price[s] <= money && already < model.available[s]) {
        int[] more = Arrays.copyOf(chosen, chosen.length + 1);
        more[chosen.length] = s;
        addSets(
            model, s, money - model.price[s], area - model.sheetArea(s), free, more, sets, most);
      }
    }
  }
}
