package trammel.planning.cutting.bars;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.cutting.CuttingStatus;
import trammel.planning.cutting.Deadline;
import trammel.planning.cutting.Quantities;
import trammel.planning.cutting.StockShortageException;

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

  private final Duration limit;

  public BarCutter() {
    this(USUAL_LIMIT);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public BarCutter(Duration limit) {
    this.limit = limit;
    Deadline.in(limit);
  }

  /**
   * Cuts the pieces of the problem.
   *
   * @throws StockShortageException when the stock does not hold all pieces
   */
  public BarCuttingPlan cut(BarCuttingProblem problem) {
    Deadline deadline = Deadline.in(limit);
    BarModel model = BarModel.of(problem);
    Incumbent incumbent = solve(model, deadline);
    if (!incumbent.exists()) {
      throw shortage(problem, incumbent.isClosed());
    }
    return new PlanWriter(problem, model).write(incumbent, deadline);
  }

  private static Incumbent solve(BarModel model, Deadline deadline) {
    GreedyFill greedy = new GreedyFill(model);
    long highest = highestPrice(model);
    Incumbent incumbent =
        new Incumbent(model, greedy.bestPlan(model.demand, model.available), highest);
    if (incumbent.isClosed()) {
      return incumbent;
    }
    PatternPool pool = new PatternPool();
    if (incumbent.exists()) {
      pool.addAll(incumbent.best());
    }
    PatternGeneration generation = new PatternGeneration(model, pool, deadline, highest);
    Relaxation root = generation.solve(model.demand, model.available, incumbent.target() + 1e-6);
    incumbent.raiseBound(root.lowerBound);
    if (!incumbent.isClosed()) {
      new PatternDive(model, generation, incumbent, deadline).run(root, 0);
    }
    prove(model, generation, root, incumbent, deadline);
    return incumbent;
  }

  private static void prove(
      BarModel model,
      PatternGeneration generation,
      Relaxation root,
      Incumbent incumbent,
      Deadline deadline) {
    int effort = 0;
    while (!incumbent.isClosed() && !deadline.isPast()) {
      if (effort < PATTERN_LIMITS.length) {
        List<Pattern> patterns =
            new PatternEnumeration(model, root, PATTERN_LIMITS[effort], deadline.part(0.3))
                .within(incumbent.target());
        if (patterns != null) {
          if (new PatternSearch(model, patterns, incumbent, deadline.part(0.8)).run()) {
            incumbent.close();
            return;
          }
        }
      }
      effort++;
      new PatternDive(model, generation, incumbent, deadline.part(0.5)).run(root, effort);
      if (effort > 8) {
        return;
      }
    }
  }

  private static long highestPrice(BarModel model) {
    long dearest = 1;
    long pieces = 0;
    for (long price : model.price) {
      dearest = Math.max(dearest, price);
    }
    for (int d : model.demand) {
      pieces += d;
    }
    return Math.multiplyExact(dearest, Math.max(1, pieces));
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

    BarCuttingPlan write(Incumbent incumbent, Deadline deadline) {
      CutList list = incumbent.best();
      List<CutBar> bars = new ArrayList<>();
      List<BarOffcut> offcuts = new ArrayList<>();
      Map<String, Integer> numbers = new HashMap<>();
      for (int i = 0; i < list.patterns.size(); i++) {
        for (int j = 0; j < list.times.get(i); j++) {
          CutBar bar = bar(list.patterns.get(i));
          bars.add(bar);
          int number = numbers.merge(bar.stock().id(), 1, Integer::sum);
          if (bar.offcutMm() > 0 && bar.offcutMm() >= problem.usefulOffcutMm()) {
            String name = bar.stock().id() + " no. " + number + " offcut";
            offcuts.add(new BarOffcut(name, bar.stock().id(), bar.offcutMm()));
          }
        }
      }
      return new BarCuttingPlan(
          bars,
          model.money(list.price),
          model.money(incumbent.lowerBound()),
          incumbent.isClosed() ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
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
