package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.PlateNeed;
import trammel.cutting.background.Progress;
import trammel.cutting.background.TwoAtATime;
import trammel.cutting.sheets.CuttingMethod;
import trammel.cutting.sheets.SheetCutter;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetCuttingProblem;
import trammel.cutting.sheets.SheetPart;
import trammel.cutting.sheets.SheetStock;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CuttingPractice;
import trammel.planning.rack.Rack;
import trammel.trade.plates.Bounds;

/** Plans the cutting of every plate that a job needs, thickness by thickness. */
final class PlateSchedule {
  /** Effort of the search a thickness: the same plan on every machine, in some milliseconds. */
  private static final long EFFORT = 30;

  /** Lists of more plates are nested two thicknesses at a time. */
  private static final int MANY_PLATES = 160;

  private final Catalog catalog;
  private final Rack rack;

  PlateSchedule(Catalog catalog, Rack rack) {
    this.catalog = catalog;
    this.rack = rack;
  }

  List<PlateCut> cuts(List<PlateNeed> needs, Progress progress) {
    Map<String, List<PlateNeed>> byMaterial = new LinkedHashMap<>();
    for (PlateNeed need : needs) {
      List<PlateNeed> alike = byMaterial.get(need.plateKey());
      if (alike == null) {
        alike = new ArrayList<>();
        byMaterial.put(need.plateKey(), alike);
      }
      alike.add(need);
    }
    if (needs.size() > MANY_PLATES) {
      return sideBySide(byMaterial, progress);
    }
    List<PlateCut> cuts = new ArrayList<>(byMaterial.size());
    for (Map.Entry<String, List<PlateNeed>> material : byMaterial.entrySet()) {
      cuts.add(cut(catalog.plate(material.getKey()), material.getValue()));
    }
    return cuts;
  }

  private List<PlateCut> sideBySide(Map<String, List<PlateNeed>> byMaterial, Progress progress) {
    AtomicInteger done = new AtomicInteger();
    List<Callable<PlateCut>> work = new ArrayList<>();
    for (Map.Entry<String, List<PlateNeed>> material : byMaterial.entrySet()) {
      work.add(
          () -> {
            PlateCut cut = cut(catalog.plate(material.getKey()), material.getValue());
            int ready = done.incrementAndGet();
            progress.at("Nesting plates, " + ready + " of " + work.size() + " thicknesses done");
            return cut;
          });
    }
    return TwoAtATime.all(work);
  }

  private PlateCut cut(PlateMaterial material, List<PlateNeed> needs) {
    List<SheetStock> stock = new ArrayList<>(material.sheets().size());
    for (PlateMaterial.Sheet sheet : material.sheets()) {
      if (!sheet.inStock()) {
        continue;
      }
      String id = Math.round(sheet.widthMm()) + " x " + Math.round(sheet.lengthMm()) + " mm";
      stock.add(SheetStock.bought(id, sheet.lengthMm(), sheet.widthMm(), sheet.price()));
    }
    for (Rack.Drop drop : rack.drops(material.key())) {
      stock.add(SheetStock.remnant(drop.name(), drop.widthMm(), drop.lengthMm(), 1));
    }
    List<SheetPart> parts = new ArrayList<>(needs.size());
    for (PlateNeed need : needs) {
      Bounds bounds = need.plate().outline().bounds();
      parts.add(
          new SheetPart(
              need.plate().name(), bounds.widthMm(), bounds.heightMm(), need.quantity(), true));
    }
    CuttingPractice practice = catalog.cutting();
    SheetCuttingProblem problem =
        new SheetCuttingProblem(
            stock,
            parts,
            practice.sheetMarginMm(),
            practice.plateGapMm(),
            CuttingMethod.FREE,
            practice.usefulSheetMm());
    return new PlateCut(material, needs, plan(problem, new OutlineNesting(problem, needs)));
  }

  private static SheetCuttingPlan plan(SheetCuttingProblem problem, OutlineNesting outlines) {
    return outlines.isLong()
        ? outlines.ofLongList()
        : outlines.improved(SheetCutter.withEffort(EFFORT).cut(problem));
  }
}
