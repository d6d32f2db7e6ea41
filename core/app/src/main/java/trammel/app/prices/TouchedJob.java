package trammel.app.prices;

import trammel.trade.money.Money;

/**
 * What new prices do to a job's quote.
 *
 * @param file the job file
 * @param number the job's number
 * @param before its price with tax
 * @param after its price with tax at the new prices
 */
public record TouchedJob(String file, String number, Money before, Money after) {
  /** True if its price is another. */
  public boolean isTouched() {
    return after.compareTo(before) != 0;
  }
}
