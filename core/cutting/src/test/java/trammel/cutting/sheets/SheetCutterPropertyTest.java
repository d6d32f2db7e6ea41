package trammel.cutting.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicBoolean;
import trammel.cutting.CuttingStatus;
import trammel.cutting.internal.Deadline;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class SheetCutterPropertyTest {
  private static final Duration SHORT = Duration.ofMillis(25);

  /** The effort of a job's plan of one thickness. */
  private static final long EFFORT = 30;

  @Seeds(500)
  void everyPlanIsSound(Draw draw) {
    SheetCuttingProblem problem = problem(draw);
    SheetCuttingPlan plan = SheetCutter.withEffort(EFFORT).cut(problem);
    SheetPlanChecker.check(problem, plan);
  }

  /** A shear can do nothing that free cutting cannot. */
  @Seeds(30)
  void freeCuttingIsNeverBoundedAboveAShearPlan(Draw draw) {
    SheetCuttingProblem problem = problem(draw);
    SheetCuttingPlan free = new SheetCutter(SHORT).cut(with(problem, CuttingMethod.FREE));
    SheetCuttingPlan shear = new SheetCutter(SHORT).cut(with(problem, CuttingMethod.GUILLOTINE));
    assertTrue(free.lowerBound().compareTo(shear.price()) <= 0);
  }

  @Seeds(30)
  void everyStripIsSound(Draw draw) {
    List<SheetPart> parts = parts(draw);
    StripProblem problem = new StripProblem(300, parts, 5, 2);
    StripPlan plan = new StripCutter(SHORT).cut(problem);
    SheetPlanChecker.check(problem, plan);
  }

  @Seeds(10)
  void countedEffortGivesTheSameStripOnOneThreadAndOnTwo(Draw draw) {
    StripProblem problem = new StripProblem(300, parts(draw), 0, 1);
    StripPlan once = new StripCutter(Deadline.eachCounted(SHORT), 1).cut(problem);
    StripPlan again = new StripCutter(Deadline.eachCounted(SHORT), 2).cut(problem);
    assertEquals(once.parts(), again.parts());
  }

  /** A list of up to 30 parts is given its effort, whatever else the processors do. */
  @Seeds(10)
  void aShortListGetsTheSamePlanOnABusyMachine(Draw draw) {
    SheetCuttingProblem problem = problem(draw);
    SheetCuttingPlan quiet = new SheetCutter(SHORT).cut(problem);
    AtomicBoolean busy = new AtomicBoolean(true);
    for (int i = 0; i < 3; i++) {
      Thread other =
          new Thread(
              () -> {
                while (busy.get()) {
                  Thread.onSpinWait();
                }
              });
      other.setDaemon(true);
      other.start();
    }
    SheetCuttingPlan loaded;
    try {
      loaded = new SheetCutter(SHORT).cut(problem);
    } finally {
      busy.set(false);
    }
    assertEquals(quiet.sheets(), loaded.sheets());
    assertEquals(quiet.lowerBound(), loaded.lowerBound());
  }

  /** Three parts on one size of sheet: the plan is proven, and by a shear no dearer than apart. */
  @Seeds(60)
  void fewPartsByShearAreProven(Draw draw) {
    int a = side(draw);
    int b = side(draw);
    int c = side(draw);
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

  private static int side(Draw draw) {
    return draw.whole(10, 120);
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

  private static List<SheetPart> parts(Draw draw) {
    return distinct(draw.listOf(1, 9, SheetCutterPropertyTest::part));
  }

  private static SheetPart part(Draw draw) {
    int width = draw.whole(10, 280);
    int height = draw.whole(10, 280);
    return new SheetPart(
        "part " + width + "x" + height, width, height, draw.whole(1, 4), draw.either());
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

  private static SheetCuttingProblem problem(Draw draw) {
    return new SheetCuttingProblem(
        List.of(
            SheetStock.bought("large", 600, 400, new BigDecimal("88.50")),
            SheetStock.bought("small", 310, 310, new BigDecimal("37.25")),
            SheetStock.remnant("drop", 250, 200, 1)),
        parts(draw),
        draw.whole(0, 10),
        draw.whole(0, 4),
        draw.oneOf(CuttingMethod.class),
        40);
  }
}
