package trammel.planning.catalog;

import java.math.BigDecimal;
import java.util.Optional;
import trammel.engine.quantity.Given;

/**
 * A line that the shop bills by a rule of its own: on every job, or for each of what an operation
 * of the plan counts.
 *
 * @param key its name in the catalog
 * @param title what it is, for quote and cost sheet
 * @param per {@link #EVERY_JOB}, or the key of the operation whose quantity it goes by
 * @param item key of the item that is billed; empty for work or a share
 * @param operation key of the operation that is billed; empty for an item or a share
 * @param quantity how many for each, above 0
 * @param share share of the price, such as the fee of a card; empty for an item or work
 */
public record ShopExtra(
    String key,
    String title,
    String per,
    Optional<String> item,
    Optional<String> operation,
    BigDecimal quantity,
    Optional<BigDecimal> share) {
  /** What {@code per} says for a line on every job. */
  public static final String EVERY_JOB = "job";

  public ShopExtra {
    Given.text("key of a rule", key, "Give it a short name.");
    Given.text("title of rule '" + key + "'", title, "Say what is billed.");
    Given.text("what rule '" + key + "' goes by", per, "Say job, or name an operation.");
    Given.decimal("quantity of rule '" + key + "'", quantity, 0, 100_000, "1 is usual.");
    int kinds =
        (item.isPresent() ? 1 : 0) + (operation.isPresent() ? 1 : 0) + (share.isPresent() ? 1 : 0);
    if (kinds != 1) {
      throw new IllegalArgumentException(
          "rule '"
              + key
              + "' has "
              + kinds
              + " of item, operation and share; allowed is one. Give the one that is billed.");
    }
    if (share.isPresent() && !per.equals(EVERY_JOB)) {
      throw new IllegalArgumentException(
          "rule '" + key + "' is a share of the price and goes by '" + per + "'. Write per: job.");
    }
    if (quantity.signum() == 0) {
      throw new IllegalArgumentException(
          "rule '" + key + "' bills 0 for each. Give more than 0, or take the rule out.");
    }
  }
}
