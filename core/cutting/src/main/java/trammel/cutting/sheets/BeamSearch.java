package trammel.cutting.sheets;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import trammel.cutting.internal.Deadline;

/**
 * Breadth-first search along the skyline that keeps only the most promising layouts of each number
 * of parts.
 *
 * <p>Promising is a layout that has placed much area and wasted little below its skyline.
 */
final class BeamSearch {
  /** Most parts whose sums of sides are tabled; of more of them nearly every sum is possible. */
  private static final int MOST_SUMMED = 24;

  private static final long STEPS_PER_CHILD = 480;
  private static final long STEPS_PER_END = 48;
  private static final long STEPS_PER_SEARCH = 5000;

  private final SheetModel model;
  private final int width;
  private final int height;
  private final Random random;
  private final Deadline deadline;
  private final double wasteWeight;
  private final double roughWeight;
  private final double noise;
  private final SideSums widths;
  private final SideSums heights;
  private Lookahead lookahead;
  private double keyWeight;
  private Layout found;
  private int partsLeft;
  private final int[] candidateType;
  private final boolean[] candidateTurned;
  private final double[] candidateRank;
  private int candidates;

  /** A partial layout; the parts placed are found along the chain of parents. */
  private static final class State {
    final State parent;
    final int type;
    final int x;
    final int y;
    final boolean turned;
    final int[] remaining;
    final int[] gapX;
    final int[] gapY;
    final int[] gapWidth;
    final long area;
    final long waste;
    double key;

    State(
        State parent,
        int type,
        int x,
        int y,
        boolean turned,
        int[] remaining,
        int[][] gaps,
        long area,
        long waste) {
      this.parent = parent;
      this.type = type;
      this.x = x;
      this.y = y;
      this.turned = turned;
      this.remaining = remaining;
      this.gapX = gaps[0];
      this.gapY = gaps[1];
      this.gapWidth = gaps[2];
      this.area = area;
      this.waste = waste;
    }
  }

  BeamSearch(
      SheetModel model, int width, int height, Random random, double[] weights, Deadline deadline) {
    this.model = model;
    this.width = width;
    this.height = height;
    this.random = random;
    this.wasteWeight = weights[0];
    this.roughWeight = weights[1];
    this.noise = weights[2];
    this.deadline = deadline;
    this.widths = new SideSums(model, true, width);
    this.heights = new SideSums(model, false, height);
    candidateType = new int[2 * model.types()];
    candidateTurned = new boolean[2 * model.types()];
    candidateRank = new double[2 * model.types()];
  }

  /**
   * Judges layouts by quick ends as well.
   *
   * @param ends quick ends tried for each layout
   * @param weight weight of what is judged otherwise
   */
  BeamSearch lookingAhead(int ends, double weight) {
    lookahead = new Lookahead(model, height, ends);
    keyWeight = weight;
    return this;
  }

  /**
   * @param beam layouts kept of each number of parts
   * @param branching parts tried in each gap
   * @return a layout of all parts, or null
   */
  Layout find(int beam, int branching) {
    long spare = (long) width * height - model.area(model.count);
    if (spare < 0) {
      return null;
    }
    deadline.spend(STEPS_PER_SEARCH + (long) beam * branching);
    int[] all = model.count.clone();
    int parts = 0;
    for (int c : all) {
      parts += c;
    }
    partsLeft = parts;
    int[][] floor = {{0}, {0}, {width}};
    State[] level = {new State(null, -1, 0, 0, false, all, floor, 0, 0)};
    State[] next = new State[beam * branching];
    for (int placed = 0; placed < parts; placed++) {
      partsLeft = parts - placed - 1;
      int count = 0;
      Set<Long> seen = new HashSet<>();
      for (State state : level) {
        count = expand(state, spare, branching, next, count, seen);
        if (found != null) {
          return found;
        }
      }
      if (count == 0 || deadline.isPast()) {
        return null;
      }
      State[] children = Arrays.copyOf(next, count);
      Arrays.sort(children, (a, b) -> Double.compare(b.key, a.key));
      level = count > beam ? Arrays.copyOf(children, beam) : children;
    }
    return layout(level[0]);
  }

