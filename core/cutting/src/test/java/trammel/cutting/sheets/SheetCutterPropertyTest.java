package trammel.cutting.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import trammel.cutting.CuttingStatus;

class SheetCutterPropertyTest {
  private static final Duration SHORT = Duration.ofMillis(25);

  /** The effort of a job's plan of one thickness. */
  private static final long EFFORT = 30;

  @Property(tries = 2000)
  void everyPlanIsSound(@ForAll("problems") SheetCuttingProblem problem) {
    SheetCuttingPlan plan = SheetCutter.withEffort(EFFORT).cut(problem);
    SheetPlanChecker.check(problem, plan);
  }

  /** A shear can do nothing that free cutting cannot. */
  @Property(tries = 30)
  void freeCuttingIsNeverBoundedAboveAShearPlan(@ForAll("problems") SheetCuttingProblem problem) {
    SheetCuttingPlan free = new SheetCutter(SHORT).cut(with(problem, CuttingMethod.FREE));
    SheetCuttingPlan shear = new SheetCutter(SHORT).cut(with(problem, CuttingMethod.GUILLOTINE));
    assertTrue(free.lowerBound().compareTo(shear.price()) <= 0);
  }

  @Property(tries = 30)
  void everyStripIsSound(@ForAll("parts") List<SheetPart> parts) {
    StripProblem problem = new StripProblem(300, parts, 5, 2);
    StripPlan plan = new StripCutter(SHORT).cut(problem);
    SheetPlanChecker.check(problem, plan);
  }

  /** Three parts on one size of sheet: the plan is proven, and by a shear no dearer than apart. */
  @Property(tries = 60)
  void fewPartsByShearAreProven(
      @ForAll("sides") int a, @ForAll("sides") int b, @ForAll("sides") int c) {
    List<SheetPart> parts =
        List.of(
            new SheetPart("a", a, 40, 1, true),
            new SheetPart("b", b, 60, 1, true),
            new SheetPart("c", 70, c, 1, false));
    SheetCuttingProblem problem =
        new SheetCuttingProblem(
            List.of(SheetStock.bought("sheet", 200, 130, BigDecimal.ONE)),
            parts,
            2,
            1,
            CuttingMethod.GUILLOTINE);
    SheetCuttingPlan plan = new SheetCutter(Duration.ofSeconds(5)).cut(problem);
    SheetPlanChecker.check(problem, plan);
    assertEquals(CuttingStatus.PROVEN_OPTIMAL, plan.status());
    assertTrue(plan.sheets().size() <= 3);
  }

  @Provide
  Arbitrary<Integer> sides() {
    return Arbitraries.integers().between(10, 120);
  }

  private static SheetCuttingProblem with(SheetCuttingProblem problem, CuttingMethod method) {
    return new SheetCuttingProblem(
        problem.stock(),
        problem.parts(),
        problem.marginMm(),
        problem.kerfMm(),
        method,
        problem.usefulOffcutMm());
  }

  @Provide
  Arbitrary<List<SheetPart>> parts() {
    Arbitrary<Integer> side = Arbitraries.integers().between(10, 280);
    return Combinators.combine(
            side, side, Arbitraries.integers().between(1, 4), Arbitraries.of(true, false))
        .as((w, h, n, turn) -> new SheetPart("part " + w + "x" + h, w, h, n, turn))
        .list()
        .ofMinSize(1)
        .ofMaxSize(9)
        .map(SheetCutterPropertyTest::distinct);
  }

  /** Names tell parts apart in the check. */
  private static List<SheetPart> distinct(List<SheetPart> parts) {
    List<SheetPart> named = new ArrayList<>();
    for (SheetPart p : parts) {
      named.add(
          new SheetPart(
              p.id() + " no. " + named.size(),
              p.widthMm(),
              p.heightMm(),
              p.quantity(),
              p.mayTurn()));
    }
    return named;
  }

  @Provide
  Arbitrary<SheetCuttingProblem> problems() {
    return Combinators.combine(
            parts(),
            Arbitraries.integers().between(0, 10),
            Arbitraries.integers().between(0, 4),
            Arbitraries.of(CuttingMethod.values()))
        .as(
            (parts, margin, kerf, method) ->
                new SheetCuttingProblem(
                    List.of(
                        SheetStock.bought("large", 600, 400, new BigDecimal("88.50")),
                        SheetStock.bought("small", 310, 310, new BigDecimal("37.25")),
                        SheetStock.remnant("drop", 250, 200, 1)),
                    parts,
                    margin,
                    kerf,
                    method,
                    40));
  }
}
