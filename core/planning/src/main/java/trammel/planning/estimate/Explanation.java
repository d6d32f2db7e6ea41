package trammel.planning.estimate;

import java.util.List;
import trammel.trade.money.Money;

/**
 * How one figure of a price came about.
 *
 * @param name the name by which it is asked for
 * @param title what it is
 * @param amount the figure
 * @param steps what leads to it, in order
 */
public record Explanation(String name, String title, Money amount, List<Step> steps) {
  public Explanation {
    steps = List.copyOf(steps);
  }

  /**
   * One step.
   *
   * @param text what it is
   * @param figure what it comes to, in words; blank if the text says it all
   */
  public record Step(String text, String figure) {}
}
