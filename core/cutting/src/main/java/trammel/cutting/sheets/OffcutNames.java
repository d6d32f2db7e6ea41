package trammel.cutting.sheets;

import java.util.HashMap;
import java.util.Map;

/**
 * Names the left-overs of a plan's sheets: by the stock, and by which sheet of it they are left on.
 */
final class OffcutNames {
  private final Map<String, Integer> cut = new HashMap<>();

  /** What those of the next sheet of a stock are called. */
  String ofNext(SheetStock stock) {
    int number = cut.merge(stock.id(), 1, Integer::sum);
    return stock.id() + " no. " + number + " offcut";
  }
}
