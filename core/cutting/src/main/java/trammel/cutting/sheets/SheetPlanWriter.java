package trammel.cutting.sheets;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import trammel.cutting.CuttingStatus;
import trammel.cutting.internal.Deadline;

/** Turns layouts in steps back into named parts on named sheets. */
final class SheetPlanWriter {
  private final SheetCuttingProblem problem;
  private final SheetModel model;
  private final List<Deque<SheetPart>> waiting;

  SheetPlanWriter(SheetCuttingProblem problem, SheetModel model) {
    this.problem = problem;
    this.model = model;
    this.waiting = waiting(model);
  }

  /** Per type the parts to hand out, each as often as it is asked for. */
  static List<Deque<SheetPart>> waiting(SheetModel model) {
    List<Deque<SheetPart>> waiting = new ArrayList<>();
    for (int t = 0; t < model.types(); t++) {
      Deque<SheetPart> queue = new ArrayDeque<>();
      for (SheetPart part : model.partsOfType(t)) {
        for (int i = 0; i < part.quantity(); i++) {
          queue.add(part);
        }
      }
      waiting.add(queue);
    }
    return waiting;
  }

  SheetCuttingPlan write(SheetSet set, long lowerBound, SheetFill fill, Deadline deadline) {
    List<CutSheet> sheets = new ArrayList<>();
    List<SheetOffcut> offcuts = new ArrayList<>();
    OffcutNames names = new OffcutNames();
    for (int i = 0; i < set.sheets.size(); i++) {
      int sheet = set.sheets.get(i);
      Layout layout = new SheetTidier(model, fill).tidied(sheet, set.layouts.get(i));
      SheetStock stock = model.stock(sheet);
      sheets.add(new CutSheet(stock, placed(layout, model, waiting, problem.marginMm())));
      addOffcuts(offcuts, sheet, layout, names.ofNext(stock));
    }
    boolean proven = lowerBound >= set.price;
    return new SheetCuttingPlan(
        sheets,
        model.money(set.price),
        model.money(Math.min(lowerBound, set.price)),
        proven ? CuttingStatus.PROVEN_OPTIMAL : CuttingStatus.BOUNDED,
        deadline.elapsedSeconds(),
        offcuts);
  }

  static List<PlacedPart> placed(
      Layout layout, SheetModel model, List<Deque<SheetPart>> waiting, double marginMm) {
    List<PlacedPart> placed = new ArrayList<>();
    for (int i = 0; i < layout.parts; i++) {
      SheetPart part = waiting.get(layout.type[i]).remove();
      boolean turned = layout.turned[i];
      placed.add(
          new PlacedPart(
              part.id(),
              marginMm + layout.x[i] * model.stepMm,
              marginMm + layout.y[i] * model.stepMm,
              turned ? part.heightMm() : part.widthMm(),
              turned ? part.widthMm() : part.heightMm(),
              turned ? 90 : 0));
    }
    return placed;
  }

  private void addOffcuts(List<SheetOffcut> offcuts, int sheet, Layout layout, String name) {
    FreeRectangles free = new FreeRectangles(model, sheet, layout);
    double kerfMm = problem.kerfMm();
    int letter = 0;
    for (int[] r : free.disjoint(problem.method())) {
      double widthMm = r[2] * model.stepMm - kerfMm;
      double heightMm = r[3] * model.stepMm - kerfMm;
      if (Math.min(widthMm, heightMm) >= Math.max(problem.usefulOffcutMm(), model.stepMm)) {
        offcuts.add(
            new SheetOffcut(
                name + (letter == 0 ? "" : " " + (letter + 1)),
                model.stock(sheet).id(),
                problem.marginMm() + r[0] * model.stepMm,
                problem.marginMm() + r[1] * model.stepMm,
                widthMm,
                heightMm));
        letter++;
      }
    }
  }
}
