package trammel.cutting.outlines;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import trammel.cutting.internal.PriceLadder;
import trammel.cutting.internal.PriceSteps;
import trammel.cutting.internal.StockSets;
import trammel.cutting.sheets.SheetStock;

/** The sheets of a nesting problem by their place in its list, priced in whole steps. */
final class NestingStock {
  private final NestingProblem problem;
  private final List<SheetStock> stock;
  private final PriceSteps steps;
  private final long[] price;
  private final int[] available;
  private final double neededMm2;

  NestingStock(NestingProblem problem) {
    this.problem = problem;
    this.stock = problem.stock();
    List<BigDecimal> prices = new ArrayList<>();
    for (SheetStock sheet : stock) {
      prices.add(sheet.price());
    }
    this.steps = new PriceSteps(prices);
    this.price = new long[stock.size()];
    this.available = new int[stock.size()];
    for (int s = 0; s < price.length; s++) {
      SheetStock sheet = stock.get(s);
      // Without prices every sheet counts one, and what lies on the rack still nothing.
      price[s] = steps.allFree() ? (sheet.remnant() ? 0 : 1) : steps.of(sheet.price());
      available[s] = sheet.available().orElse(Integer.MAX_VALUE);
    }
    double areaMm2 = 0;
    for (OutlinePart part : problem.parts()) {
      areaMm2 += part.areaMm2() * part.quantity();
    }
    this.neededMm2 = areaMm2;
  }

  /** What some sheets cost, in steps. */
  long price(List<NestedSheet> sheets) {
    long total = 0;
    for (NestedSheet sheet : sheets) {
      total += price[number(sheet.stock())];
    }
    return total;
  }

  BigDecimal money(long priceSteps) {
    return steps.money(priceSteps);
  }

  /** By identity first: comparing records costs a short run more than the rest of this. */
  private int number(SheetStock wanted) {
    for (int s = 0; s < stock.size(); s++) {
      if (stock.get(s) == wanted) {
        return s;
      }
    }
    return stock.indexOf(wanted);
  }

  /**
   * The totals that are enough by area, in square tenths of a millimetre; parts are rounded down,
   * sheets up.
   *
   * @param highest the price of a known plan, in steps
   */
  PriceLadder ladder(long highest) {
    long[] room = new long[price.length];
    for (int s = 0; s < room.length; s++) {
      room[s] = (long) Math.ceil(usableMm2(s) * 100);
    }
    long needed = (long) Math.floor(neededMm2 * 100);
    return new PriceLadder(room, price, available, needed, highest);
  }

  private double usableMm2(int s) {
    double widthMm = Math.max(0, stock.get(s).widthMm() - 2 * problem.marginMm());
    double heightMm = Math.max(0, stock.get(s).heightMm() - 2 * problem.marginMm());
    return widthMm * heightMm;
  }

  /**
   * Sets of sheets that have the area and cost less than a plan, the dearest looked for first.
   *
   * @param below price of the plan, in steps
   * @param atLeast no set costs less
   * @param most how many sets at most
   * @return the largest area first; each set as places in the list of sheets
   */
  List<int[]> cheaperSets(PriceLadder ladder, long below, long atLeast, int most) {
    List<int[]> sets = new ArrayList<>();
    StockSets atTotal = new StockSets(price, available);
    StockSets.Taker roomy = new Roomy(sets, most);
    long total = ladder.below(below);
    while (total >= atLeast && sets.size() < most) {
      atTotal.at(total, roomy);
      total = ladder.below(total);
    }
    sets.sort(Comparator.comparingDouble(this::areaMm2).reversed());
    return sets;
  }

  /** Keeps the sets that have the area; drops that cost nothing are in all of them. */
  private final class Roomy implements StockSets.Taker {
    private final List<int[]> sets;
    private final int most;

    Roomy(List<int[]> sets, int most) {
      this.sets = sets;
      this.most = most;
    }

    @Override
    public boolean take(int[] chosen) {
      int[] set = withFree(chosen);
      if (areaMm2(set) >= neededMm2) {
        sets.add(set);
      }
      return sets.size() < most;
    }
  }

  private double areaMm2(int[] set) {
    double area = 0;
    for (int s : set) {
      area += usableMm2(s);
    }
    return area;
  }

  private int[] withFree(int[] chosen) {
    List<Integer> all = new ArrayList<>();
    for (int s = 0; s < price.length; s++) {
      for (int i = 0; price[s] == 0 && i < Math.min(available[s], problem.partCount()); i++) {
        all.add(s);
      }
    }
    for (int c : chosen) {
      all.add(c);
    }
    int[] set = new int[all.size()];
    for (int i = 0; i < set.length; i++) {
      set[i] = all.get(i);
    }
    return set;
  }
}