  /** Judges the child by a quick end; one that places all parts is the answer. */
  private void lookAhead(State child) {
    deadline.spend(
        lookahead.ends() * (STEPS_PER_END + partsLeft * (STEPS_PER_END + partsLeft) / 2));
    int[][] skyline = {child.gapX, child.gapY, child.gapWidth};
    long left = model.area(model.count) - child.area;
    long out = lookahead.leftOut(skyline, child.remaining, left);
    if (out == 0) {
      found = layout(child);
      found.addAll(lookahead.end());
    }
    child.key = keyWeight * child.key - (double) out / ((double) width * height);
  }

  private static Layout layout(State last) {
    Layout layout = new Layout();
    for (State s = last; s.parent != null; s = s.parent) {
      layout.add(s.type, s.x, s.y, s.turned);
    }
    return layout;
  }

  private int expand(
      State state, long spare, int branching, State[] next, int from, Set<Long> seen) {
    int count = from;
    int[] gapX = state.gapX;
    int[] gapY = state.gapY;
    int[] gapWidth = state.gapWidth;
    long waste = state.waste;
    while (true) {
      int gap = 0;
      for (int g = 1; g < gapY.length; g++) {
        if (gapY[g] < gapY[gap]) {
          gap = g;
        }
      }
      int left = gap == 0 ? height : gapY[gap - 1];
      int right = gap == gapY.length - 1 ? height : gapY[gap + 1];
      collect(state.remaining, gapWidth[gap], height - gapY[gap], left, right, gapY[gap]);
      if (candidates > 0) {
        int tried = Math.min(branching, candidates);
        for (int i = 0; i < tried; i++) {
          State child =
              child(state, gapX, gapY, gapWidth, gap, bestCandidate(), left, right, waste, spare);
          if (child != null && seen.add(fingerprint(child))) {
            next[count++] = child;
          }
        }
        return count;
      }
      int lift = Math.min(left, right) - gapY[gap];
      waste += (long) lift * gapWidth[gap];
      if (waste > spare || gapY.length == 1) {
        return count;
      }
      int[] liftedY = gapY.clone();
      liftedY[gap] += lift;
      int[][] merged = merged(gapX, liftedY, gapWidth);
      gapX = merged[0];
      gapY = merged[1];
      gapWidth = merged[2];
    }
  }

  /** All parts that fit the gap, each with a rank. */
  private void collect(int[] remaining, int room, int head, int left, int right, int base) {
    candidates = 0;
    for (int type = 0; type < remaining.length; type++) {
      if (remaining[type] > 0) {
        collect(type, false, room, head, left - base, right - base);
        if (model.mayTurn[type]) {
          collect(type, true, room, head, left - base, right - base);
        }
      }
    }
  }

  private void collect(int type, boolean turned, int room, int head, int leftStep, int rightStep) {
    int w = turned ? model.height[type] : model.width[type];
    int h = turned ? model.width[type] : model.height[type];
    if (w > room || h > head) {
      return;
    }
    double fit = w == room ? 1 : 0;
    if (h == leftStep || h == rightStep) {
      fit += 0.5;
    }
    double size = Math.sqrt((double) w * h / ((double) width * height));
    candidateType[candidates] = type;
    candidateTurned[candidates] = turned;
    candidateRank[candidates++] = fit + 2 * size + 0.3 * random.nextDouble();
  }

  /** Takes the best candidate out of the list and returns its index. */
  private int bestCandidate() {
    int best = 0;
    for (int c = 1; c < candidates; c++) {
      if (candidateRank[c] > candidateRank[best]) {
        best = c;
      }
    }
    candidates--;
    int type = candidateType[best];
    boolean turned = candidateTurned[best];
    candidateType[best] = candidateType[candidates];
    candidateTurned[best] = candidateTurned[candidates];
    candidateRank[best] = candidateRank[candidates];
    candidateType[candidates] = type;
    candidateTurned[candidates] = turned;
    return candidates;
  }

