package trammel.planning.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.trade.money.CostBuildUp;
import trammel.trade.money.Money;
import trammel.trade.money.PriceLine;

/**
 * What a line of one price is more than in another.
 *
 * @param title the line, or what is added below the lines
 * @param change how much more, below 0 for less
 */
public record LineDifference(String title, Money change) {

  /**
   * The lines that are not the same in two prices, the greatest first. They add up to the
   * difference of the prices with tax.
   */
  public static List<LineDifference> between(CostBuildUp first, CostBuildUp other) {
    Map<String, LineDifference> byKey = new LinkedHashMap<>();
    Money none = Money.zero(first.terms().currency());
    for (PriceLine line : other.lines()) {
      add(byKey, line.line().key(), line.line().title(), line.price());
    }
    for (PriceLine line : first.lines()) {
      add(byKey, line.line().key(), line.line().title(), none.minus(line.price()));
    }
    add(byKey, " tax", other.terms().tax().name(), other.tax().minus(first.tax()));
    add(
        byKey,
        " rounding",
        "rounding of the total",
        other.cashRounding().minus(first.cashRounding()));
    List<LineDifference> found = new ArrayList<>(byKey.values());
    found.removeIf(line -> line.change().isZero());
    found.sort(
        Comparator.comparing((LineDifference line) -> line.change().amount().abs()).reversed());
    return List.copyOf(found);
  }

  private static void add(
      Map<String, LineDifference> byKey, String key, String title, Money change) {
    LineDifference before = byKey.get(key);
    byKey.put(
        key,
        before == null
            ? new LineDifference(title, change)
            : new LineDifference(before.title(), before.change().plus(change)));
  }
}
