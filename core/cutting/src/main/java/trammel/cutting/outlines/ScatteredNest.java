package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import trammel.cutting.internal.Deadline;

/** Scatters outlines over a set of sheets and pulls apart what overlaps, again and again. */
final class ScatteredNest {
  private static final long SEED = 20_260_106L;
  private static final int PATIENCE = 100;

  /** Tries to put one item somewhere before its set of sheets is given up. */
  private static final int MOST_TRIES = 200;

  private final NestingProblem problem;
  private final OutlineShape[][] items;
  private final NoFitTable table;
  private final SplittableRandom random = new SplittableRandom(SEED);

  ScatteredNest(NestingProblem problem) {
    this.problem = problem;
    this.items = Nest.items(problem.parts());
    this.table = new NoFitTable(items, problem.kerfMm(), problem.longestSheetMm());
  }

  /**
   * @param set places of the sheets in the problem's list
   * @param end when to stop trying
   * @return those of the sheets that are used, or nothing when no try came free
   */
  Optional<List<NestedSheet>> fill(int[] set, Deadline end) {
    double[] widths = new double[set.length];
    double[] heights = new double[set.length];
    for (int i = 0; i < set.length; i++) {
      widths[i] = problem.stock().get(set[i]).widthMm() - 2 * problem.marginMm();
      heights[i] = problem.stock().get(set[i]).heightMm() - 2 * problem.marginMm();
    }
    Nest nest = new Nest(items, widths, heights);
    OutlineSeparation separation = new OutlineSeparation(nest, table, random);
    while (!end.isPast() && scatter(nest)) {
      separation.forget();
      if (separation.run(PATIENCE, end, null, 0)) {
        return Optional.of(sheets(set, nest));
      }
    }
    return Optional.empty();
  }

  /** Puts every item anywhere it can lie; false when some item fits no sheet of the set. */
  private boolean scatter(Nest nest) {
    for (int i = 0; i < items.length; i++) {
      boolean put = false;
      for (int attempt = 0; attempt < MOST_TRIES && !put; attempt++) {
        int way = random.nextInt(items[i].length);
        int sheet = random.nextInt(nest.sheetWidth.length);
        OutlineShape shape = items[i][way];
        if (nest.fits(shape, sheet)) {
          double x = random.nextDouble() * (nest.sheetWidth[sheet] - shape.width());
          double y = random.nextDouble() * (nest.sheetHeight[sheet] - shape.height());
          nest.put(i, way, sheet, x - shape.minX, y - shape.minY);
          put = true;
        }
      }
      if (!put) {
        return false;
      }
    }
    return true;
  }

  private List<NestedSheet> sheets(int[] set, Nest nest) {
    List<NestedSheet> sheets = new ArrayList<>();
    for (int i = 0; i < set.length; i++) {
      List<PlacedOutline> placed =
          NestingStripCutter.placed(problem.parts(), nest, i, problem.marginMm());
      if (!placed.isEmpty()) {
        sheets.add(new NestedSheet(problem.stock().get(set[i]), placed));
      }
    }
    return sheets;
  }
}
