package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.cutting.sheets.SheetStock;

/**
 * Fills one sheet as full as it can from a long list: the largest kinds of parts first, as many as
 * the sheet may hold, and then smaller ones from all through the list in what is left between them.
 */
final class LayoutFill {
  /** Smaller kinds offered for one sheet, spread evenly over the list by size. */
  private static final int FILLERS = 32;

  /** Kinds that find no room before a sheet counts as full. */
  private static final int MOST_MISSES = 40;

  /** With more kinds than this few sheets are alike, and each gets less effort. */
  private static final int FEW_KINDS = 64;

  private static final List<CellNest.Measure> SOME_MEASURES =
      List.of(CellNest.Measure.AREA, CellNest.Measure.LONGEST_SIDE);

  private final NestingProblem problem;
  private final double cellMm;
  private long looks;

  /**
   * @param cellMm side of the cells on which every kind is placed, mm
   */
  LayoutFill(NestingProblem problem, double cellMm) {
    this.problem = problem;
    this.cellMm = cellMm;
  }

  /**
   * The fullest of a few fillings.
   *
   * @param kinds what may be placed, of each those left, the largest first
   */
  SheetLayout fullest(SheetStock stock, List<OutlineKind> kinds) {
    List<OutlineKind> offered = offered(stock, kinds);
    SheetLayout best = new SheetLayout(stock);
    for (CellNest.Measure measure : measures(kinds)) {
      offered.sort(
          Comparator.comparingDouble((OutlineKind k) -> k.ways[0].size(measure, k.areaMm2))
              .reversed());
      SheetLayout layout = fill(stock, offered);
      if (layout.areaMm2() > best.areaMm2()) {
        best = layout;
      }
    }
    return best;
  }

  private static List<CellNest.Measure> measures(List<OutlineKind> kinds) {
    return kinds.size() > FEW_KINDS ? SOME_MEASURES : List.of(CellNest.Measure.values());
  }

  /** How often a place was looked for. */
  long looks() {
    return looks;
  }

  /** The largest kinds that fit the sheet, up to its area, and some of the others. */
  private List<OutlineKind> offered(SheetStock stock, List<OutlineKind> kinds) {
    double roomMm2 = stock.widthMm() * stock.heightMm();
    List<OutlineKind> offered = new ArrayList<>();
    List<OutlineKind> smaller = new ArrayList<>();
    for (OutlineKind kind : kinds) {
      if (!fits(kind, stock)) {
        continue;
      }
      if (roomMm2 > 0) {
        offered.add(kind);
        roomMm2 -= kind.areaMm2 * kind.left();
      } else {
        smaller.add(kind);
      }
    }
    int fillers = Math.min(FILLERS, smaller.size());
    for (int i = 0; i < fillers; i++) {
      offered.add(smaller.get((int) ((long) (i + 1) * smaller.size() / fillers) - 1));
    }
    return offered;
  }

  boolean fits(OutlineKind kind, SheetStock stock) {
    for (OutlineWay way : kind.ways) {
      if (way.fits(stock, problem.marginMm())) {
        return true;
      }
    }
    return false;
  }

  private SheetLayout fill(SheetStock stock, List<OutlineKind> offered) {
    double marginsMm = 2 * problem.marginMm();
    CellSheet sheet =
        new CellSheet(stock.widthMm() - marginsMm, stock.heightMm() - marginsMm, cellMm);
    SheetLayout layout = new SheetLayout(stock);
    int misses = 0;
    for (int k = 0; k < offered.size() && misses < MOST_MISSES; k++) {
      OutlineKind kind = offered.get(k);
      int[] from = new int[kind.ways.length];
      int placed = 0;
      while (placed < kind.left() && place(kind, from, sheet, layout)) {
        placed++;
      }
      misses += placed < kind.left() ? 1 : 0;
    }
    return layout;
  }

  /** Places one of a kind the way round that reaches least far. */
  private boolean place(OutlineKind kind, int[] from, CellSheet sheet, SheetLayout layout) {
    OutlineWay best = null;
    int bestAt = 0;
    double bestReach = Double.POSITIVE_INFINITY;
    for (int w = 0; w < from.length; w++) {
      OutlineWay way = kind.ways[w];
      int before =
          best == null ? Integer.MAX_VALUE : (int) Math.ceil((bestReach - way.sizeMm[0]) / cellMm);
      looks++;
      int at = sheet.place(way.solid(cellMm), way.sizeMm, from[w], before);
      if (at < 0) {
        from[w] = Math.max(from[w], before);
        continue;
      }
      from[w] = at >> 16;
      double reach = (at >> 16) * cellMm + way.sizeMm[0];
      if (reach < bestReach) {
        bestReach = reach;
        best = way;
        bestAt = at;
      }
    }
    if (best == null) {
      return false;
    }
    int column = bestAt >> 16;
    int cell = bestAt & 0xFFFF;
    sheet.take(best.wide(cellMm, problem.kerfMm()), column, cell);
    layout.put(
        kind,
        best.turnDeg,
        problem.marginMm() + column * cellMm - best.lowMm[0],
        problem.marginMm() + cell * cellMm - best.lowMm[1]);
    return true;
  }
}
