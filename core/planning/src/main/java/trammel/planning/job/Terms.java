package trammel.planning.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.trade.money.Contingency;
import trammel.trade.money.CostClass;
import trammel.trade.money.Markup;
import trammel.trade.money.ProgressPayment;

/**
 * What this job does differently from the shop's usual terms. Money is in the currency of the job;
 * percentages are exact ratios.
 *
 * @param labourRate price of an hour
 * @param overheadRate overhead of an hour
 * @param markups markups by class of cost; a class that is not named has the shop's
 * @param supplies shop supplies in proportion to labour, ratio
 * @param contingency how the price covers work that takes longer
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
 * @param extras lines of the job's own
 * @param leftOut work and parts of the plan that this job does without
 */
public record Terms(
    Optional<BigDecimal> labourRate,
    Optional<BigDecimal> overheadRate,
    Map<CostClass, Markup> markups,
    Optional<BigDecimal> supplies,
    Optional<Contingency> contingency,
    Optional<Tax> tax,
    Optional<BigDecimal> deposit,
    Optional<List<ProgressPayment>> progress,
    Optional<Integer> validDays,
    Optional<LocalDate> start,
    Optional<Currency> currency,
    Optional<Double> rustFactor,
    Optional<Double> accessFactor,
    Optional<Double> finishFactor,
    List<LimitOverride> limits,
    List<Extra> extras,
    List<LeftOut> leftOut) {
  /** Keeps its own copies of the lists. */
  public Terms {
    markups = Map.copyOf(markups);
    limits = List.copyOf(limits);
    extras = List.copyOf(extras);
    leftOut = List.copyOf(leftOut);
  }
}
