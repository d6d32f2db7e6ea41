package trammel.cutting.bars;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import trammel.cutting.CuttingStatus;
import trammel.cutting.StockShortageException;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class BarCutterPropertyTest {
  @Seeds(3000)
  void matchesTryingEverything(Draw draw) {
    BarCuttingProblem problem = smallProblem(draw);
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

  @Seeds(60)
  void everyPlanIsSound(Draw draw) {
    BarCuttingProblem problem = shopProblem(draw);
    BarCuttingPlan plan = new BarCutter().cut(problem);
    BarPlanChecker.check(problem, plan);
    assertTrue(plan.gap() < 0.05, () -> "gap " + plan.gap());
  }

  /** Doubling every length changes nothing. */
  @Seeds(40)
  void priceDoesNotDependOnTheUnit(Draw draw) {
    BarCuttingProblem problem = shopProblem(draw);
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

  private static BarCuttingProblem smallProblem(Draw draw) {
    List<int[]> rows =
        draw.listOf(1, 3, d -> new int[] {d.whole(20, 60), d.whole(0, 30), d.whole(0, 4)});
    return build(rows, draw.listOf(1, 7, d -> d.whole(3, 20)), draw.whole(0, 2));
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

  private static BarCuttingProblem shopProblem(Draw draw) {
    List<BarStock> stock = new ArrayList<>();
    stock.add(BarStock.bought("240 in", 6096, new BigDecimal("128.00")));
    stock.add(BarStock.bought("144 in", 3657.6, new BigDecimal("88.50")));
    stock.add(BarStock.bought("96 in", 2438.4, new BigDecimal("62.25")));
    for (int lengthMm : draw.listOf(0, 3, d -> d.whole(200, 1500))) {
      stock.add(BarStock.remnant("rack " + stock.size(), lengthMm, 1));
    }
    return new BarCuttingProblem(
        stock, draw.listOf(1, 12, BarCutterPropertyTest::piece), 1.5, 0, 0);
  }

  private static BarPiece piece(Draw draw) {
    int length = draw.whole(40, 1200);
    return new BarPiece("piece " + length, length * 1.5, draw.whole(1, 6));
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
