package trammel.planning.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import trammel.trade.money.ProgressPayment;

/**
 * What this job does differently from the shop's usual terms. Money is in the currency of the job;
 * percentages are exact ratios.
 *
 * @param labourRate price of an hour
 * @param overheadRate overhead of an hour
 * @param partsMarkup markup on bought parts, ratio
 * @param steelMarkup markup on steel, ratio
 * @param outsideMarkup markup on outside work, ratio
 * @param supplies shop supplies in proportion to labour, ratio
 * @param contingencyPercentile percentile of the hours that the price covers, 50 to 95
 * @param tax tax
 * @param deposit deposit in proportion to the price, ratio
 * @param progress payments between deposit and balance, shares of the price
 * @param validDays how many days the quote is good for
 * @param start day on which the work is to start
 * @param currency currency of all money
 * @param rustFactor factor on hours for rust
 * @param accessFactor factor on hours for access
 * @param finishFactor factor on hours for finish
 * @param limits limits of checks that this job moves, each with a reason
 */
public record Terms(
    Optional<BigDecimal> labourRate,
    Optional<BigDecimal> overheadRate,
    Optional<BigDecimal> partsMarkup,
    Optional<BigDecimal> steelMarkup,
    Optional<BigDecimal> outsideMarkup,
    Optional<BigDecimal> supplies,
    Optional<Integer> contingencyPercentile,
    Optional<Tax> tax,
    Optional<BigDecimal> deposit,
    Optional<List<ProgressPayment>> progress,
    Optional<Integer> validDays,
    Optional<LocalDate> start,
    Optional<Currency> currency,
    Optional<Double> rustFactor,
    Optional<Double> accessFactor,
    Optional<Double> finishFactor,
    List<LimitOverride> limits) {
  /** Keeps its own copy of the limits. */
  public Terms {
    limits = List.copyOf(limits);
  }
}
