package trammel.cutting.bars;

import java.util.Arrays;

/**
 * The kinds of a long list in groups of nearly one length, few enough for the pattern relaxation
 * however long the list is (linear grouping; Fernandez de la Vega and Lueker, Combinatorica 1
 * (1981), from memory).
 *
 * <p>Groups are as narrow as their number allows. With every piece as long as the longest of its
 * group, a plan has room for the pieces themselves; with every piece as short as the shortest, no
 * plan of the pieces costs less.
 */
final class LengthGroups {
  private final BarModel model;

  /** First kind of each group, and the number of kinds at the end. */
  private final int[] first;

  private LengthGroups(BarModel model, int[] first) {
    this.model = model;
    this.first = first;
  }

  /**
   * Groups the kinds of a model.
   *
   * @param most how many groups at most, above 0
   */
  static LengthGroups of(BarModel model, int most) {
    long narrowest = 0;
    long widest = model.size[0];
    while (narrowest < widest) {
      long width = (narrowest + widest) >>> 1;
      if (firstKinds(model, width).length - 1 <= most) {
        widest = width;
      } else {
        narrowest = width + 1;
      }
    }
    return new LengthGroups(model, firstKinds(model, widest));
  }

  private static int[] firstKinds(BarModel model, long width) {
    int[] first = new int[model.kinds() + 1];
    int groups = 0;
    for (int k = 0; k < model.kinds(); k++) {
      if (groups == 0 || model.size[first[groups - 1]] - model.size[k] > width) {
        first[groups++] = k;
      }
    }
    first[groups] = model.kinds();
    return Arrays.copyOf(first, groups + 1);
  }

  int groups() {
    return first.length - 1;
  }

  /** The pieces, each as long as the longest of its group. */
  BarModel longest() {
    long[] size = new long[groups()];
    for (int g = 0; g < size.length; g++) {
      size[g] = model.size[first[g]];
    }
    return model.withSizes(size, demand());
  }

  /** The pieces, each as short as the shortest of its group. */
  BarModel shortest() {
    long[] size = new long[groups()];
    for (int g = 0; g < size.length; g++) {
      size[g] = model.size[first[g + 1] - 1];
    }
    return model.withSizes(size, demand());
  }

  private int[] demand() {
    int[] demand = new int[groups()];
    for (int g = 0; g < demand.length; g++) {
      for (int k = first[g]; k < first[g + 1]; k++) {
        demand[g] = Math.addExact(demand[g], model.demand[k]);
      }
    }
    return demand;
  }

  /**
   * The pieces themselves dealt out to the bars of a plan for their groups, the longest first.
   *
   * @param plan for the longest of each group
   */
  CutList dealt(CutList plan) {
    int[] next = Arrays.copyOf(first, groups());
    int[] left = model.demand.clone();
    CutList dealt = new CutList();
    for (int i = 0; i < plan.patterns.size(); i++) {
      for (int j = 0; j < plan.times.get(i); j++) {
        dealt.add(model, dealt(plan.patterns.get(i), next, left), 1);
      }
    }
    return dealt;
  }

  private Pattern dealt(Pattern bar, int[] next, int[] left) {
    int pieces = 0;
    for (int count : bar.counts) {
      pieces += count;
    }
    int[] kinds = new int[pieces];
    int[] counts = new int[pieces];
    int distinct = 0;
    for (int i = 0; i < bar.kinds.length; i++) {
      int g = bar.kinds[i];
      int missing = bar.counts[i];
      while (missing > 0) {
        int kind = next[g];
        int taken = Math.min(missing, left[kind]);
        if (taken > 0) {
          kinds[distinct] = kind;
          counts[distinct++] = taken;
          left[kind] -= taken;
          missing -= taken;
        }
        next[g] += left[kind] == 0 ? 1 : 0;
      }
    }
    return new Pattern(bar.stock, Arrays.copyOf(kinds, distinct), Arrays.copyOf(counts, distinct));
  }
}
