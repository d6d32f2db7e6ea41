package trammel.cutting.sheets;

import java.util.Random;

/** Pushes the parts of one sheet together at its foot, so that the rest is one rectangle. */
final class SheetTidier {
  private static final int TRIALS = 250;

  /** Trials in a row without a lower top after which none is looked for. */
  private static final int PATIENCE = 100;

  private static final long SEED = 20_260_103L;

  private final SheetModel model;
  private final SheetFill fill;

  SheetTidier(SheetModel model, SheetFill fill) {
    this.model = model;
    this.fill = fill;
  }

  Layout tidied(int sheet, Layout layout) {
    int[] counts = new int[model.types()];
    for (int i = 0; i < layout.parts; i++) {
      counts[layout.type[i]]++;
    }
    Random random = new Random(SEED);
    Arrangement current = Arrangement.sorted(model, 1);
    Arrangement trial = current.copy();
    Layout best = layout;
    int bestTop = layout.top(model);
    int currentTop = Integer.MAX_VALUE;
    Layout result = new Layout();
    int since = 0;
    for (int i = 0; i < TRIALS && since < PATIENCE; i++) {
      since++;
      int[] remaining = counts.clone();
      fill.fill(model.sheetWidth[sheet], model.sheetHeight[sheet], trial, remaining, result);
      if (result.parts == layout.parts) {
        int top = result.top(model);
        if (top <= currentTop) {
          currentTop = top;
          current.takeFrom(trial);
        }
        if (top < bestTop) {
          bestTop = top;
          best = result.copy();
          since = 0;
        }
      }
      trial.takeFrom(current);
      trial.change(random, true);
    }
    return best;
  }
}
