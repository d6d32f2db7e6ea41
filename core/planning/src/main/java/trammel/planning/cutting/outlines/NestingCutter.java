package trammel.planning.cutting.outlines;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import trammel.planning.cutting.CuttingStatus;
import trammel.planning.cutting.Deadline;
import trammel.planning.cutting.PriceLadder;
import trammel.planning.cutting.StockShortageException;
import trammel.planning.cutting.sheets.CutSheet;
import trammel.planning.cutting.sheets.CuttingMethod;
import trammel.planning.cutting.sheets.PlacedPart;
import trammel.planning.cutting.sheets.SheetCutter;
import trammel.planning.cutting.sheets.SheetCuttingPlan;
import trammel.planning.cutting.sheets.SheetCuttingProblem;
import trammel.planning.cutting.sheets.SheetPart;
import trammel.planning.cutting.sheets.SheetStock;

/**
 * Nests outlines on the cheapest sheets it can.
 *
 * <p>It starts from the plan for the rectangles around the outlines, so that it is never dearer,
 * and then tries every cheaper set of sheets that has enough area.
 */
public final class NestingCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(5);

  private static final double RECTANGLE_PART = 0.15;
  private static final double LEAST_MILLIS = 50;

  /** Effort for the rectangles of a quick plan. */
  private static final long QUICK_LOOKS = 30;

  private final Supplier<Deadline> deadline;
  private final SheetCutter rectangles;
  private final boolean thorough;

  public NestingCutter() {
    this(USUAL_LIMIT);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public NestingCutter(Duration limit) {
    this(
        Deadline.eachIn(limit),
        new SheetCutter(
            Duration.ofMillis((long) Math.max(LEAST_MILLIS, RECTANGLE_PART * limit.toMillis()))),
        true);
  }

  private NestingCutter(Supplier<Deadline> deadline, SheetCutter rectangles, boolean thorough) {
    this.deadline = deadline;
    this.rectangles = rectangles;
    this.thorough = thorough;
  }

  /**
   * A cutter whose answer does not depend on how fast the machine is.
   *
   * @param looks how often the search asks whether to stop, which it does for each part it moves
   */
  public static NestingCutter withEffort(long looks) {
    return new NestingCutter(Deadline.eachAfterLooks(looks), SheetCutter.withEffort(looks), true);
  }

  /**
   * A cutter that places one part after another and searches no further: quick, and its answer does
   * not depend on how fast the machine is.
   *
   * @param sets how many sets of sheets it looks at
   */
  public static NestingCutter quick(int sets) {
    return new NestingCutter(
        Deadline.eachAfterLooks(sets), SheetCutter.withEffort(QUICK_LOOKS), false);
  }

  /**
   * Nests the parts of the problem.
   *
   * @throws StockShortageException when the sheets do not hold all parts
   */
  public NestingPlan cut(NestingProblem problem) {
    Deadline deadline = this.deadline.get();
    if (problem.parts().isEmpty()) {
      return new NestingPlan(
          List.of(),
          BigDecimal.ZERO,
          BigDecimal.ZERO,
          CuttingStatus.PROVEN_OPTIMAL,
          deadline.elapsedSeconds());
    }
    return new Search(problem, deadline, Search.rectangles(problem, rectangles), thorough).run();
  }

  /**
   * Nests the parts of the problem on less than a plan for the rectangles round them takes, if it
   * can.
   *
   * @param plan the plan to start from; its parts go by the problem's names
   */
  public NestingPlan cut(NestingProblem problem, SheetCuttingPlan plan) {
    return new Search(problem, deadline.get(), plan, thorough).run();
  }

  /** One problem being solved. */
  private static final class Search {
    private static final long SEED = 20_260_106L;
    private static final int MOST_SETS = 40;
    private static final int PATIENCE = 100;
    private static final double NOISE = 1e-9;

    private final NestingProblem problem;
    private final Deadline deadline;
    private final SplittableRandom random = new SplittableRandom(SEED);
    private final CellNest cells;
    private final boolean thorough;
    private OutlineShape[][] items;
    private NoFitTable table;
    private final BigDecimal priceStep;
    private final long[] price;
    private final int[] available;
    private final double areaMm2;
    private final PriceLadder ladder;
    private final SheetCuttingPlan rectangles;
    private List<NestedSheet> best;
    private long bestPrice;
    private final long lowerBound;

    Search(
        NestingProblem problem, Deadline deadline, SheetCuttingPlan rectangles, boolean thorough) {
      this.problem = problem;
      this.deadline = deadline;
      this.cells = new CellNest(problem);
      this.thorough = thorough;
      this.rectangles = rectangles;
      int n = problem.stock().size();
      price = new long[n];
      available = new int[n];
      priceStep = readPrices();
      double total = 0;
      for (OutlinePart part : problem.parts()) {
        total += part.areaMm2() * part.quantity();
      }
      areaMm2 = total;
      best = fromRectangles();
      bestPrice = price(best);
      ladder = ladder();
      lowerBound = Math.min(bestPrice, ladder.atLeast(0));
    }

    private static double longestMm(NestingProblem problem) {
      double longestMm = 0;
      for (SheetStock stock : problem.stock()) {
        longestMm = Math.max(longestMm, Math.max(stock.widthMm(), stock.heightMm()));
      }
      return longestMm;
    }

    private BigDecimal readPrices() {
      int scale = 0;
      for (SheetStock stock : problem.stock()) {
        scale = Math.max(scale, stock.price().scale());
      }
      BigInteger step = BigInteger.ZERO;
      for (SheetStock stock : problem.stock()) {
        step = step.gcd(stock.price().setScale(scale).unscaledValue());
      }
      for (int s = 0; s < price.length; s++) {
        SheetStock stock = problem.stock().get(s);
        BigInteger unscaled = stock.price().setScale(scale).unscaledValue();
        boolean free = step.signum() == 0;
        price[s] = free ? (stock.remnant() ? 0 : 1) : unscaled.divide(step).longValueExact();
        available[s] = stock.available().orElse(Integer.MAX_VALUE);
      }
      return new BigDecimal(step, scale);
    }

    /** Room by area in square tenths of a millimetre; parts rounded down, sheets up. */
    private PriceLadder ladder() {
      long[] room = new long[price.length];
      for (int s = 0; s < room.length; s++) {
        room[s] = (long) Math.ceil(usableMm2(s) * 100);
      }
      long needed = (long) Math.floor(areaMm2 * 100);
      return new PriceLadder(room, price, available, needed, bestPrice);
    }

    private double usableMm2(int s) {
      SheetStock stock = problem.stock().get(s);
      double widthMm = Math.max(0, stock.widthMm() - 2 * problem.marginMm());
      double heightMm = Math.max(0, stock.heightMm() - 2 * problem.marginMm());
      return widthMm * heightMm;
    }

    private long price(List<NestedSheet> sheets) {
      long total = 0;
      for (NestedSheet sheet : sheets) {
        total += price[number(sheet.stock())];
      }
      return total;
    }

    /** By identity first: comparing records costs a short run more than the rest of this. */
    private int number(SheetStock wanted) {
      List<SheetStock> stock = problem.stock();
      for (int s = 0; s < stock.size(); s++) {
        if (stock.get(s) == wanted) {
          return s;
        }
      }
      return stock.indexOf(wanted);
    }

    NestingPlan run() {
      boolean found = true;
      while (found && bestPrice > lowerBound && !deadline.isPast()) {
        found = tryCheaperSets();
      }
      boolean proven = lowerBound >= bestPrice;
      return new NestingPlan(
          best,
          priceStep.multiply(BigDecimal.valueOf(bestPrice)),
          priceStep.multiply(BigDecimal.valueOf(lowerBound)),
          proven ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
          deadline.elapsedSeconds());
    }

    /** The plan for the rectangles around the outlines. */
    private static SheetCuttingPlan rectangles(NestingProblem problem, SheetCutter cutter) {
      List<SheetPart> parts = new ArrayList<>();
      for (OutlinePart part : problem.parts()) {
        OutlineBox shape = OutlineBox.of(part, new OutlineTurn(part.turnsDeg().get(0)));
        parts.add(
            new SheetPart(
                part.id(), shape.width(), shape.height(), part.quantity(), quarterTurn(part) >= 0));
      }
      return cutter.cut(
          new SheetCuttingProblem(
              problem.stock(), parts, problem.marginMm(), problem.kerfMm(), CuttingMethod.FREE));
    }

    /** A way round that is a quarter turn from the first one, or −1. */
    private static int quarterTurn(OutlinePart part) {
      for (int w = 1; w < part.turnsDeg().size(); w++) {
        double turnDeg = part.turnsDeg().get(w) - part.turnsDeg().get(0);
        if (Math.abs(Math.abs(turnDeg) % 180 - 90) < NOISE) {
          return w;
        }
      }
      return -1;
    }

    private List<NestedSheet> fromRectangles() {
      Map<String, OutlinePart> byName = new HashMap<>();
      for (OutlinePart part : problem.parts()) {
        byName.put(part.id(), part);
      }
      List<NestedSheet> sheets = new ArrayList<>();
      for (CutSheet sheet : rectangles.sheets()) {
        List<PlacedOutline> placed = new ArrayList<>();
        for (PlacedPart rectangle : sheet.parts()) {
          OutlinePart part = byName.get(rectangle.partId());
          int way = rectangle.turned() ? quarterTurn(part) : 0;
          OutlineBox shape = OutlineBox.of(part, new OutlineTurn(part.turnsDeg().get(way)));
          placed.add(
              new PlacedOutline(
                  part.id(),
                  part.turnsDeg().get(way),
                  rectangle.xMm() - shape.minX,
                  rectangle.yMm() - shape.minY));
        }
        sheets.add(new NestedSheet(sheet.stock(), placed));
      }
      return sheets;
    }

    private boolean tryCheaperSets() {
      List<int[]> sets = new ArrayList<>();
      long total = ladder.below(bestPrice);
      while (total >= lowerBound && sets.size() < MOST_SETS) {
        addSets(0, total, new int[0], sets);
        total = ladder.below(total);
      }
      sets.sort(Comparator.comparingDouble(this::area).reversed());
      boolean found = false;
      for (int i = 0; i < sets.size() && !deadline.isPast(); i++) {
        found = oneByOne(sets.get(i));
        if (!found && thorough) {
          found = nest(sets.get(i), deadline.part(1.0 / (sets.size() - i)));
        }
        if (found) {
          return true;
        }
      }
      return false;
    }

    private boolean oneByOne(int[] set) {
      for (CellNest.Measure measure : CellNest.Measure.values()) {
        Optional<List<NestedSheet>> nested = cells.fill(set, cells.largestFirst(measure));
        if (nested.isPresent()) {
          best = nested.get();
          bestPrice = price(best);
          return true;
        }
      }
      return false;
    }

    private double area(int[] set) {
      double area = 0;
      for (int s : set) {
        area += usableMm2(s);
      }
      return area;
    }

    /** Sets of sheets at one total; drops that cost nothing are in all of them. */
    private void addSets(int from, long money, int[] chosen, List<int[]> sets) {
      if (money == 0) {
        int[] set = withFree(chosen);
        if (area(set) >= areaMm2 && sets.size() < MOST_SETS) {
          sets.add(set);
        }
        return;
      }
      for (int s = from; s < price.length; s++) {
        int used = 0;
        for (int c : chosen) {
          used += c == s ? 1 : 0;
        }
        if (price[s] > 0 && price[s] <= money && used < available[s]) {
          int[] more = Arrays.copyOf(chosen, chosen.length + 1);
          more[chosen.length] = s;
          addSets(s, money - price[s], more, sets);
        }
      }
    }

    private int[] withFree(int[] chosen) {
      List<Integer> all = new ArrayList<>();
      for (int s = 0; s < price.length; s++) {
        for (int i = 0; price[s] == 0 && i < Math.min(available[s], cells.parts()); i++) {
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

    private boolean nest(int[] set, Deadline end) {
      double[] widths = new double[set.length];
      double[] heights = new double[set.length];
      for (int i = 0; i < set.length; i++) {
        widths[i] = problem.stock().get(set[i]).widthMm() - 2 * problem.marginMm();
        heights[i] = problem.stock().get(set[i]).heightMm() - 2 * problem.marginMm();
      }
      if (items == null) {
        items = Nest.items(problem.parts());
        table = new NoFitTable(items, problem.kerfMm(), longestMm(problem));
      }
      Nest nest = new Nest(items, widths, heights);
      OutlineSeparation separation = new OutlineSeparation(nest, table, random);
      while (!end.isPast()) {
        if (!scatter(nest)) {
          return false;
        }
        separation.forget();
        if (separation.run(PATIENCE, end, null, 0)) {
          keep(set, nest);
          return true;
        }
      }
      return false;
    }

    /** Puts every item anywhere it can lie; false when some item fits no sheet of the set. */
    private boolean scatter(Nest nest) {
      for (int i = 0; i < items.length; i++) {
        boolean put = false;
        for (int attempt = 0; attempt < 200 && !put; attempt++) {
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

    private void keep(int[] set, Nest nest) {
      List<NestedSheet> sheets = new ArrayList<>();
      for (int i = 0; i < set.length; i++) {
        List<PlacedOutline> placed =
            NestingStripCutter.placed(problem.parts(), nest, i, problem.marginMm());
        if (!placed.isEmpty()) {
          sheets.add(new NestedSheet(problem.stock().get(set[i]), placed));
        }
      }
      best = sheets;
      bestPrice = price(sheets);
    }
  }
}
