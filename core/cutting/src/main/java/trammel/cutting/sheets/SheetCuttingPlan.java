package trammel.cutting.sheets;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import trammel.cutting.CuttingStatus;

/**
 * What to cut from which sheet.
 *
 * @param sheets every sheet used
 * @param price price of all sheets together
 * @param lowerBound no plan can cost less than this
 * @param status whether the plan is proven to be the cheapest
 * @param seconds how long the search took
 * @param offcuts left-over rectangles that go back on the rack
 */
public record SheetCuttingPlan(
    List<CutSheet> sheets,
    BigDecimal price,
    BigDecimal lowerBound,
    CuttingStatus status,
    double seconds,
    List<SheetOffcut> offcuts) {
  public SheetCuttingPlan {
    sheets = List.copyOf(sheets);
    offcuts = List.copyOf(offcuts);
  }

  /** How far the price may lie above the optimum, as a part of the price: 0 when proven. */
  public double gap() {
    if (status == CuttingStatus.PROVEN_OPTIMAL || price.signum() == 0) {
      return 0;
    }
    return price.subtract(lowerBound).divide(price, MathContext.DECIMAL64).doubleValue();
  }
}
