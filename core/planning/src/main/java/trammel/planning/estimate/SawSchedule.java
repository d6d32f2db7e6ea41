package trammel.planning.estimate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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

  /** Every section with the plans among which the charges of its supplier decide. */
  List<StickChoice.Choice> choices(List<TubeNeed> needs, Progress progress) {
    Map<String, List<TubeNeed>> bySection = new LinkedHashMap<>();
    for (TubeNeed need : needs) {
      List<TubeNeed> alike = bySection.get(need.barKey());
      if (alike == null) {
        alike = new ArrayList<>();
        bySection.put(need.barKey(), alike);
      }
      alike.add(need);
    }
    List<StickChoice.Choice> cuts = new ArrayList<>(bySection.size());
    for (Map.Entry<String, List<TubeNeed>> section : bySection.entrySet()) {
      progress.at("Cutting sticks, " + cuts.size() + " of " + bySection.size() + " sections done");
      cuts.add(
          choice(catalog.bar(section.getKey()), section.getValue(), EFFORT / bySection.size()));
    }
    return cuts;
  }

  private StickChoice.Choice choice(BarMaterial material, List<TubeNeed> needs, long steps) {
    SectionCut cheapest = cut(material, needs, steps, Double.POSITIVE_INFINITY);
    Optional<Double> longMm = catalog.supplier(material.supplier()).longLengthMm();
    boolean overLength =
        longMm.isPresent()
            && Purchases.sticks(cheapest).stream()
                .anyMatch(sticks -> sticks.lengthMm() > longMm.get());
    if (!overLength) {
      return new StickChoice.Choice(cheapest, Optional.empty(), false);
    }
    return new StickChoice.Choice(cheapest, shorter(material, needs, steps, longMm.get()), true);
  }

  /** The plan without over-length sticks; empty where a piece is too long for the others. */
  private Optional<SectionCut> shorter(
      BarMaterial material, List<TubeNeed> needs, long steps, double longestMm) {
    double heldMm =
        material.sticks().stream()
            .filter(stick -> stick.inStock() && stick.lengthMm() <= longestMm)
            .mapToDouble(stick -> stick.lengthMm() - 2 * catalog.cutting().sawTrimMm())
            .max()
            .orElse(0);
    return needs.stream().allMatch(need -> need.cutLengthMm() <= heldMm)
        ? Optional.of(cut(material, needs, steps, longestMm))
        : Optional.empty();
  }

  private SectionCut cut(BarMaterial material, List<TubeNeed> needs, long steps, double longestMm) {
    List<BarStock> stock = new ArrayList<>(material.sticks().size());
    for (BarMaterial.Stick stick : material.sticks()) {
      if (!stick.inStock() || stick.lengthMm() > longestMm) {
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
