package trammel.cutting.outlines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.LongRange;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.SheetStock;

/** Whatever is nested, JTS finds every part inside its sheet and a kerf away from all others. */
class NestingPropertyTest {
  private static final long LITTLE_EFFORT = 200;
  private static final double LITTLE_MM = 1e-6;

  /** How much further than a round one a corner reaches that is cut at most 45° wide. */
  private static final double CUT_CORNER = 1 / Math.cos(Math.PI / 8);

  @Property(tries = 1000, shrinking = ShrinkingMode.OFF)
  void everyStripIsSound(
      @ForAll("parts") List<OutlinePart> parts,
      @ForAll("margins") double marginMm,
      @ForAll("kerfs") double kerfMm) {
    NestingStripProblem problem = new NestingStripProblem(200, parts, marginMm, kerfMm);
    NestingChecker.check(problem, NestingStripCutter.withEffort(LITTLE_EFFORT).cut(problem));
  }

  /** And never dearer than the rectangles around the parts, laid as they are drawn. */
  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void everySheetIsSoundAndNoDearerThanRectangles(
      @ForAll("parts") List<OutlinePart> parts,
      @ForAll("margins") double marginMm,
      @ForAll("kerfs") double kerfMm) {
    NestingProblem problem =
        new NestingProblem(
            List.of(
                SheetStock.bought("large", 420, 260, new BigDecimal("88.50")),
                SheetStock.bought("small", 210, 210, new BigDecimal("37.25")),
                SheetStock.remnant("drop", 190, 150, 1)),
            parts,
            marginMm,
            kerfMm);
    NestingPlan plan = NestingCutter.withEffort(LITTLE_EFFORT).cut(problem);
    NestingChecker.check(problem, plan);
    BigDecimal rectangles = SheetCutter.withEffort(LITTLE_EFFORT).cut(rectangles(problem)).price();
    assertTrue(plan.price().compareTo(rectangles) <= 0, () -> plan.price() + " > " + rectangles);
  }

  @Property(tries = 20, shrinking = ShrinkingMode.OFF)
  void countedEffortGivesTheSamePlanAgain(@ForAll("parts") List<OutlinePart> parts) {
    NestingStripProblem problem = new NestingStripProblem(200, parts, 0, 1);
    NestingStripPlan once = NestingStripCutter.withEffort(LITTLE_EFFORT).cut(problem);
    NestingStripPlan again = NestingStripCutter.withEffort(LITTLE_EFFORT).cut(problem);
    assertEquals(once.parts(), again.parts());
  }

