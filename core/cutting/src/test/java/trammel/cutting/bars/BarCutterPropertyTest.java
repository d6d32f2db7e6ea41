package trammel.cutting.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;

class BarCutterPropertyTest {
  @Property(tries = 3000)
  void matchesTryingEverything(@ForAll("smallProblems") BarCuttingProblem problem) {
    long cheapest = new TryEverything(problem).cheapest();
    if (cheapest == TryEverything.IMPOSSIBLE) {
      assertThrows(StockShortageException.class, () -> new BarCutter().cut(problem));
      return;
    }
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
    assertEquals(0, plan.price().compareTo(BigDecimal.valueOf(cheapest)));
  }

  @Property(tries = 60)
  void everyPlanIsSound(@ForAll("shopProblems") BarCuttingProblem problem) {
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertTrue(plan.gap() < 0.05, () -> "gap " + plan.gap());
  }

  /** Doubling every length changes nothing. */
  @Property(tries = 40)
  void priceDoesNotDependOnTheUnit(@ForAll("shopProblems") BarCuttingProblem problem) {
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarCuttingPlan doubled = new BarCutter().cut(scaled(problem, 2));
    if (plan.status() == CuttingStatus.PROVEN_OPTIMAL
        && doubled.status() == CuttingStatus.PROVEN_OPTIMAL) {
      assertEquals(0, plan.price().compareTo(doubled.price()));
    }
    assertTrue(plan.lowerBound().compareTo(doubled.price()) <= 0);
    assertTrue(doubled.lowerBound().compareTo(plan.price()) <= 0);
  }

  private static BarCuttingProblem scaled(BarCuttingProblem problem, double factor) {
    List<BarStock> stock = new ArrayList<>();
    for (BarStock s : problem.stock()) {
      stock.add(new BarStock(s.id(), s.lengthMm() * factor, s.price(), s.available(), s.remnant()));
    }
    List<BarPiece> pieces = new ArrayList<>();
    for (BarPiece p : problem.pieces()) {
      pieces.add(new BarPiece(p.id(), p.lengthMm() * factor, p.quantity()));
    }
    return new BarCuttingProblem(stock, pieces, problem.kerfMm() * factor, 0, 0);
  }

  @Provide
  Arbitrary<BarCuttingProblem> smallProblems() {
    Arbitrary<int[]> stockRow =
        Combinators.combine(
                Arbitraries.integers().between(20, 60),
                Arbitraries.integers().between(0, 30),
                Arbitraries.integers().between(0, 4))
            .as((length, price, available) -> new int[] {length, price, available});
    return Combinators.combine(
            stockRow.list().ofMinSize(1).ofMaxSize(3),
            Arbitraries.integers().between(3, 20).list().ofMinSize(1).ofMaxSize(7),
            Arbitraries.integers().between(0, 2))
        .as(BarCutterPropertyTest::build);
  }

  private static BarCuttingProblem build(List<int[]> rows, List<Integer> lengths, int kerf) {
    List<BarStock> stock = new ArrayList<>();
    for (int[] row : rows) {
      // A number of 0 stands for stock open in number; the first row has at least one bar.
      OptionalInt available = row[2] == 0 ? OptionalInt.empty() : OptionalInt.of(row[2]);
      stock.add(
          new BarStock(
              "stock " + stock.size(), row[0], BigDecimal.valueOf(1 + row[1]), available, false));
    }
    List<BarPiece> pieces = new ArrayList<>();
    for (int length : lengths) {
      pieces.add(new BarPiece("piece " + pieces.size(), length, 1));
    }
    return new BarCuttingProblem(stock, pieces, kerf, 0, 0);
  }

  @Provide
  Arbitrary<BarCuttingProblem> shopProblems() {
    Arbitrary<BarPiece> piece =
        Combinators.combine(
                Arbitraries.integers().between(40, 1200), Arbitraries.integers().between(1, 6))
            .as((length, count) -> new BarPiece("piece " + length, length * 1.5, count));
    Arbitrary<Integer> remnant = Arbitraries.integers().between(200, 1500);
    return Combinators.combine(piece.list().ofMinSize(1).ofMaxSize(12), remnant.list().ofMaxSize(3))
        .as(
            (pieces, remnants) -> {
              List<BarStock> stock = new ArrayList<>();
              stock.add(BarStock.bought("240 in", 6096, new BigDecimal("128.00")));
              stock.add(BarStock.bought("144 in", 3657.6, new BigDecimal("88.50")));
              stock.add(BarStock.bought("96 in", 2438.4, new BigDecimal("62.25")));
              for (int length : remnants) {
                stock.add(BarStock.remnant("rack " + stock.size(), length, 1));
              }
              return new BarCuttingProblem(stock, pieces, 1.5, 0, 0);
            });
  }

  /** Puts each piece in turn into every open bar and every new one. */
  private static final class TryEverything {
    static final long IMPOSSIBLE = Long.MAX_VALUE;

    private final BarCuttingProblem problem;
    private final double[] room = new double[16];
    private final int[] left;
    private long best = IMPOSSIBLE;

    TryEverything(BarCuttingProblem problem) {
      this.problem = problem;
      this.left = new int[problem.stock().size()];
      for (int s = 0; s < left.length; s++) {
        left[s] = problem.stock().get(s).available().orElse(16);
      }
    }

    long cheapest() {
      place(0, 0, 0);
      return best;
    }

    private void place(int piece, int open, long price) {
      if (price >= best) {
        return;
      }
      if (piece == problem.pieces().size()) {
        best = price;
        return;
      }
      double size = problem.pieces().get(piece).lengthMm() + problem.kerfMm();
      for (int bar = 0; bar < open; bar++) {
        if (room[bar] >= size) {
          room[bar] -= size;
          place(piece + 1, open, price);
          room[bar] += size;
        }
      }
      for (int s = 0; s < left.length; s++) {
        BarStock stock = problem.stock().get(s);
        if (left[s] > 0 && stock.lengthMm() + problem.kerfMm() >= size) {
          left[s]--;
          room[open] = stock.lengthMm() + problem.kerfMm() - size;
          place(piece + 1, open + 1, price + stock.price().longValueExact());
          left[s]++;
        }
      }
    }
  }
}
