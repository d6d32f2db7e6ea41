package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import trammel.cutting.CuttingStatus;
import trammel.cutting.sheets.SheetStock;

/**
 * Nests long lists of plates at a cost that grows with the list and no faster.
 *
 * <p>Parts of one outline are one kind, whatever they are called. One sheet after another is filled
 * from the largest kinds left and some smaller ones, and what lies on it is cut as often as the
 * parts left allow; what is left at last is planned as a whole. Drops from the rack are filled
 * before a sheet is bought, and what is bought is the size that holds most for its price among
 * those that hold the largest part left.
 */
final class RepeatedLayouts {
  /** Lists of no more parts are better planned as a whole. */
  static final int LONG_LIST = 640;

  /** So many parts are left for the plan of the rest. */
  private static final int REST = 320;

  /** Sets of sheets looked at for the rest, in some seconds. */
  private static final int SETS = 3;

  private static final int NONE = -1;

  /** Sizes filled to see which holds most for its price. */
  private static final int SIZES = 3;

  private final NestingProblem problem;
  private final List<OutlineKind> kinds;
  private final LayoutFill filling;
  private final int[] left;
  private final boolean allFree;
  private final List<NestedSheet> sheets = new ArrayList<>();
  private int partsLeft;

  private RepeatedLayouts(NestingProblem problem) {
    this.problem = problem;
    this.kinds = OutlineKind.of(problem.parts());
    this.partsLeft = problem.partCount();
    double areaMm2 = 0;
    for (OutlineKind kind : kinds) {
      areaMm2 += kind.areaMm2 * kind.left();
    }
    kinds.sort(Comparator.comparingDouble((OutlineKind kind) -> kind.areaMm2).reversed());
    this.filling = new LayoutFill(problem, CellNest.cellMm(problem, areaMm2 / partsLeft));
    this.left = new int[problem.stock().size()];
    boolean free = true;
    for (int s = 0; s < left.length; s++) {
      left[s] = problem.stock().get(s).available().orElse(Integer.MAX_VALUE);
      free &= problem.stock().get(s).price().signum() == 0;
    }
    this.allFree = free;
  }

  /**
   * Nests a long list.
   *
   * @return the same plan on every machine
   * @throws trammel.cutting.StockShortageException when the sheets do not hold all parts
   */
  static NestingPlan plan(NestingProblem problem) {
    long start = System.nanoTime();
    RepeatedLayouts layouts = new RepeatedLayouts(problem);
    layouts.fillSheets();
    layouts.planRest();
    NestingStock stock = new NestingStock(problem);
    long price = stock.price(layouts.sheets);
    long bound = Math.min(price, stock.ladder(price).atLeast(0));
    return new NestingPlan(
        layouts.sheets,
        stock.money(price),
        stock.money(bound),
        bound >= price ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
        (System.nanoTime() - start) / 1e9);
  }

  /**
   * The effort for a list up to its rest, which is planned as a whole and no longer for long lists.
   *
   * @return how often a place was looked for
   */
  static long effort(NestingProblem problem) {
    RepeatedLayouts layouts = new RepeatedLayouts(problem);
    layouts.fillSheets();
    return layouts.filling.looks();
  }

  private void fillSheets() {
    fillDrops();
    fillBought();
  }

  private void fillDrops() {
    List<Integer> drops = new ArrayList<>();
    for (int s = 0; s < left.length; s++) {
      if (problem.stock().get(s).remnant()) {
        drops.add(s);
      }
    }
    drops.sort(Comparator.comparingDouble((Integer s) -> usableMm2(s)).reversed());
    for (int s : drops) {
      boolean filled = true;
      while (filled && left[s] > 0 && partsLeft > REST) {
        filled = cut(s, filling.fullest(problem.stock().get(s), kinds));
      }
    }
  }

