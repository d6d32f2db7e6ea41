package trammel.cutting.bars;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import trammel.cutting.internal.PriceSteps;

/**
 * The cutting problem in whole numbers, so that nothing depends on rounding.
 *
 * <p>Sizes are pieces with their kerf, capacities the room for them, both in one step that divides
 * every size; prices are whole multiples of one price step. Kinds are the distinct sizes, largest
 * first.
 */
final class BarModel {
  /** Lengths are told apart down to this; finer differences are noise of the arithmetic. */
  static final double RESOLUTION_MM = 1e-6;

  static final int UNLIMITED = Integer.MAX_VALUE;

  private static final double STEPS_PER_MM = 1e6;

  /** Part of a step by which a length may fall short of a whole step and still count as it. */
  private static final double STEP_NOISE = 0.01;

  final long[] size;
  final int[] demand;
  final long[] capacity;
  final long[] price;
  final int[] available;

  private final PriceSteps priceSteps;

  private final List<BarStock> stocks;
  private final List<List<BarPiece>> piecesOfKind;

  private BarModel(
      long[] size,
      int[] demand,
      long[] capacity,
      long[] price,
      int[] available,
      PriceSteps priceSteps,
      List<BarStock> stocks,
      List<List<BarPiece>> piecesOfKind) {
    this.size = size;
    this.demand = demand;
    this.capacity = capacity;
    this.price = price;
    this.available = available;
    this.priceSteps = priceSteps;
    this.stocks = stocks;
    this.piecesOfKind = piecesOfKind;
  }

  static BarModel of(BarCuttingProblem problem) {
    List<BarPiece> sorted = new ArrayList<>(problem.pieces());
    sorted.sort(new LongestFirst());
    long kerf = steps(problem.kerfMm());
    List<List<BarPiece>> piecesOfKind = new ArrayList<>();
    long[] size = new long[sorted.size()];
    int[] demand = new int[sorted.size()];
    int kinds = 0;
    for (BarPiece piece : sorted) {
      long withKerf = steps(piece.lengthMm()) + kerf;
      if (kinds == 0 || size[kinds - 1] != withKerf) {
        size[kinds++] = withKerf;
        piecesOfKind.add(new ArrayList<>());
      }
      demand[kinds - 1] = Math.addExact(demand[kinds - 1], piece.quantity());
      piecesOfKind.get(kinds - 1).add(piece);
    }
    size = Arrays.copyOf(size, kinds);
    demand = Arrays.copyOf(demand, kinds);
    return withStock(problem, size, demand, piecesOfKind);
  }

  /** A model without lengths, for fillings that are known to be possible. */
  static BarModel ofFillings(int[] demand, long[] price, int[] available) {
    long[] size = new long[demand.length];
    Arrays.fill(size, 1);
    long[] capacity = new long[price.length];
    Arrays.fill(capacity, Long.MAX_VALUE / Short.MAX_VALUE);
    return new BarModel(
        size,
        demand,
        capacity,
        price,
        available,
        new PriceSteps(List.of(BigDecimal.ONE)),
        List.of(),
        List.of());
  }

  private static BarModel withStock(
      BarCuttingProblem problem, long[] size, int[] demand, List<List<BarPiece>> piecesOfKind) {
    long step = 0;
    for (long s : size) {
      step = gcd(step, s);
    }
    long smallest = size.length == 0 ? 0 : size[size.length - 1];
    List<BarStock> stocks = new ArrayList<>();
    List<Long> capacities = new ArrayList<>();
    for (BarStock stock : problem.stock()) {
      long capacity = roomSteps(problem, stock);
      if (size.length > 0 && capacity >= smallest && stock.available().orElse(1) > 0) {
        stocks.add(stock);
        capacities.add(capacity / step);
      }
    }
    for (int i = 0; i < size.length; i++) {
      size[i] /= step;
    }
    return priced(size, demand, stocks, capacities, piecesOfKind);
  }

  private static BarModel priced(
      long[] size,
      int[] demand,
      List<BarStock> stocks,
      List<Long> capacities,
      List<List<BarPiece>> piecesOfKind) {
    List<BigDecimal> prices = new ArrayList<>();
    for (BarStock stock : stocks) {
      prices.add(stock.price());
    }
    PriceSteps priceSteps = new PriceSteps(prices);
    long[] price = new long[stocks.size()];
    for (int s = 0; s < price.length; s++) {
      price[s] = priceSteps.of(prices.get(s));
    }
    if (priceSteps.allFree()) {
      countBars(stocks, price);
    }
    return undominated(size, demand, stocks, capacities, price, priceSteps, piecesOfKind);
  }

  /** Without prices every bar counts one; bars from the rack count only when all are from it. */
  private static void countBars(List<BarStock> stocks, long[] price) {
    boolean allRemnants = true;
    for (BarStock stock : stocks) {
      allRemnants &= stock.remnant();
    }
    for (int s = 0; s < price.length; s++) {
      price[s] = allRemnants || !stocks.get(s).remnant() ? 1 : 0;
    }
  }

