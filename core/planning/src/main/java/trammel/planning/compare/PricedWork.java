package trammel.planning.compare;

import java.util.List;
import trammel.planning.estimate.Estimate;
import trammel.trade.labour.HoursEstimate;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.CostLine;
import trammel.trade.money.PriceTerms;
import trammel.trade.money.Pricing;

/**
 * The work of a variant and the terms at which it is priced.
 *
 * @param bought what is bought for it
 * @param hours its hours
 * @param terms its terms
 */
public record PricedWork(List<CostLine> bought, HoursEstimate hours, PriceTerms terms) {
  public PricedWork {
    bought = List.copyOf(bought);
  }

  /** The work and the terms of an estimated job. */
  public static PricedWork of(Estimate estimate) {
    return new PricedWork(estimate.bought(), estimate.hours(), estimate.price().terms());
  }

  /** The price. */
  public CostBuildUp price() {
    return new Pricing(terms).price(bought, hours);
  }

  /** The same work at other terms. */
  PricedWork at(PriceTerms other) {
    return new PricedWork(bought, hours, other);
  }
}