  /**
   * For any shift of one outline against another: a depth where JTS finds them too close, none
   * where it finds them far enough apart. Between, a corner's clearance may be cut up to 45° wide
   * instead of round.
   */
  @Property(tries = 500, shrinking = ShrinkingMode.OFF)
  void whatIsTooCloseIsToldFromWhatIsNot(
      @ForAll("parts") List<OutlinePart> parts,
      @ForAll("kerfs") double clearanceMm,
      @ForAll @LongRange(min = 0) long seed) {
    OutlineForm one = new OutlineForm(parts.get(0));
    OutlineForm other = new OutlineForm(parts.get(1));
    List<Double> turnsDeg = parts.get(1).turnsDeg();
    OutlineTurn turn = new OutlineTurn(turnsDeg.get(turnsDeg.size() - 1));
    NoFitField field = new NoFitField(one.pieces, other.turned(turn), clearanceMm);
    Polygon still = NestingChecker.polygon(OutlineRing.of(parts.get(0)), new OutlineTurn(0), 0, 0);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 60; i++) {
      double x = random.nextDouble(-150, 150);
      double y = random.nextDouble(-150, 150);
      Polygon shifted = NestingChecker.polygon(OutlineRing.of(parts.get(1)), turn, x, y);
      double apartMm = still.distance(shifted);
      double depthMm = field.at(x, y);
      if (apartMm > CUT_CORNER * clearanceMm + LITTLE_MM) {
        assertEquals(0, depthMm, () -> apartMm + " mm apart");
      } else if (apartMm > 0 ? apartMm < clearanceMm - LITTLE_MM : overlap(still, shifted)) {
        assertTrue(depthMm > 0, () -> apartMm + " mm apart, shift " + x + ", " + y);
      }
    }
  }

  private static boolean overlap(Polygon one, Polygon other) {
    return OverlayNGRobust.overlay(one, other, OverlayNG.INTERSECTION).getArea() > LITTLE_MM;
  }

  /** Two squares of 10: the way out is what the nearest side lacks. */
  @Example
  void depthIsTheShortestWayOut() {
    List<OutlinePoint> square =
        List.of(
            new OutlinePoint(0, 0),
            new OutlinePoint(10, 0),
            new OutlinePoint(10, 10),
            new OutlinePoint(0, 10));
    OutlineForm form = new OutlineForm(new OutlinePart("square", square, List.of(0.0), 1));
    NoFitField field = new NoFitField(form.pieces, form.pieces, 0);
    assertEquals(10, field.at(0, 0), 0.5);
    assertEquals(6, field.at(-4, 2), 0.5);
    assertEquals(1, field.at(9, -3), 1e-9);
    assertEquals(0.25, field.at(2, 9.75), 1e-9);
    assertEquals(0, field.at(10, 0));
    assertEquals(0, field.at(-3, 11));
  }

  private static SheetCuttingProblem rectangles(NestingProblem problem) {
    List<SheetPart> parts = new ArrayList<>();
    for (OutlinePart part : problem.parts()) {
      double lowX = Double.POSITIVE_INFINITY;
      double lowY = Double.POSITIVE_INFINITY;
      double highX = Double.NEGATIVE_INFINITY;
      double highY = Double.NEGATIVE_INFINITY;
      for (OutlinePoint p : part.outline()) {
        lowX = Math.min(lowX, p.xMm());
        lowY = Math.min(lowY, p.yMm());
        highX = Math.max(highX, p.xMm());
        highY = Math.max(highY, p.yMm());
      }
      boolean turns = part.turnsDeg().contains(90.0);
      parts.add(new SheetPart(part.id(), highX - lowX, highY - lowY, part.quantity(), turns));
    }
    return new SheetCuttingProblem(
        problem.stock(), parts, problem.marginMm(), problem.kerfMm(), CuttingMethod.FREE);
  }

  @Provide
  Arbitrary<Double> margins() {
    return Arbitraries.of(0.0, 3.0, 12.7);
  }

  @Provide
  Arbitrary<Double> kerfs() {
    return Arbitraries.of(0.0, 0.8, 3.175);
  }

  /** 3 to 8 parts, each of one outline and one set of turns. */
  @Provide
  Arbitrary<List<OutlinePart>> parts() {
    Arbitrary<List<Double>> turns =
        Arbitraries.of(
            List.of(
                List.of(0.0),
                List.of(0.0, 180.0),
                List.of(0.0, 90.0, 180.0, 270.0),
                List.of(0.0, 31.0, 90.0, 147.5)));
    return Combinators.combine(
            Arbitraries.oneOf(stars(), combs()), turns, Arbitraries.integers().between(1, 2))
        .as((outline, ways, quantity) -> new OutlinePart("part", outline, ways, quantity))
        .list()
        .ofMinSize(3)
        .ofMaxSize(5)
        .map(NestingPropertyTest::named);
  }

  private static List<OutlinePart> named(List<OutlinePart> parts) {
    List<OutlinePart> named = new ArrayList<>();
    for (OutlinePart part : parts) {
      String id = "part " + named.size();
      named.add(new OutlinePart(id, part.outline(), part.turnsDeg(), part.quantity()));
    }
    return named;
  }

  /** Seen from the middle every corner is in sight; some have so many that they are simplified. */
  private static Arbitrary<List<OutlinePoint>> stars() {
    Arbitrary<Double> radius = Arbitraries.doubles().between(12, 60).ofScale(3);
    return Arbitraries.frequencyOf(
            Tuple.of(6, radius.list().ofMinSize(3).ofMaxSize(9)),
            Tuple.of(1, radius.list().ofMinSize(20).ofMaxSize(40)))
        .map(NestingPropertyTest::star);
  }

  private static List<OutlinePoint> star(List<Double> radiiMm) {
    List<OutlinePoint> outline = new ArrayList<>();
    for (int i = 0; i < radiiMm.size(); i++) {
      double angle = 2 * Math.PI * i / radiiMm.size();
      outline.add(
          new OutlinePoint(
              radiiMm.get(i) * Math.cos(angle) + 7, radiiMm.get(i) * Math.sin(angle) - 20));
    }
    return outline;
  }

  /**
   * A back with teeth of several lengths: hollows that other parts may lie in; either way round.
   */
  private static Arbitrary<List<OutlinePoint>> combs() {
    Arbitrary<Integer> step = Arbitraries.integers().between(2, 30);
    return Combinators.combine(
            step.list().ofSize(4), step.list().ofSize(4), Arbitraries.of(true, false))
        .as(NestingPropertyTest::comb);
  }

  private static List<OutlinePoint> comb(
      List<Integer> widthsMm, List<Integer> heightsMm, boolean backward) {
    List<OutlinePoint> outline = new ArrayList<>();
    double x = 0;
    outline.add(new OutlinePoint(0, 0));
    for (int i = widthsMm.size() - 1; i >= 0; i--) {
      x += widthsMm.get(i);
    }
    outline.add(new OutlinePoint(x, 0));
    for (int i = 0; i < widthsMm.size(); i++) {
      double y = heightsMm.get(i) * (i % 2 == 0 ? 3 : 1);
      outline.add(new OutlinePoint(x, y));
      x -= widthsMm.get(i);
      outline.add(new OutlinePoint(x, y));
    }
    if (backward) {
      java.util.Collections.reverse(outline);
    }
    return outline;
  }
}
