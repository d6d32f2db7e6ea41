package trammel.app.cutfile;

import java.math.BigDecimal;
import java.util.List;
import trammel.cutting.CuttingStatus;

/**
 * What to cut from what, for one section or for the whole file.
 *
 * @param section its name; blank where the file has only one
 * @param measure what the objective counts
 * @param objective what the plan costs or needs
 * @param lowerBound no plan costs or needs less
 * @param status whether the plan is proven to be the best
 * @param seconds how long the search took
 * @param stock every bar, sheet or strip used
 */
public record CutPlan(
    String section,
    Measure measure,
    BigDecimal objective,
    BigDecimal lowerBound,
    CuttingStatus status,
    double seconds,
    List<CutStock> stock) {
  /** What an objective counts. */
  public enum Measure {
    /** Money for the stock. */
    PRICE,
    /** Bars or sheets: every one has the price 1. */
    COUNT,
    /** Length of a strip. */
    LENGTH
  }

  public CutPlan {
    stock = List.copyOf(stock);
  }
}
