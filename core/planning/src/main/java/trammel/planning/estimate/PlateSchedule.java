package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.PlateMaterial;
import trammel.planning.plates.Bounds;
import trammel.planning.work.PlateNeed;

/** Interim: shelves on sheets of one size. */
final class PlateSchedule {
  private final Catalog catalog;

  PlateSchedule(Catalog catalog) {
    this.catalog = catalog;
  }

  List<PlateCut> cuts(List<PlateNeed> needs) {
    Map<String, List<PlateNeed>> by = new LinkedHashMap<>();
    for (PlateNeed need : needs) {
      by.computeIfAbsent(need.plateKey(), key -> new ArrayList<>()).add(need);
    }
    List<PlateCut> cuts = new ArrayList<>();
    for (Map.Entry<String, List<PlateNeed>> e : by.entrySet()) {
      cuts.add(cut(catalog.plate(e.getKey()), e.getValue()));
    }
    return cuts;
  }

  private PlateCut cut(PlateMaterial material, List<PlateNeed> needs) {
    List<double[]> sizes = new ArrayList<>();
    double gap = catalog.cutting().tableKerfMm();
    for (PlateNeed need : needs) {
      Bounds b = need.plate().outline().bounds();
      double w = b.maxXMm() - b.minXMm() + gap;
      double h = b.maxYMm() - b.minYMm() + gap;
      for (int i = 0; i < need.quantity(); i++) {
        sizes.add(new double[] {Math.max(w, h), Math.min(w, h)});
      }
    }
    sizes.sort((a, b) -> Double.compare(b[1], a[1]));
    PlateCut.Bought best = null;
    BigDecimal bestCost = null;
    for (PlateMaterial.Sheet sheet : material.sheets()) {
      int n = count(sheet, sizes);
      if (n < 0) {
        continue;
      }
      BigDecimal cost = sheet.price().multiply(BigDecimal.valueOf(n));
      if (bestCost == null || cost.compareTo(bestCost) < 0) {
        bestCost = cost;
        best = new PlateCut.Bought(sheet.widthMm(), sheet.lengthMm(), sheet.price(), n);
      }
    }
    if (best == null) {
      throw new IllegalArgumentException("no sheet of " + material.title() + " is large enough");
    }
    return new PlateCut(material, needs, List.of(best));
  }

  private int count(PlateMaterial.Sheet sheet, List<double[]> sizes) {
    double m = 2 * catalog.cutting().sheetMarginMm();
    double length = Math.max(sheet.widthMm(), sheet.lengthMm()) - m;
    double width = Math.min(sheet.widthMm(), sheet.lengthMm()) - m;
    int n = 0;
    double x = length;
    double y = width;
    double shelf = 0;
    for (double[] s : sizes) {
      if (s[0] > length || s[1] > width) {
        return -1;
      }
      if (x + s[0] > length) {
        y += shelf;
        if (n == 0 || y + s[1] > width) {
          n++;
          y = 0;
        }
        shelf = s[1];
        x = 0;
      }
      x += s[0];
    }
    return n;
  }
}