  /** Until the rest is short, or one sheet would hold it and perhaps a smaller one too. */
  private void fillBought() {
    List<Integer> known = List.of();
    int chosen = NONE;
    while (partsLeft > REST) {
      List<Integer> sizes = sizes(kinds.get(0));
      if (sizes.isEmpty()) {
        return;
      }
      if (!sizes.equals(known)) {
        known = sizes;
        chosen = cheapest(sizes);
      }
      if (chosen == NONE) {
        return;
      }
      SheetLayout layout = filling.fullest(problem.stock().get(chosen), kinds);
      if (layout.parts() == partsLeft || !cut(chosen, layout)) {
        return;
      }
    }
  }

  /** The sizes that hold a part, the cheapest for their area first, some of them. */
  private List<Integer> sizes(OutlineKind largest) {
    List<Integer> sizes = new ArrayList<>();
    for (int s = 0; s < left.length; s++) {
      SheetStock stock = problem.stock().get(s);
      if (left[s] > 0 && !stock.remnant() && filling.fits(largest, stock)) {
        sizes.add(s);
      }
    }
    sizes.sort(Comparator.comparingDouble(s -> price(s) / usableMm2(s)));
    return sizes.subList(0, Math.min(SIZES, sizes.size()));
  }

  /** The size that costs least for the area of the parts that it holds; none if one holds all. */
  private int cheapest(List<Integer> sizes) {
    int cheapest = sizes.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sizes.size() && sizes.size() > 1; i++) {
      int s = sizes.get(i);
      SheetLayout layout = filling.fullest(problem.stock().get(s), kinds);
      if (layout.parts() == partsLeft) {
        return NONE;
      }
      double rate = price(s) / layout.areaMm2();
      if (rate < least) {
        least = rate;
        cheapest = s;
      }
    }
    return cheapest;
  }

  /** Where nothing has a price, every sheet counts one. */
  private double price(int s) {
    return allFree ? 1 : problem.stock().get(s).price().doubleValue();
  }

  private double usableMm2(int s) {
    SheetStock stock = problem.stock().get(s);
    double marginsMm = 2 * problem.marginMm();
    return Math.max(0, stock.widthMm() - marginsMm) * Math.max(0, stock.heightMm() - marginsMm);
  }

  /** Cuts a layout as often as there are sheets and parts for it. */
  private boolean cut(int s, SheetLayout layout) {
    if (layout.isEmpty()) {
      return false;
    }
    int times = Math.min(left[s], layout.timesLeft());
    for (int i = 0; i < times; i++) {
      sheets.add(layout.cut());
    }
    partsLeft -= times * layout.parts();
    left[s] -= problem.stock().get(s).available().isPresent() ? times : 0;
    kinds.removeIf(kind -> kind.left() == 0);
    return true;
  }

  private void planRest() {
    if (partsLeft == 0) {
      return;
    }
    List<OutlinePart> rest = new ArrayList<>();
    for (OutlineKind kind : kinds) {
      rest.addAll(kind.rest());
    }
    List<SheetStock> stock = new ArrayList<>();
    for (int s = 0; s < left.length; s++) {
      SheetStock sheet = problem.stock().get(s);
      if (left[s] > 0) {
        stock.add(sheet.available().isEmpty() ? sheet : some(sheet, left[s]));
      }
    }
    NestingPlan plan =
        NestingCutter.quick(SETS)
            .cut(new NestingProblem(stock, rest, problem.marginMm(), problem.kerfMm()));
    for (NestedSheet sheet : plan.sheets()) {
      sheets.add(new NestedSheet(ofProblem(sheet.stock()), sheet.parts()));
    }
  }

  private static SheetStock some(SheetStock sheet, int count) {
    return new SheetStock(
        sheet.id(),
        sheet.widthMm(),
        sheet.heightMm(),
        sheet.price(),
        OptionalInt.of(count),
        sheet.remnant());
  }

  private SheetStock ofProblem(SheetStock sheet) {
    for (SheetStock known : problem.stock()) {
      if (known.id().equals(sheet.id())
          && known.widthMm() == sheet.widthMm()
          && known.heightMm() == sheet.heightMm()) {
        return known;
      }
    }
    throw new IllegalStateException("the sheet " + sheet.id() + " is not in the problem.");
  }
}
