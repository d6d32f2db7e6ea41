package trammel.cutting.bars;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import trammel.cutting.CuttingStatus;

/**
 * What to cut from which bar.
 *
 * @param bars every bar used, in cutting order
 * @param price price of all bars together
 * @param lowerBound no plan can cost less than this
 * @param status whether the plan is proven to be the cheapest
 * @param seconds how long the search took
 * @param offcuts left-over lengths that go back on the rack
 */
public record BarCuttingPlan(
    List<CutBar> bars,
    BigDecimal price,
    BigDecimal lowerBound,
    CuttingStatus status,
    double seconds,
    List<BarOffcut> offcuts) {
  public BarCuttingPlan {
    bars = List.copyOf(bars);
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
