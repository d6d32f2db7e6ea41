package trammel.cutting.outlines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import trammel.cutting.sheets.SheetStock;

/**
 * Fills sheets with outlines one after another, each as far left and then as low as it finds room,
 * on a grid of cells. An outline counts for every cell that it touches, so that what is placed is
 * placed soundly. Source: raster methods in Bennell and Oliveira, The geometry of nesting problems,
 * European Journal of Operational Research 184 (2008), section 3.1, from memory.
 */
final class CellNest {
  /**
   * Cells along the side of a square part of mean size: more take longer and gain hardly anything.
   */
  private static final int CELLS = 24;

  /** Cells along the longest sheet at most. */
  private static final int MOST_CELLS = 800;

  /** Fuller than this, kerf counted with the parts, no sheet was ever filled one by one. */
  private static final double FULLEST = 0.9;

  private final NestingProblem problem;
  private final int[] partOf;
  private final double cellMm;
  private final OutlineWay[][] ways;
  private final double neededMm2;

  CellNest(NestingProblem problem) {
    this.problem = problem;
    List<Integer> parts = new ArrayList<>();
    ways = new OutlineWay[problem.parts().size()][];
    for (int p = 0; p < ways.length; p++) {
      OutlinePart part = problem.parts().get(p);
      for (int i = 0; i < part.quantity(); i++) {
        parts.add(p);
      }
      ways[p] = OutlineWay.all(part);
    }
    double areaMm2 = 0;
    double perimeterMm = 0;
    for (int p : parts) {
      areaMm2 += problem.parts().get(p).areaMm2();
      perimeterMm += ways[p][0].perimeterMm();
    }
    neededMm2 = areaMm2 + perimeterMm * problem.kerfMm() / 2;
    cellMm = cellMm(problem, areaMm2 / parts.size());
    partOf = new int[parts.size()];
    for (int i = 0; i < partOf.length; i++) {
      partOf[i] = parts.get(i);
    }
  }

  /** The side of a cell for parts of a mean area, mm. */
  static double cellMm(NestingProblem problem, double meanMm2) {
    return Math.max(Math.sqrt(meanMm2) / CELLS, problem.longestSheetMm() / MOST_CELLS);
  }

  /** How a part is ranked among the others; the largest is placed first. */
  enum Measure {
    AREA,
    BOX,
    LONGEST_SIDE,
    PERIMETER
  }

  /**
   * Tries to place every part.
   *
   * @param set the sheets, by their numbers in the problem
   * @param order parts by their numbers, each as often as it is needed
   * @return what lies on each sheet, if all parts found room
   */
  Optional<List<NestedSheet>> fill(int[] set, int[] order) {
    if (!mayHold(set)) {
      return Optional.empty();
    }
    CellSheet[] sheets = new CellSheet[set.length];
    List<List<PlacedOutline>> placed = new ArrayList<>(set.length);
    for (int s = 0; s < set.length; s++) {
      SheetStock stock = problem.stock().get(set[s]);
      double marginsMm = 2 * problem.marginMm();
      sheets[s] = new CellSheet(stock.widthMm() - marginsMm, stock.heightMm() - marginsMm, cellMm);
      placed.add(new ArrayList<>());
    }
    int[][][] from = new int[ways.length][][];
    for (int part : order) {
      if (from[part] == null) {
        from[part] = new int[ways[part].length][set.length];
      }
      if (!place(part, sheets, from[part], placed)) {
        return Optional.empty();
      }
    }
    List<NestedSheet> nested = new ArrayList<>(set.length);
    for (int s = 0; s < set.length; s++) {
      if (!placed.get(s).isEmpty()) {
        nested.add(new NestedSheet(problem.stock().get(set[s]), placed.get(s)));
      }
    }
    return Optional.of(nested);
  }

  /** Whether every part has a sheet that it fits on, and all of them area enough. */
  private boolean mayHold(int[] set) {
    double areaMm2 = 0;
    for (int s : set) {
      SheetStock stock = problem.stock().get(s);
      double marginsMm = 2 * problem.marginMm();
      areaMm2 += (stock.widthMm() - marginsMm) * (stock.heightMm() - marginsMm);
    }
    if (neededMm2 > FULLEST * areaMm2) {
      return false;
    }
    for (OutlineWay[] part : ways) {
      boolean fits = false;
      for (int s : set) {
        for (OutlineWay way : part) {
          fits |= way.fits(problem.stock().get(s), problem.marginMm());
        }
      }
      if (!fits) {
        return false;
      }
    }
    return true;
  }

  /** Places a part on the first sheet with room, the way round that reaches least far. */
  private boolean place(
      int part, CellSheet[] sheets, int[][] from, List<List<PlacedOutline>> placed) {
    for (int s = 0; s < sheets.length; s++) {
      int bestWay = -1;
      int bestAt = 0;
      double bestReach = Double.POSITIVE_INFINITY;
      for (int w = 0; w < from.length; w++) {
        OutlineWay way = ways[part][w];
        int before =
            Double.isInfinite(bestReach)
                ? Integer.MAX_VALUE
                : (int) Math.ceil((bestReach - way.sizeMm[0]) / cellMm);
        int at = sheets[s].place(way.solid(cellMm), way.sizeMm, from[w][s], before);
        if (at < 0) {
          continue;
        }
        from[w][s] = at >> 16;
        double reach = (at >> 16) * cellMm + way.sizeMm[0];
        if (reach < bestReach) {
          bestReach = reach;
          bestWay = w;
          bestAt = at;
        }
      }
      if (bestWay >= 0) {
        put(part, ways[part][bestWay], bestAt, sheets[s], placed.get(s));
        return true;
      }
    }
    return false;
  }

  private void put(int part, OutlineWay way, int at, CellSheet sheet, List<PlacedOutline> placed) {
    int column = at >> 16;
    int cell = at & 0xFFFF;
    sheet.take(way.wide(cellMm, problem.kerfMm()), column, cell);
    placed.add(
        new PlacedOutline(
            problem.parts().get(part).id(),
            way.turnDeg,
            problem.marginMm() + column * cellMm - way.lowMm[0],
            problem.marginMm() + cell * cellMm - way.lowMm[1]));
  }

  /** Every part as often as it is needed, the largest by a measure first. */
  int[] largestFirst(Measure measure) {
    Integer[] sorted = new Integer[partOf.length];
    for (int i = 0; i < sorted.length; i++) {
      sorted[i] = partOf[i];
    }
    double[] size = new double[ways.length];
    for (int p = 0; p < size.length; p++) {
      size[p] = ways[p][0].size(measure, problem.parts().get(p).areaMm2());
    }
    Arrays.sort(
        sorted,
        new Comparator<Integer>() {
          @Override
          public int compare(Integer a, Integer b) {
            return Double.compare(size[b], size[a]);
          }
        });
    int[] order = new int[sorted.length];
    for (int i = 0; i < order.length; i++) {
      order[i] = sorted[i];
    }
    return order;
  }
}
