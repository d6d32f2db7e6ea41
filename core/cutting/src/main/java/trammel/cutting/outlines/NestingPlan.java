package trammel.cutting.outlines;

import java.math.BigDecimal;
import java.util.List;
import trammel.cutting.CuttingStatus;

/**
 * Parts nested on sheets.
 *
 * @param sheets every sheet used
 * @param price price of all sheets together
 * @param lowerBound no plan can cost less than this
 * @param status whether the plan is proven to be the cheapest
 * @param seconds how long the search took
 */
public record NestingPlan(
    List<NestedSheet> sheets,
    BigDecimal price,
    BigDecimal lowerBound,
    CuttingStatus status,
    double seconds) {
  public NestingPlan {
    sheets = List.copyOf(sheets);
  }
}
