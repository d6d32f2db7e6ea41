package trammel.cutting.outlines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import trammel.cutting.internal.Deadline;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.SheetStock;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

/** Whatever is nested, JTS finds every part inside its sheet and a kerf away from all others. */
class NestingPropertyTest {
  private static final long LITTLE_EFFORT = 200;
  private static final long LITTLE_STEPS = 1_000_000;
  private static final double LITTLE_MM = 1e-6;

  /** How much further than a round one a corner reaches that is cut at most 45° wide. */
  private static final double CUT_CORNER = 1 / Math.cos(Math.PI / 8);

  private static final List<List<Double>> WAYS_TO_TURN =
      List.of(
          List.of(0.0),
          List.of(0.0, 180.0),
          List.of(0.0, 90.0, 180.0, 270.0),
          List.of(0.0, 31.0, 90.0, 147.5));

  private static NestingStripCutter cutter(int threads) {
    return new NestingStripCutter(Deadline.eachAfterSteps(LITTLE_STEPS), threads);
  }

  @Seeds(120)
  void everyStripIsSound(Draw draw) {
    List<OutlinePart> parts = parts(draw);
    double marginMm = margin(draw);
    double kerfMm = kerf(draw);
    NestingStripProblem problem = new NestingStripProblem(200, parts, marginMm, kerfMm);
    NestingChecker.check(problem, cutter(1).cut(problem));
  }

  /** And never dearer than the rectangles around the parts, laid as they are drawn. */
  @Seeds(80)
  void everySheetIsSoundAndNoDearerThanRectangles(Draw draw) {
    List<OutlinePart> parts = parts(draw);
    double marginMm = margin(draw);
    double kerfMm = kerf(draw);
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

  @Seeds(20)
  void countedEffortGivesTheSamePlanOnOneThreadAndOnTwo(Draw draw) {
    List<OutlinePart> parts = parts(draw);
    NestingStripProblem problem = new NestingStripProblem(200, parts, 0, 1);
    NestingStripPlan once = cutter(1).cut(problem);
    NestingStripPlan again = cutter(2).cut(problem);
    assertEquals(once.parts(), again.parts());
  }

  /**
   * For any shift of one outline against another: a depth where JTS finds them too close, none
   * where it finds them far enough apart. Between, a corner's clearance may be cut up to 45° wide
   * instead of round.
   */
  @Seeds(125)
  void whatIsTooCloseIsToldFromWhatIsNot(Draw draw) {
    List<OutlinePart> parts = parts(draw);
    double clearanceMm = kerf(draw);
    long seed = draw.anyLong();
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
  @Test
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

  private static double margin(Draw draw) {
    return draw.oneOf(0.0, 3.0, 12.7);
  }

  private static double kerf(Draw draw) {
    return draw.oneOf(0.0, 0.8, 3.175);
  }

  /** 3 to 5 parts, each of one outline and one set of turns. */
  private static List<OutlinePart> parts(Draw draw) {
    return named(draw.listOf(3, 5, NestingPropertyTest::part));
  }

  private static OutlinePart part(Draw draw) {
    List<OutlinePoint> outline = draw.either() ? star(draw) : comb(draw);
    return new OutlinePart("part", outline, draw.oneOf(WAYS_TO_TURN), draw.whole(1, 2));
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
  private static List<OutlinePoint> star(Draw draw) {
    boolean manyCorners = draw.withChance(1.0 / 7);
    return star(draw.listOf(manyCorners ? 20 : 3, manyCorners ? 40 : 9, d -> d.between(12, 60)));
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
  private static List<OutlinePoint> comb(Draw draw) {
    return comb(
        draw.listOf(4, 4, d -> d.whole(2, 30)),
        draw.listOf(4, 4, d -> d.whole(2, 30)),
        draw.either());
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
