package trammel.trade.money;

import java.math.BigDecimal;
import trammel.engine.quantity.Given;

/** How the price covers work that takes longer than expected. */
public sealed interface Contingency {

  /** Nothing is added. */
  record None() implements Contingency {}

  /**
   * A fixed part of the labour.
   *
   * @param fraction 0 to 1; 0.08 for 8 %
   */
  record PartOfLabour(BigDecimal fraction) implements Contingency {
    public PartOfLabour {
      Given.decimal("contingency", fraction, 0, 1, "Give a fraction of labour: 0.08 for 8 %.");
    }
  }

  /**
   * The hours from the mean up to those that are not exceeded with a given chance.
   *
   * @param chance 0.5 to 0.99; 0.8 for P80
   */
  record HoursToChance(double chance) implements Contingency {
    public HoursToChance {
      Given.within("chance that the hours suffice", chance, 0.5, 0.99, "", "P80 is 0.8.");
    }
  }
}
