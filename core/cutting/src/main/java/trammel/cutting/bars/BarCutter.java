package trammel.cutting.bars;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;
import trammel.cutting.internal.Deadline;
import trammel.cutting.internal.Quantities;

/**
 * Finds the cheapest way to cut bars, and proves it where time allows.
 *
 * <p>Quick plans and bounds come first and settle most shop jobs; then the pattern relaxation,
 * plans rounded from it, and an exact search over all patterns that could still be better.
 */
public final class BarCutter {
  /** Time a cutting problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(10);

  private static final int[] PATTERN_LIMITS = {20_000, 150_000, 600_000};

  /** Up to this many kinds the exact search is quicker than more tries at rounding. */
  private static final int FEW_KINDS = 40;

  /** Above this many kinds the relaxation takes too long to start with. */
  private static final int MANY_KINDS = 300;

  /** From this many pieces a plan need not be proven to the last bar. */
  private static final int MANY_PIECES = 1000;

  /** Gap at which the search for a better plan of many pieces ends. */
  private static final double GOOD_ENOUGH = 5e-4;

  private static final int EARLY_DIVES = 5;

  /** Gap of a plan of a long list at which its bound need not be raised any more. */
  private static final double CLOSE_ENOUGH = 5e-3;

  /** Groups of lengths of a long list: as many as a relaxation is quick with. */
  private static final int GROUPS = 60;

  /** The part of the time of a long list for plans that fill one bar after another. */
  private static final double FILLING = 0.3;

  /** The part of the time for the plan by groups. */
  private static final double GROUPING = 0.6;

  /** Above this many rows a relaxation takes more memory and time than it is worth. */
  private static final int MOST_ROWS = 1000;

  /** Above this many different drops a list is long too. */
  private static final int MANY_STOCKS = 100;

  /** The part of the time for finding a plan; the rest is for gathering what is left over. */
  private static final double FINDING = 0.97;

  private final Supplier<Deadline> deadline;

  /** A cutter with the effort of the usual time, counted: its plan is the same on any machine. */
  public BarCutter() {
    this(Deadline.eachCounted(USUAL_LIMIT));
  }

