package trammel.cutting.bars;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import trammel.cutting.internal.Deadline;

/** Lists of hundreds and thousands of different lengths, each plan checked from the list alone. */
class LongBarListTest {
  private static final double KERF_MM = 2.5;

  private static final List<BarStock> BOUGHT =
      List.of(
          BarStock.bought("6 m", 6000, new BigDecimal("60")),
          BarStock.bought("3 m", 3000, new BigDecimal("33")));

  private static BarCuttingProblem different(
      long seed, int count, double shortest, double longest, List<BarStock> stock) {
    SplittableRandom random = new SplittableRandom(seed);
    List<BarPiece> pieces = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double lengthMm = Math.round(32 * (shortest + random.nextDouble() * (longest - shortest)));
      pieces.add(new BarPiece("p" + i, lengthMm / 32, 1));
    }
    return new BarCuttingProblem(stock, pieces, KERF_MM, 0, 0);
  }

  private static BarCuttingPlan checked(long seed, BarCuttingProblem problem, long steps) {
    BarCuttingPlan plan = BarCutter.withEffort(steps).cut(problem);
    try {
      BarPlanChecker.check(problem, plan);
    } catch (AssertionError wrong) {
      throw new AssertionError("seed " + seed + ": " + wrong.getMessage(), wrong);
    }
    return plan;
  }

  /**
   * By hand: 10 per metre is the least that a metre costs, and each piece takes its saw cut, but
   * for the last of a bar.
   */
  private static double leastByLength(BarCuttingProblem problem) {
    double lengthMm = 0;
    for (BarPiece piece : problem.pieces()) {
      lengthMm += (piece.lengthMm() + KERF_MM) * piece.quantity();
    }
    return lengthMm * 60 / (6000 + KERF_MM);
  }

  @Test
  void manyDifferentLengthsComeWithinHalfAPerCentOfWhatTheirLengthCosts() {
    for (long seed = 1; seed <= 3; seed++) {
      BarCuttingProblem problem = different(seed, 1500, 150, 2800, BOUGHT);
      BarCuttingPlan plan = checked(seed, problem, 300_000_000);
      double least = leastByLength(problem);
      assertTrue(
          plan.price().doubleValue() <= 1.005 * least,
          "seed " + seed + ": " + plan.price() + " against " + least);
      assertTrue(
          plan.lowerBound().doubleValue() >= least - 1e-6,
          "seed " + seed + ": bound " + plan.lowerBound() + " under " + least);
    }
  }

  /** Every try looks at every bar of the plan, so it counts at least a step for each. */
  @Test
  void aTryToImproveALongPlanCountsByTheBarsOfThePlan() {
    BarModel model = BarModel.of(different(1, 2000, 150, 2800, BOUGHT));
    CutList plan = new FirstFit(model).plan();
    int[] tries = new int[1];
    PlanPolish polish =
        new PlanPolish(
            model,
            (part, known, end) -> {
              tries[0]++;
              return known;
            });
    long steps = 20L * plan.patterns.size();
    polish.run(new Incumbent(model, plan, plan.price), 0, Deadline.afterSteps(steps));
    assertTrue(tries[0] >= 1, "no try at all");
    assertTrue(
        tries[0] <= 20,
        tries[0] + " tries over " + plan.patterns.size() + " bars in " + steps + " steps");
  }

  /**
   * Link tubes of 500 jobs: lengths that crowd round some few, so that the largest first is not
   * what is best for all; it leaves one to two per cent over the least.
   */
  @Test
  void lengthsThatCrowdTogetherComeWithinHalfAPerCentOfTheirBound() {
    SplittableRandom random = new SplittableRandom(1);
    List<BarPiece> pieces = new ArrayList<>();
    for (int job = 0; job < 500; job++) {
      double lowerMm = 510 + 6 * random.nextDouble();
      double upperMm = 361 + 6 * random.nextDouble();
      pieces.add(new BarPiece("lower " + job, lowerMm, 2));
      pieces.add(new BarPiece("upper " + job, upperMm, 2));
      pieces.add(new BarPiece("across " + job, 550 + 120 * random.nextDouble(), 1));
    }
    List<BarStock> stock =
        List.of(
            BarStock.bought("6 m", 6000, new BigDecimal("156")),
            BarStock.bought("3.6 m", 3600, new BigDecimal("110.50")),
            BarStock.bought("1.8 m", 1800, new BigDecimal("66.50")));
    BarCuttingPlan plan =
        checked(1, new BarCuttingProblem(stock, pieces, KERF_MM, 0, 0), 1_000_000_000L);
    double bound = plan.lowerBound().doubleValue();
    assertTrue(plan.price().doubleValue() <= 1.005 * bound, plan.price() + " against " + bound);
  }

  /** By hand: with two groups at most, 10 to 9 and 4 to 3 are the narrowest, 1 wide each. */
  @Test
  void lengthsAreTakenTogetherInTheNarrowestGroups() {
    List<BarPiece> pieces = new ArrayList<>();
    for (int length : new int[] {10, 9, 4, 3}) {
      pieces.add(new BarPiece("p" + length, length, length == 9 ? 2 : 1));
    }
    BarModel model =
        BarModel.of(
            new BarCuttingProblem(
                List.of(BarStock.bought("twenty", 20, BigDecimal.ONE)), pieces, 0, 0, 0));
    LengthGroups groups = LengthGroups.of(model, 2);
    assertArrayEquals(new long[] {10, 4}, groups.longest().size);
    assertArrayEquals(new long[] {9, 3}, groups.shortest().size);
    assertArrayEquals(new int[] {3, 2}, groups.longest().demand);
  }

  @Test
  void theSameEffortGivesTheSamePlan() {
    BarCuttingProblem problem = different(5, 700, 200, 3500, BOUGHT);
    assertEquals(
        BarCutter.withEffort(50_000_000).cut(problem).bars(),
        BarCutter.withEffort(50_000_000).cut(problem).bars());
  }

  @Test
  void aPlanIsThereEvenWithoutAnyEffortLeft() {
    List<BarStock> withDrops = new ArrayList<>(BOUGHT);
    SplittableRandom random = new SplittableRandom(11);
    for (int i = 0; i < 300; i++) {
      withDrops.add(BarStock.remnant("R" + i, 400 + random.nextInt(5000), 1));
    }
    for (long seed = 1; seed <= 4; seed++) {
      checked(seed, different(seed, 20_000, 20, 5900, BOUGHT), 1);
      checked(seed, different(seed, 2_000, 100, 5900, withDrops), 1);
    }
  }

  @Test
  void dropsComeBeforeWhatMustBeBought() {
    List<BarStock> withDrops = new ArrayList<>(BOUGHT);
    for (int i = 0; i < 150; i++) {
      withDrops.add(BarStock.remnant("R" + i, 3000 + i, 1));
    }
    BarCuttingPlan plan = checked(1, different(1, 500, 200, 900, withDrops), 200_000_000);
    assertEquals(BigDecimal.ZERO, plan.price().stripTrailingZeros(), "150 drops hold them all");
  }

  /** By hand: no two of 600, 600, 600 and 450 share a bar of 1000, though 2250 is less than 3. */
  @Test
  void piecesOverHalfABarTakeABarEach() {
    assertEquals(4, new HalfBound(new long[] {600, 450}, new int[] {3, 1}, 1000).bars());
  }

  /** By hand: 3 x 600 leave 1200 of room, which takes 2 x 400 and not 4. */
  @Test
  void whatIsLeftBesideThemIsTakenFirst() {
    assertEquals(3, new HalfBound(new long[] {600, 400}, new int[] {3, 2}, 1000).bars());
    assertEquals(4, new HalfBound(new long[] {600, 400}, new int[] {3, 4}, 1000).bars());
  }

  /** First-fit decreasing by hand: 7 2 1 | 6 4 | 5 on bars of 10. */
  @Test
  void firstFitDecreasingOpensABarOnlyWhereNoneHasRoom() {
    List<BarPiece> pieces = new ArrayList<>();
    for (int length : new int[] {4, 7, 1, 6, 5, 2}) {
      pieces.add(new BarPiece("p" + length, length, 1));
    }
    BarCuttingProblem problem =
        new BarCuttingProblem(List.of(BarStock.bought("ten", 10, BigDecimal.ONE)), pieces, 0, 0, 0);
    CutList plan = new FirstFit(BarModel.of(problem)).plan();
    assertEquals(3, plan.price);
    assertEquals(List.of(3, 2, 1), plan.patterns.stream().map(p -> p.kinds.length).toList());
  }
}
