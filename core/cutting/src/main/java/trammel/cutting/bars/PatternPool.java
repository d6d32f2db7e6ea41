package trammel.cutting.bars;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All patterns met so far, each once. */
final class PatternPool {
  private final List<Pattern> patterns = new ArrayList<>();
  private final Set<Pattern> known = new HashSet<>();

  boolean add(Pattern pattern) {
    boolean isNew = known.add(pattern);
    if (isNew) {
      patterns.add(pattern);
    }
    return isNew;
  }

  void addAll(CutList plan) {
    for (Pattern pattern : plan.patterns) {
      add(pattern);
    }
  }

  int size() {
    return patterns.size();
  }

  Pattern get(int index) {
    return patterns.get(index);
  }
}