  /**
   * A cutter whose plan is the same on any machine.
   *
   * @param limit the effort counted is about what that time takes on a quiet processor
   */
  public static BarCutter counted(Duration limit) {
    return new BarCutter(Deadline.eachCounted(limit));
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public BarCutter(Duration limit) {
    this(Deadline.eachIn(limit));
  }

  private BarCutter(Supplier<Deadline> deadline) {
    this.deadline = deadline;
  }

  /**
   * A cutter whose answer does not depend on how fast the machine is.
   *
   * @param steps of the search for one problem; a second of it takes some 500 million
   */
  public static BarCutter withEffort(long steps) {
    return new BarCutter(Deadline.eachAfterSteps(steps));
  }

  /**
   * Cuts the pieces of the problem.
   *
   * @throws StockShortageException when the stock does not hold all pieces
   */
  public BarCuttingPlan cut(BarCuttingProblem problem) {
    return cut(problem, deadline.get());
  }

  /**
   * Cuts the pieces of the problem.
   *
   * @param deadline what is best by then is handed over
   */
  private BarCuttingPlan cut(BarCuttingProblem problem, Deadline deadline) {
    BarModel model = BarModel.of(problem);
    BarReduction settled = BarReduction.of(model);
    BarModel rest = model.forDemand(settled.demand());
    Incumbent incumbent = solve(rest, deadline.part(FINDING));
    if (!incumbent.exists()) {
      throw shortage(problem, incumbent.isClosed());
    }
    CutList whole = settled.fixed().copy();
    whole.addAll(model, rest.inKindsOf(model, incumbent.best()));
    BigDecimal bound = model.money(settled.fixed().price + incumbent.lowerBound());
    CutList tidy = new OffcutKeeper(model, deadline).gathered(whole);
    return new PlanWriter(problem, model).write(tidy, bound, incumbent.isClosed(), deadline);
  }

  private static Incumbent solve(BarModel model, Deadline deadline) {
    long highest = highestPrice(model);
    Incumbent incumbent = first(model, highest, deadline);
    if (!incumbent.isClosed()) {
      new FewBars(model, deadline).run(incumbent);
    }
    boolean wanting = incumbent.exists() && incumbent.gap() > GOOD_ENOUGH;
    if (wanting && model.kinds() > MANY_KINDS && rows(model) <= GROUPS) {
      byGroups(model, incumbent, highest, deadline.part(GROUPING));
    }
    if (!incumbent.isClosed() && rows(model) <= MOST_ROWS) {
      new Search(model, incumbent, highest, deadline).run();
    }
    return incumbent;
  }

  /** The best of the quick plans; of a long list those that are ready in time. */
  private static Incumbent first(BarModel model, long highest, Deadline deadline) {
    if (!isLong(model)) {
      CutList quick = new GreedyFill(model).bestPlan(model.demand, model.available);
      return new Incumbent(model, quick, highest);
    }
    Incumbent incumbent = new Incumbent(model, new FirstFit(model).plan(), highest);
    if (!incumbent.isClosed()) {
      GreedyFill greedy = new GreedyFill(model, deadline.part(FILLING));
      incumbent.offer(greedy.bestPlan(model.demand, model.available));
    }
    if (model.stocks() == 1 && model.available[0] == BarModel.UNLIMITED) {
      long bars = new HalfBound(model.size, model.demand, model.capacity[0]).bars();
      incumbent.raiseBound(bars * model.price[0]);
    }
    return incumbent;
  }

  private static boolean isLong(BarModel model) {
    return model.kinds() > MANY_KINDS || model.stocks() > MANY_STOCKS;
  }

  /** Rows that a relaxation of some bars of the list may have. */
  private static int rows(BarModel model) {
    int rows = 0;
    for (int available : model.available) {
      rows += available == BarModel.UNLIMITED ? 0 : 1;
    }
    return rows;
  }

  /**
   * A plan for lengths that are nearly alike, taken together, and a bound where that is wanting.
   */
  private static void byGroups(
      BarModel model, Incumbent incumbent, long highest, Deadline deadline) {
    LengthGroups groups = LengthGroups.of(model, GROUPS);
    BarModel longest = groups.longest();
    CutList quick = new GreedyFill(longest, deadline).bestPlan(longest.demand, longest.available);
    Incumbent enough = new Incumbent(longest, quick, highest);
    new Search(longest, enough, highest, deadline.part(0.7)).rounds();
    if (enough.exists()) {
      incumbent.offer(groups.dealt(enough.best()));
    }
    if (incumbent.gap() > CLOSE_ENOUGH) {
      BarModel shortest = groups.shortest();
      Incumbent least = new Incumbent(shortest, null, incumbent.price());
      incumbent.raiseBound(new Search(shortest, least, highest, deadline).relaxed());
    }
  }

  /** A better plan for a small problem, or the known one. */
  private static CutList improved(BarModel model, CutList known, Deadline deadline) {
    Incumbent incumbent = new Incumbent(model, known, known.price);
    if (!incumbent.isClosed()) {
      new Search(model, incumbent, highestPrice(model), deadline).round();
    }
    return incumbent.best();
  }

  /** The part of the work that small jobs rarely need. */
  private static final class Search {
    private final BarModel model;
    private final Incumbent incumbent;
    private final Deadline deadline;
    private final PatternGeneration generation;
    private final double goodEnough;
    private int dives;

    Search(BarModel model, Incumbent incumbent, long highest, Deadline deadline) {
      this.model = model;
      this.incumbent = incumbent;
      this.deadline = deadline;
      PatternPool pool = new PatternPool();
      if (incumbent.exists()) {
        pool.addAll(incumbent.best());
      }
      goodEnough = pieces(model) < MANY_PIECES ? 0 : GOOD_ENOUGH;
      generation = new PatternGeneration(model, pool, deadline, highest);
    }

    void run() {
      if (incumbent.exists() && model.kinds() > MANY_KINDS) {
        polish(deadline.part(0.6));
      }
      if (isOver() || model.kinds() + rows(model) > MOST_ROWS) {
        if (!isOver() && incumbent.exists()) {
          polish(deadline);
        }
        return;
      }
      Relaxation root = generation.solve(model.demand, model.available, incumbent);
      incumbent.raiseBound(root.lowerBound);
      dive(root, 0);
      boolean some = model.kinds() > FEW_KINDS && model.kinds() <= MANY_KINDS;
      if (!isOver() && some) {
        for (int i = 0; i < EARLY_DIVES && !isOver(); i++) {
          dive(null, 0);
        }
      }
      if (!isOver() && model.kinds() <= MANY_KINDS) {
        prove();
      }
      if (!isOver() && incumbent.exists()) {
        polish(deadline);
      }
    }

    private void polish(Deadline end) {
      new PlanPolish(model, BarCutter::improved).run(incumbent, goodEnough, end);
    }

    /** What no plan costs less than by the relaxation, price steps. */
    double relaxed() {
      return generation.solve(model.demand, model.available, incumbent).lowerBound;
    }

    /** A relaxation and some roundings of it, until one is good enough. */
    void rounds() {
      Relaxation root = generation.solve(model.demand, model.available, incumbent);
      incumbent.raiseBound(root.lowerBound);
      dive(root, 0);
      for (int i = 0; i < EARLY_DIVES && !isOver(); i++) {
        dive(null, 0);
      }
    }

    /** A relaxation and a few roundings of it, no proof. */
    void round() {
      Relaxation root = generation.solve(model.demand, model.available, incumbent);
      incumbent.raiseBound(root.lowerBound);
      dive(root, 0);
      dive(null, 0);
    }

    private boolean isOver() {
      return incumbent.isClosed()
          || deadline.isPast()
          || incumbent.exists() && incumbent.gap() < goodEnough;
    }

    private void dive(Relaxation root, int discrepancies) {
      if (!isOver()) {
        Deadline end = deadline.part(0.5);
        new PatternDive(model, generation, incumbent, end).run(root, discrepancies, dives++);
      }
    }

    private void prove() {
      Relaxation full = generation.solve(model.demand, model.available, PatternGeneration.NEVER);
      incumbent.raiseBound(full.lowerBound);
      if (isOver()) {
        return;
      }
      PatternListing listing = new PatternListing(model, generation, full.worth, deadline);
      for (int most : PATTERN_LIMITS) {
        if (isOver() || searched(listing, most)) {
          return;
        }
        dive(null, 1);
        dive(null, 1);
      }
    }

    private boolean search(List<Pattern> patterns) {
      Deadline end = deadline.part(0.8);
      return new PatternSearch(model, patterns, incumbent, end, end).run();
    }

    private boolean searched(PatternListing listing, int mostPatterns) {
      List<Pattern> patterns = listing.within(incumbent.target(), mostPatterns);
      if (patterns == null || !search(patterns)) {
        return false;
      }
      incumbent.close();
      return true;
    }
  }

  private static long highestPrice(BarModel model) {
    long dearest = 1;
    for (long price : model.price) {
      dearest = Math.max(dearest, price);
    }
    return Math.multiplyExact(dearest, Math.max(1, pieces(model)));
  }

  private static long pieces(BarModel model) {
    long pieces = 0;
    for (int d : model.demand) {
      pieces += d;
    }
    return pieces;
  }

  private static StockShortageException shortage(BarCuttingProblem problem, boolean proven) {
    double piecesMm = 0;
    int pieces = 0;
    for (BarPiece piece : problem.pieces()) {
      piecesMm += piece.lengthMm() * piece.quantity();
      pieces += piece.quantity();
    }
    double stockMm = 0;
    for (BarStock stock : problem.stock()) {
      stockMm += stock.lengthMm() * stock.available().orElse(0);
    }
    return new StockShortageException(
        "the "
            + pieces
            + " pieces, "
            + Quantities.millimetres(piecesMm)
            + " together, "
            + (proven ? "do not fit" : "could not be fitted in the time given")
            + " on the stock that is available, "
            + Quantities.millimetres(stockMm)
            + " together. Raise the number available, or add a stock length.");
  }

  /** Turns a list of patterns back into named pieces on named bars. */
  private static final class PlanWriter {
    private final BarCuttingProblem problem;
    private final BarModel model;
    private final List<Deque<BarPiece>> waiting = new ArrayList<>();

    PlanWriter(BarCuttingProblem problem, BarModel model) {
      this.problem = problem;
      this.model = model;
      for (int k = 0; k < model.kinds(); k++) {
        Deque<BarPiece> queue = new ArrayDeque<>();
        for (BarPiece piece : model.piecesOfKind(k)) {
          for (int i = 0; i < piece.quantity(); i++) {
            queue.add(piece);
          }
        }
        waiting.add(queue);
      }
    }

    BarCuttingPlan write(CutList list, BigDecimal bound, boolean proven, Deadline deadline) {
      List<CutBar> bars = new ArrayList<>();
      List<BarOffcut> offcuts = new ArrayList<>();
      Map<String, Integer> numbers = new HashMap<>();
      for (int i = 0; i < list.patterns.size(); i++) {
        for (int j = 0; j < list.times.get(i); j++) {
          CutBar bar = bar(list.patterns.get(i));
          bars.add(bar);
          Integer before = numbers.get(bar.stock().id());
          int number = before == null ? 1 : before + 1;
          numbers.put(bar.stock().id(), number);
          if (bar.offcutMm() > 0 && bar.offcutMm() >= problem.usefulOffcutMm()) {
            String name = bar.stock().id() + " no. " + number + " offcut";
            offcuts.add(new BarOffcut(name, bar.stock().id(), bar.offcutMm()));
          }
        }
      }
      return new BarCuttingPlan(
          bars,
          model.money(list.price),
          bound,
          proven ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
          deadline.elapsedSeconds(),
          offcuts);
    }

    private CutBar bar(Pattern pattern) {
      BarStock stock = model.stock(pattern.stock);
      List<PlacedPiece> placed = new ArrayList<>();
      double atMm = problem.trimMm();
      for (int i = 0; i < pattern.kinds.length; i++) {
        for (int j = 0; j < pattern.counts[i]; j++) {
          BarPiece piece = waiting.get(pattern.kinds[i]).remove();
          placed.add(new PlacedPiece(piece.id(), atMm, piece.lengthMm()));
          atMm += piece.lengthMm() + problem.kerfMm();
        }
      }
      double leftMm = stock.lengthMm() - atMm;
      return new CutBar(stock, placed, Math.max(0, leftMm));
    }
  }
}