  /** Leaves out stock that another one, open in number, replaces at no more money. */
  private static BarModel undominated(
      long[] size,
      int[] demand,
      List<BarStock> stocks,
      List<Long> capacities,
      long[] price,
      PriceSteps priceSteps,
      List<List<BarPiece>> piecesOfKind) {
    int pieces = 0;
    for (int d : demand) {
      pieces = Math.addExact(pieces, d);
    }
    List<Integer> open = new ArrayList<>();
    for (int t = 0; t < stocks.size(); t++) {
      if (stocks.get(t).available().isEmpty()) {
        open.add(t);
      }
    }
    List<Integer> kept = new ArrayList<>();
    for (int s = 0; s < stocks.size(); s++) {
      boolean dominated = false;
      for (int i = 0; i < open.size() && !dominated; i++) {
        int t = open.get(i);
        boolean replaces = capacities.get(t) >= capacities.get(s) && price[t] <= price[s];
        boolean strictly = capacities.get(t) > capacities.get(s) || price[t] < price[s] || t < s;
        boolean sameKind = stocks.get(s).remnant() == stocks.get(t).remnant();
        dominated = t != s && replaces && strictly && sameKind;
      }
      if (!dominated) {
        kept.add(s);
      }
    }
    int count = kept.size();
    long[] keptCapacity = new long[count];
    long[] keptPrice = new long[count];
    int[] available = new int[count];
    List<BarStock> keptStocks = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int s = kept.get(i);
      keptCapacity[i] = capacities.get(s);
      keptPrice[i] = price[s];
      int limit = stocks.get(s).available().orElse(UNLIMITED);
      available[i] = limit >= pieces ? UNLIMITED : limit;
      keptStocks.add(stocks.get(s));
    }
    return new BarModel(
        size, demand, keptCapacity, keptPrice, available, priceSteps, keptStocks, piecesOfKind);
  }

  /** The same stock for fewer pieces; kinds keep their order, those not asked for fall out. */
  BarModel forDemand(int[] lessDemand) {
    return forDemand(lessDemand, available);
  }

  /** The same with other numbers of stock on hand. */
  BarModel forDemand(int[] lessDemand, int[] otherAvailable) {
    int kept = 0;
    for (int d : lessDemand) {
      kept += d > 0 ? 1 : 0;
    }
    long[] keptSize = new long[kept];
    int[] keptDemand = new int[kept];
    List<List<BarPiece>> keptPieces = new ArrayList<>();
    for (int k = 0; k < size.length; k++) {
      if (lessDemand[k] > 0) {
        keptSize[keptPieces.size()] = size[k];
        keptDemand[keptPieces.size()] = lessDemand[k];
        keptPieces.add(piecesOfKind.isEmpty() ? List.of() : piecesOfKind.get(k));
      }
    }
    return new BarModel(
        keptSize, keptDemand, capacity, price, otherAvailable, priceSteps, stocks, keptPieces);
  }

  /**
   * The same stock for pieces that have no names.
   *
   * @param otherSize of each kind, the largest first, no two alike
   */
  BarModel withSizes(long[] otherSize, int[] otherDemand) {
    return new BarModel(
        otherSize, otherDemand, capacity, price, available, priceSteps, stocks, List.of());
  }

  /** The list, written in kinds of a larger model, in the kinds of this one. */
  CutList fromKindsOf(BarModel larger, CutList list) {
    int[] kindOf = new int[larger.size.length];
    for (int k = 0, at = 0; k < kindOf.length && at < size.length; k++) {
      kindOf[k] = at;
      at += larger.size[k] == size[at] ? 1 : 0;
    }
    return renamed(list, kindOf);
  }

  /** The list in the kinds of another model that has all sizes of this one. */
  CutList inKindsOf(BarModel other, CutList list) {
    int[] kindOf = new int[size.length];
    int at = 0;
    for (int k = 0; k < size.length; k++) {
      while (other.size[at] != size[k]) {
        at++;
      }
      kindOf[k] = at;
    }
    return renamed(list, kindOf);
  }

  private CutList renamed(CutList list, int[] kindOf) {
    CutList converted = new CutList();
    for (int i = 0; i < list.patterns.size(); i++) {
      Pattern pattern = list.patterns.get(i);
      int[] kinds = new int[pattern.kinds.length];
      for (int j = 0; j < kinds.length; j++) {
        kinds[j] = kindOf[pattern.kinds[j]];
      }
      converted.add(this, new Pattern(pattern.stock, kinds, pattern.counts), list.times.get(i));
    }
    return converted;
  }

  int kinds() {
    return size.length;
  }

  int stocks() {
    return capacity.length;
  }

  BarStock stock(int index) {
    return stocks.get(index);
  }

  List<BarPiece> piecesOfKind(int kind) {
    return piecesOfKind.get(kind);
  }

  BigDecimal money(long steps) {
    return priceSteps.money(steps);
  }

  long totalSize() {
    return totalSize(demand);
  }

  long totalSize(int[] counts) {
    long total = 0;
    for (int i = 0; i < size.length; i++) {
      total = Math.addExact(total, Math.multiplyExact(size[i], (long) counts[i]));
    }
    return total;
  }

  /** A class of its own: the first lambda of a run costs more time than a small job. */
  private static final class LongestFirst implements Comparator<BarPiece> {
    @Override
    public int compare(BarPiece a, BarPiece b) {
      return Double.compare(b.lengthMm(), a.lengthMm());
    }
  }

  private static long roomSteps(BarCuttingProblem problem, BarStock stock) {
    long room = steps(stock.lengthMm()) - steps(problem.trimMm()) - steps(problem.clampLossMm());
    return problem.clampLossMm() > 0 ? room : room + steps(problem.kerfMm());
  }

  private static long steps(double lengthMm) {
    return (long) Math.floor(lengthMm * STEPS_PER_MM + STEP_NOISE);
  }

  private static long gcd(long a, long b) {
    long x = a;
    long y = b;
    while (y != 0) {
      long rest = x % y;
      x = y;
      y = rest;
    }
    return x;
  }
}
