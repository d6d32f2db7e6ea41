package trammel.planning.draft;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.PlateNeed;
import trammel.brackets.work.WorkPlan;
import trammel.engine.quantity.Phrase;
import trammel.planning.catalog.Catalog;
import trammel.trade.plates.Bounds;

/** Whether the plates of a plan come out of the sheets that are sold. */
final class SheetRoom {
  private SheetRoom() {}

  /**
   * @throws UnworkableLayoutException if a plate is longer than every sheet of its kind leaves
   *     between its edges
   */
  static void refuseLonger(WorkPlan plan, Catalog catalog) {
    for (PlateNeed need : plan.plates()) {
      Bounds bounds = need.plate().outline().bounds();
      double longMm = Math.max(bounds.widthMm(), bounds.heightMm());
      double mostMm = longestMm(catalog.plate(need.plateKey()), catalog);
      if (longMm > mostMm) {
        throw new UnworkableLayoutException(
            Phrase.of(
                "{} is {} long and its sheets give {} at most; let chosen.boxing end nearer to the"
                    + " axle where it asks for that, move what the plate stands behind, or list a"
                    + " longer sheet in the shop's catalog",
                need.plate().name(),
                length(longMm),
                length(mostMm)));
      }
    }
  }

  private static double longestMm(PlateMaterial material, Catalog catalog) {
    return material.sheets().stream()
            .mapToDouble(sheet -> Math.max(sheet.widthMm(), sheet.lengthMm()))
            .max()
            .orElseThrow()
        - 2 * catalog.cutting().sheetMarginMm();
  }
}
