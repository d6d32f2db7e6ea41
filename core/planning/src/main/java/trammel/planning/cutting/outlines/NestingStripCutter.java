package trammel.planning.cutting.outlines;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import trammel.planning.cutting.CuttingStatus;
import trammel.planning.cutting.Deadline;
import trammel.planning.cutting.sheets.PlacedPart;
import trammel.planning.cutting.sheets.SheetPart;
import trammel.planning.cutting.sheets.StripCutter;
import trammel.planning.cutting.sheets.StripPlan;
import trammel.planning.cutting.sheets.StripProblem;

/** Nests outlines on a short length of strip. */
public final class NestingStripCutter {
  /** Time a problem is given unless the caller says otherwise. */
  public static final Duration USUAL_LIMIT = Duration.ofSeconds(10);

  private final Duration limit;

  public NestingStripCutter() {
    this(USUAL_LIMIT);
  }

  /**
   * @param limit longest time for one problem; what is best by then is handed over
   */
  public NestingStripCutter(Duration limit) {
    this.limit = limit;
    Deadline.in(limit);
  }

  /** Places all parts of the problem. */
  public NestingStripPlan cut(NestingStripProblem problem) {
    Deadline deadline = Deadline.in(limit);
    OutlineShape[][] items = Nest.items(problem.parts());
    if (items.length == 0) {
      return new NestingStripPlan(
          List.of(), 0, 0, CuttingStatus.PROVEN_OPTIMAL, deadline.elapsedSeconds());
    }
    Search search = new Search(problem, items, deadline);
    search.run();
    double lengthMm = search.best.reach() + 2 * problem.marginMm();
    double boundMm = Math.min(lengthMm, boundMm(problem, items));
    return new NestingStripPlan(
        placed(problem.parts(), search.best, 0, problem.marginMm()),
        lengthMm,
        boundMm,
        lengthMm - boundMm < 1e-9 * lengthMm ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
        deadline.elapsedSeconds());
  }

  /** By area, and by the longest part. */
  private static double boundMm(NestingStripProblem problem, OutlineShape[][] items) {
    double areaMm2 = 0;
    for (OutlinePart part : problem.parts()) {
      areaMm2 += part.areaMm2() * part.quantity();
    }
    double boundMm = areaMm2 / (problem.widthMm() - 2 * problem.marginMm());
    for (OutlineShape[] ways : items) {
      double shortestMm = Double.POSITIVE_INFINITY;
      for (OutlineShape way : ways) {
        shortestMm = Math.min(shortestMm, way.width());
      }
      boundMm = Math.max(boundMm, shortestMm);
    }
    return boundMm + 2 * problem.marginMm();
  }

  /** The items of one sheet as placed parts. */
  static List<PlacedOutline> placed(
      List<OutlinePart> parts, Nest nest, int sheet, double marginMm) {
    List<PlacedOutline> placed = new ArrayList<>();
    int item = 0;
    for (OutlinePart part : parts) {
      for (int i = 0; i < part.quantity(); i++, item++) {
        if (nest.sheet[item] == sheet) {
          placed.add(
              new PlacedOutline(
                  part.id(),
                  part.turnsDeg().get(nest.way[item]),
                  marginMm + nest.x[item],
                  marginMm + nest.y[item]));
        }
      }
    }
    return placed;
  }

  /** One strip being shortened. */
  private static final class Search {
    private static final long SEED = 20_260_105L;
    private static final double[] SHORTER = {0.02, 0.01, 0.005, 0.0025, 0.001};
    private static final double[] DENSITIES = {0.8, 0.74, 0.68, 0.6, 0.5};
    private static final int PATIENCE = 60;
    private static final int SQUEEZE_PATIENCE = 40;
    private static final double NOISE = 1e-9;
    private static final double RECTANGLE_PART = 0.05;
    private static final double TOLERANCE_MM = 2e-6;

    private final double clearance;
    private final double areaMm2;
    private final double longest;
    private final Deadline deadline;
    private final Random random = new Random(SEED);
    private final Nest nest;
    private final Nest best;
    private final OutlineSeparation separation;

