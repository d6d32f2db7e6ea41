package trammel.planning.estimate;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.brackets.material.PlateMaterial;
import trammel.brackets.work.PlateNeed;
import trammel.cutting.sheets.CutSheet;
import trammel.cutting.sheets.SheetCuttingPlan;
import trammel.cutting.sheets.SheetStock;

/**
 * What is cut from plate of one thickness, and from which sheets.
 *
 * @param material the plate
 * @param needs the plates to cut
 * @param plan which sheet each plate comes from
 */
public record PlateCut(PlateMaterial material, List<PlateNeed> needs, SheetCuttingPlan plan) {
  public PlateCut {
    needs = List.copyOf(needs);
  }

  /**
   * Sheets of one size.
   *
   * @param widthMm width (mm)
   * @param lengthMm length (mm)
   * @param price price of one
   * @param count how many
   */
  public record Bought(double widthMm, double lengthMm, BigDecimal price, int count) {}

  /** The sheets to buy, by size; what comes from the rack is not among them. */
  public List<Bought> bought() {
    Map<String, Bought> bySize = new LinkedHashMap<>();
    for (CutSheet sheet : plan.sheets()) {
      SheetStock stock = sheet.stock();
      if (stock.remnant()) {
        continue;
      }
      Bought before = bySize.get(stock.id());
      int count = before == null ? 1 : before.count() + 1;
      bySize.put(stock.id(), new Bought(stock.heightMm(), stock.widthMm(), stock.price(), count));
    }
    return List.copyOf(bySize.values());
  }

  /** Finished mass of the plates that stay on the vehicle (kg). */
  public double addedKg() {
    double areaMm2 = 0;
    for (PlateNeed need : needs) {
      if (need.stays()) {
        areaMm2 += need.plate().outline().areaMm2() * need.quantity();
      }
    }
    return material.form().massKg(areaMm2);
  }

  /** The plates by name, as a list in words. */
  public String names() {
    StringBuilder names = new StringBuilder();
    for (PlateNeed need : needs) {
      names
          .append(names.length() == 0 ? "" : ", ")
          .append(need.quantity())
          .append(" x ")
          .append(need.plate().name());
    }
    return names.toString();
  }
}
