package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import trammel.brackets.material.BarMaterial;
import trammel.brackets.work.TubeNeed;
import trammel.cutting.background.Progress;
import trammel.cutting.bars.BarCutter;
import trammel.cutting.bars.BarCuttingProblem;
import trammel.cutting.bars.BarPiece;
import trammel.cutting.bars.BarStock;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.CuttingPractice;
import trammel.planning.rack.Rack;

/** Plans the sawing of every section that a job needs. */
final class SawSchedule {
  /** Steps of the search over all sections together, about ten seconds. */
  private static final long EFFORT = 5_000_000_000L;

  private final Catalog catalog;
  private final Rack rack;

  SawSchedule(Catalog catalog, Rack rack) {
    this.catalog = catalog;
    this.rack = rack;
  }

  List<SectionCut> cuts(List<TubeNeed> needs, Progress progress) {
    Map<String, List<TubeNeed>> bySection = new LinkedHashMap<>();
    for (TubeNeed need : needs) {
      List<TubeNeed> alike = bySection.get(need.barKey());
      if (alike == null) {
        alike = new ArrayList<>();
        bySection.put(need.barKey(), alike);
      }
      alike.add(need);
    }
    List<SectionCut> cuts = new ArrayList<>(bySection.size());
    for (Map.Entry<String, List<TubeNeed>> section : bySection.entrySet()) {
      progress.at("Cutting sticks, " + cuts.size() + " of " + bySection.size() + " sections done");
      cuts.add(cut(catalog.bar(section.getKey()), section.getValue(), EFFORT / bySection.size()));
    }
    return cuts;
  }

  private SectionCut cut(BarMaterial material, List<TubeNeed> needs, long steps) {
    List<BarStock> stock = new ArrayList<>(material.sticks().size());
    for (BarMaterial.Stick stick : material.sticks()) {
      if (!stick.inStock()) {
        continue;
      }
      String id = material.key() + " x " + Math.round(stick.lengthMm()) + " mm";
      stock.add(new BarStock(id, stick.lengthMm(), stick.price(), OptionalInt.empty(), false));
    }
    for (Rack.Stick stick : rack.sticks(material.key())) {
      stock.add(BarStock.remnant(stick.name(), stick.lengthMm(), 1));
    }
    List<BarPiece> pieces = new ArrayList<>(needs.size());
    for (TubeNeed need : needs) {
      pieces.add(new BarPiece(need.name(), need.cutLengthMm(), need.quantity()));
    }
    CuttingPractice practice = catalog.cutting();
    BarCuttingProblem problem =
        new BarCuttingProblem(
            stock, pieces, practice.sawKerfMm(), 0, practice.sawTrimMm(), practice.usefulStickMm());
    return new SectionCut(material, needs, BarCutter.withEffort(steps).cut(problem));
  }
}
