package trammel.trade.labour;

import java.util.List;
import trammel.engine.quantity.Given;
import trammel.engine.quantity.Phrase;

/**
 * One line of the hours list: an operation so many times, under the factors of this job.
 *
 * @param operation the standard operation
 * @param quantity how many of its driver, 0 or more
 * @param driverText the quantity in words: "6 brackets"
 * @param factors factors of this job, at most one of each group of the operation
 * @param why which part, weld or answer asks for it
 */
public record OperationLine(
    Operation operation,
    double quantity,
    Phrase driverText,
    List<LabourFactor> factors,
    Phrase why) {

  public OperationLine {
    Given.present("operation of an hours line", operation, "Choose one from the catalog.");
    Given.within(
        "quantity of the operation '" + operation.key() + "'",
        quantity,
        0,
        100_000,
        "",
        "Count its driver, the " + operation.driverUnit() + ".");
    Given.text("quantity text of '" + operation.key() + "'", driverText, "For example 6 brackets.");
    Given.text("reason for the operation '" + operation.key() + "'", why, "Say what asks for it.");
    factors = List.copyOf(factors);
    checkFactors(operation, factors);
  }

  private static void checkFactors(Operation operation, List<LabourFactor> factors) {
    for (int i = 0; i < factors.size(); i++) {
      String group = factors.get(i).group();
      if (!operation.factorGroups().contains(group)) {
        throw new IllegalArgumentException(
            "The operation '"
                + operation.key()
                + "' was given a factor of '"
                + group
                + "'; it takes "
                + operation.factorGroups()
                + ". Leave the factor out, or add its group to the operation.");
      }
      for (int j = 0; j < i; j++) {
        if (factors.get(j).group().equals(group)) {
          throw new IllegalArgumentException(
              "The operation '"
                  + operation.key()
                  + "' was given two factors of '"
                  + group
                  + "': "
                  + factors.get(j).title()
                  + " and "
                  + factors.get(i).title()
                  + "; allowed is one of a group. Choose the one that holds.");
        }
      }
    }
  }

  /** Product of all factors. */
  public double factor() {
    double product = 1;
    for (LabourFactor factor : factors) {
      product *= factor.multiplier();
    }
    return product;
  }

  /** Hours of the line: hours for one × quantity × factors. */
  public ThreePoint hours() {
    return operation.hoursPerUnit().times(quantity * factor());
  }
}
