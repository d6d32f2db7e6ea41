package trammel.cutting.sheets;

import java.util.ArrayList;
import java.util.List;

/** The rectangles worth keeping that are left on a sheet whose parts lie where they lie. */
final class LeftOvers {
  /** Places are rounded to this, away from the parts (mm). */
  private static final double STEP_MM = 0.01;

  private final double marginMm;
  private final double gapMm;
  private final double usefulMm;

  LeftOvers(SheetCuttingProblem problem) {
    marginMm = problem.marginMm();
    gapMm = problem.kerfMm();
    usefulMm = problem.usefulOffcutMm();
  }

  /**
   * The left-overs of one sheet, largest first.
   *
   * @param name what they are called; a second one and those after it get a number
   */
  List<SheetOffcut> of(CutSheet sheet, String name) {
    FreeRectangles free =
        new FreeRectangles(
            down(sheet.stock().widthMm() - 2 * marginMm),
            down(sheet.stock().heightMm() - 2 * marginMm));
    for (PlacedPart part : sheet.parts()) {
      free.put(around(part));
    }
    List<SheetOffcut> kept = new ArrayList<>();
    for (int[] r : free.disjoint(down(gapMm + STEP_MM))) {
      SheetOffcut offcut =
          new SheetOffcut(
              name + (kept.isEmpty() ? "" : " " + (kept.size() + 1)),
              sheet.stock().id(),
              marginMm + r[0] * STEP_MM,
              marginMm + r[1] * STEP_MM,
              r[2] * STEP_MM,
              r[3] * STEP_MM);
      if (Math.min(offcut.widthMm(), offcut.heightMm()) >= usefulMm) {
        kept.add(offcut);
      }
    }
    return kept;
  }

  private int[] around(PlacedPart part) {
    int left = down(part.xMm() - marginMm - gapMm);
    int low = down(part.yMm() - marginMm - gapMm);
    int right = -down(marginMm - part.xMm() - part.widthMm() - gapMm);
    int high = -down(marginMm - part.yMm() - part.heightMm() - gapMm);
    return new int[] {left, low, right - left, high - low};
  }

  private static int down(double mm) {
    return (int) Math.floor(mm / STEP_MM);
  }
}
