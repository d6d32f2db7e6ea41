package trammel.brackets.work;

import java.util.List;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * Work that the job needs done.
 *
 * @param operationKey key of the standard operation in the catalog
 * @param quantity how many of the operation's unit, above 0
 * @param driver what was counted, such as {@code 8 brackets}
 * @param why what asks for it
 * @param fits the ends of bars whose brackets it fits; empty for other work
 */
public record OperationNeed(
    String operationKey, double quantity, Phrase driver, Phrase why, List<FittedEnd> fits) {
  public OperationNeed {
    fits = List.copyOf(fits);
    Given.text("key of an operation", operationKey, "Give its catalog key.");
    Given.positive(
        "quantity of operation '" + operationKey + "'",
        quantity,
        100_000,
        "",
        "Leave it out for none.");
    Given.text("driver of operation '" + operationKey + "'", driver, "Say what was counted.");
    Given.text("reason for operation '" + operationKey + "'", why, "Say what asks for it.");
  }

  /** Work that fits no bracket of a bar. */
  public OperationNeed(String operationKey, double quantity, Phrase driver, Phrase why) {
    this(operationKey, quantity, driver, why, List.of());
  }

  /** Work that fits no bracket of a bar, of which pieces are counted. */
  public OperationNeed(String operationKey, double quantity, String driver, Phrase why) {
    this(operationKey, quantity, Phrase.text(driver), why);
  }
}