  private State child(
      State state,
      int[] gapX,
      int[] gapY,
      int[] gapWidth,
      int gap,
      int candidate,
      int left,
      int right,
      long waste,
      long spare) {
    deadline.spend(STEPS_PER_CHILD + 3L * model.types());
    int type = candidateType[candidate];
    boolean turned = candidateTurned[candidate];
    int w = turned ? model.height[type] : model.width[type];
    int h = turned ? model.width[type] : model.height[type];
    int base = gapY[gap];
    boolean atRight = base + h == right || (base + h != left && right > left);
    int x = atRight ? gapX[gap] + gapWidth[gap] - w : gapX[gap];
    int[][] gaps;
    if (w == gapWidth[gap]) {
      int[] raised = gapY.clone();
      raised[gap] += h;
      gaps = merged(gapX, raised, gapWidth);
    } else {
      int at = atRight ? gap + 1 : gap;
      int[] newX = with(gapX, at, x);
      int[] newY = with(gapY, at, base + h);
      int[] newWidth = with(gapWidth, at, w);
      int rest = atRight ? gap : gap + 1;
      newWidth[rest] -= w;
      newX[rest] = atRight ? newX[rest] : newX[rest] + w;
      gaps = merged(newX, newY, newWidth);
    }
    int[] remaining = state.remaining.clone();
    remaining[type]--;
    State child =
        new State(
            state, type, x, base, turned, remaining, gaps, state.area + model.area(type), waste);
    long lost = waste + lost(child);
    if (lost > spare) {
      return null;
    }
    child.key = key(child, lost);
    if (lookahead != null) {
      lookAhead(child);
    }
    return child;
  }

  /** Area above the skyline that no part that is left can fill, seen across or along. */
  private long lost(State state) {
    if (partsLeft == 0) {
      return 0;
    }
    int narrowest = Integer.MAX_VALUE;
    int lowest = Integer.MAX_VALUE;
    for (int t = 0; t < state.remaining.length; t++) {
      if (state.remaining[t] > 0) {
        int w = model.width[t];
        int h = model.height[t];
        narrowest = Math.min(narrowest, model.mayTurn[t] ? Math.min(w, h) : w);
        lowest = Math.min(lowest, model.mayTurn[t] ? Math.min(w, h) : h);
      }
    }
    boolean few = partsLeft <= MOST_SUMMED;
    if (few) {
      widths.of(state.remaining);
      heights.of(state.remaining);
    }
    long across = 0;
    long along = 0;
    int last = state.gapY.length - 1;
    for (int g = 0; g <= last; g++) {
      int left = g == 0 ? height : state.gapY[g - 1];
      int right = g == last ? height : state.gapY[g + 1];
      int lift = Math.min(left, right) - state.gapY[g];
      int room = state.gapWidth[g];
      if (lift > 0) {
        int rest = room < narrowest ? room : few ? widths.lost(room) : 0;
        across += (long) rest * (room < narrowest ? lift : Math.min(lift, lowest));
      }
      along += few ? (long) room * heights.lost(height - state.gapY[g]) : 0;
    }
    return Math.max(across, along);
  }

  private double key(State state, long lost) {
    double rough = 0;
    for (int g = 1; g < state.gapY.length; g++) {
      rough += Math.abs(state.gapY[g] - state.gapY[g - 1]);
    }
    double whole = (double) width * height;
    return state.area / whole
        - wasteWeight * lost / whole
        - roughWeight * (state.gapY.length - 1) / model.types()
        - 0.02 * roughWeight * rough / height
        + noise * random.nextDouble();
  }

  private static long fingerprint(State state) {
    long hash = Arrays.hashCode(state.remaining);
    return hash * 1_000_003L
        + Arrays.hashCode(state.gapY) * 31L
        + Arrays.hashCode(state.gapX) * 65_537L;
  }

  private static int[] with(int[] values, int at, int value) {
    int[] longer = new int[values.length + 1];
    System.arraycopy(values, 0, longer, 0, at);
    longer[at] = value;
    System.arraycopy(values, at, longer, at + 1, values.length - at);
    return longer;
  }

  private static int[][] merged(int[] x, int[] y, int[] w) {
    int same = 0;
    for (int g = 1; g < y.length; g++) {
      same += y[g] == y[g - 1] ? 1 : 0;
    }
    if (same == 0) {
      return new int[][] {x, y, w};
    }
    int n = y.length - same;
    int[][] merged = {new int[n], new int[n], new int[n]};
    int at = -1;
    for (int g = 0; g < y.length; g++) {
      if (g > 0 && y[g] == y[g - 1]) {
        merged[2][at] += w[g];
      } else {
        at++;
        merged[0][at] = x[g];
        merged[1][at] = y[g];
        merged[2][at] = w[g];
      }
    }
    return merged;
  }
}
