package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.List;

/** A whole plan in terms of patterns: each with the number of bars cut by it. */
final class CutList {
  final List<Pattern> patterns = new ArrayList<>();
  final List<Integer> times = new ArrayList<>();

  /** Total price in price steps. */
  long price;

  void add(BarModel model, Pattern pattern, int count) {
    patterns.add(pattern);
    times.add(count);
    price = Math.addExact(price, model.price[pattern.stock] * count);
  }

  void addAll(BarModel model, CutList other) {
    for (int i = 0; i < other.patterns.size(); i++) {
      add(model, other.patterns.get(i), other.times.get(i));
    }
  }

  CutList copy() {
    CutList copy = new CutList();
    copy.patterns.addAll(patterns);
    copy.times.addAll(times);
    copy.price = price;
    return copy;
  }
}