    Search(NestingStripProblem problem, OutlineShape[][] items, Deadline deadline) {
      this.deadline = deadline;
      double widthMm = problem.widthMm() - 2 * problem.marginMm();
      this.nest = new Nest(items, new double[] {0}, new double[] {widthMm});
      this.clearance = problem.kerfMm() + NOISE * widthMm;
      this.separation = new OutlineSeparation(nest, clearance, random);
      double area = 0;
      for (OutlinePart part : problem.parts()) {
        area += part.areaMm2() * part.quantity();
      }
      this.areaMm2 = area;
      double most = 0;
      for (int i = 0; i < items.length; i++) {
        most = Math.max(most, nest.shape(i).width());
      }
      this.longest = most;
      rectangles();
      this.best = nest.copy();
    }

    /** A first plan: the one for the rectangles around the outlines, on the strip upended. */
    private void rectangles() {
      List<SheetPart> parts = new ArrayList<>();
      for (int i = 0; i < nest.items(); i++) {
        for (int w = 0; w < nest.shapes[i].length; w++) {
          if (nest.shapes[i][w].height() <= nest.sheetHeight[0] + TOLERANCE_MM) {
            nest.way[i] = w;
            break;
          }
        }
        OutlineShape shape = nest.shape(i);
        parts.add(new SheetPart(Integer.toString(i), shape.height(), shape.width(), 1, false));
      }
      double seconds = Math.max(0.02, Math.min(1, deadline.secondsLeft() * RECTANGLE_PART));
      StripPlan plan =
          new StripCutter(Duration.ofMillis((long) (1000 * seconds)))
              .cut(
                  new StripProblem(
                      nest.sheetHeight[0] + TOLERANCE_MM, parts, 0, clearance + TOLERANCE_MM));
      for (PlacedPart part : plan.parts()) {
        int item = Integer.parseInt(part.partId());
        OutlineShape shape = nest.shape(item);
        double y = Math.min(part.xMm(), nest.sheetHeight[0] - shape.height());
        nest.put(item, nest.way[item], 0, part.yMm() - shape.minX, y - shape.minY);
      }
      nest.sheetWidth[0] = nest.reach();
    }

    void run() {
      squeeze();
      int pace = 0;
      int failures = 0;
      while (!deadline.isPast()) {
        shorten(best.reach() * (1 - SHORTER[pace]));
        if (failures > 0) {
          disturb();
        }
        if (separation.run(PATIENCE, deadline)) {
          best.copyFrom(nest);
          failures = 0;
        } else {
          failures++;
          nest.copyFrom(best);
          if (failures > 2 && pace < SHORTER.length - 1) {
            pace++;
            failures = 0;
          }
        }
      }
    }

    /** Pushes the first plan together as a whole, as densely as comes out at once. */
    private void squeeze() {
      for (double density : DENSITIES) {
        double length = areaMm2 / (nest.sheetHeight[0] * density);
        if (length < best.reach() && length > longest && !deadline.isPast()) {
          double ratio = length / nest.sheetWidth[0];
          separation.forget();
          nest.sheetWidth[0] = length;
          for (int i = 0; i < nest.items(); i++) {
            nest.x[i] *= ratio;
            nest.clamp(i);
          }
          if (separation.run(SQUEEZE_PATIENCE, deadline.part(0.2))) {
            best.copyFrom(nest);
            return;
          }
          nest.copyFrom(best);
        }
      }
    }

    private void shorten(double length) {
      separation.forget();
      nest.sheetWidth[0] = length;
      for (int i = 0; i < nest.items(); i++) {
        nest.clamp(i);
      }
    }

    /** Changes the places of two parts. */
    private void disturb() {
      int a = random.nextInt(nest.items());
      int b = random.nextInt(nest.items());
      double x = nest.x[a];
      double y = nest.y[a];
      nest.put(a, nest.way[a], 0, nest.x[b], nest.y[b]);
      nest.put(b, nest.way[b], 0, x, y);
      nest.clamp(a);
      nest.clamp(b);
    }
  }
}
