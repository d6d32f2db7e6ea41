package trammel.cutting.sheets;

import java.util.Arrays;

/**
 * Decides whether a few parts, most of them large, fit on one sheet together.
 *
 * <p>Of any two parts one lies left of, right of, below or above the other. Relations are chosen
 * pair by pair; what a choice leaves of the places of all parts narrows the choice for the others
 * (Onodera, Taniguchi and Tamaru 1991 branch so on relations; Pisinger and Sigurd, INFORMS Journal
 * on Computing 19 (2007), price fillings of sheets by it; both from memory).
 */
final class RelativePlacement {
  /** Parts above which the choices are too many. */
  static final int MOST_PARTS = 12;

  private static final long STEPS_PER_CHOICE = 800;

  private static final int LEFT = 1;
  private static final int RIGHT = 2;
  private static final int BELOW = 4;
  private static final int ABOVE = 8;
  private static final int[] RELATIONS = {LEFT, BELOW, RIGHT, ABOVE};

  private final SheetModel model;
  private final int mostChoices;
  private final Layout layout = new Layout();
  private int[] type = {};
  private boolean[] turned = {};
  private int[] w = {};
  private int[] h = {};
  private int sheetWidth;
  private int sheetHeight;
  private int choicesLeft;

  /** What is still possible: relations of pairs, least and greatest x and y of each part. */
  private record State(int[] relations, int[] minX, int[] maxX, int[] minY, int[] maxY) {
    State copy() {
      return new State(relations.clone(), minX.clone(), maxX.clone(), minY.clone(), maxY.clone());
    }
  }

  /**
   * @param mostChoices choices made before a question is left open
   */
  RelativePlacement(SheetModel model, int mostChoices) {
    this.model = model;
    this.mostChoices = mostChoices;
  }

  /**
   * @param counts parts of each type, together no more than {@link #MOST_PARTS}
   * @return true when they fit; false when they do not, or when the search grew too long: see
   *     {@link #isOpen()}
   */
  boolean fits(int[] counts, int sheet) {
    type = largestFirst(counts);
    turned = new boolean[type.length];
    w = new int[type.length];
    h = new int[type.length];
    sheetWidth = model.sheetWidth[sheet];
    sheetHeight = model.sheetHeight[sheet];
    choicesLeft = mostChoices;
    layout.clear();
    return turn(0);
  }

  private int[] largestFirst(int[] counts) {
    int[] types = new int[Arrays.stream(counts).sum()];
    int n = 0;
    for (int t = 0; t < counts.length; t++) {
      for (int i = 0; i < counts[t]; i++) {
        int at = n++;
        while (at > 0 && model.area(types[at - 1]) < model.area(t)) {
          types[at] = types[at - 1];
          at--;
        }
        types[at] = t;
      }
    }
    return types;
  }

  /** True when the last answer is no more than that no way was found. */
  boolean isOpen() {
    return choicesLeft <= 0;
  }

  /** What the last question took, in steps of a counted effort. */
  long effort() {
    return STEPS_PER_CHOICE * (mostChoices - Math.max(0, choicesLeft));
  }

  /** Where the parts lie after a question answered with yes. */
  Layout layout() {
    return layout.copy();
  }

  /** Every way round of each part, then the relations. */
  private boolean turn(int part) {
    if (part == type.length) {
      return search(start());
    }
    for (int way = 0; way < (model.mayTurn[type[part]] ? 2 : 1); way++) {
      turned[part] = way == 1;
      w[part] = turned[part] ? model.height[type[part]] : model.width[type[part]];
      h[part] = turned[part] ? model.width[type[part]] : model.height[type[part]];
      if (w[part] <= sheetWidth && h[part] <= sheetHeight && !isOpen() && turn(part + 1)) {
        return true;
      }
    }
    return false;
  }

  private State start() {
    int n = type.length;
    int[] relations = new int[n * n];
    int[] maxX = new int[n];
    int[] maxY = new int[n];
    for (int i = 0; i < n; i++) {
      maxX[i] = sheetWidth - w[i];
      maxY[i] = sheetHeight - h[i];
      for (int j = i + 1; j < n; j++) {
        // Of two alike the first is never right of the second.
        boolean alike = type[i] == type[j] && turned[i] == turned[j];
        relations[i * n + j] = alike ? LEFT | BELOW | ABOVE : LEFT | RIGHT | BELOW | ABOVE;
      }
    }
    if (n > 0) {
      // A packing and its mirror images are alike: the largest part lies in the lower left.
      maxX[0] /= 2;
      maxY[0] /= 2;
    }
    return new State(relations, new int[n], maxX, new int[n], maxY);
  }

  private boolean search(State state) {
    if (--choicesLeft <= 0) {
      choicesLeft = 0;
      return false;
    }
    if (!narrow(state)) {
      return false;
    }
    int pair = leastChoice(state);
    if (pair < 0) {
      write(state);
      return true;
    }
    for (int relation : RELATIONS) {
      if ((state.relations[pair] & relation) != 0) {
        State next = state.copy();
        next.relations[pair] = relation;
        if (search(next)) {
          return true;
        }
        if (isOpen()) {
          return false;
        }
      }
    }
    return false;
  }

  /** The undecided pair with the fewest relations left, of these the largest parts, or −1. */
  private int leastChoice(State state) {
    int n = type.length;
    int best = -1;
    int fewest = Integer.MAX_VALUE;
    for (int i = 0; i < n; i++) {
      for (int j = i + 1; j < n; j++) {
        int count = Integer.bitCount(state.relations[i * n + j]);
        if (count > 1 && count < fewest) {
          fewest = count;
          best = i * n + j;
        }
      }
    }
    return best;
  }

  /** Takes away what cannot be; false when nothing is left. */
  private boolean narrow(State state) {
    int n = type.length;
    boolean changed = true;
    while (changed) {
      changed = false;
      for (int i = 0; i < n; i++) {
        for (int j = i + 1; j < n; j++) {
          int before = state.relations[i * n + j];
          int possible = before & possible(state, i, j);
          if (possible == 0) {
            return false;
          }
          state.relations[i * n + j] = possible;
          changed |= possible != before | order(state, possible, i, j);
        }
      }
      if (!hasPlaces(state)) {
        return false;
      }
    }
    return true;
  }

  /** Whether some place is left for every part. */
  private boolean hasPlaces(State state) {
    for (int i = 0; i < type.length; i++) {
      if (state.minX[i] > state.maxX[i] || state.minY[i] > state.maxY[i]) {
        return false;
      }
    }
    return true;
  }

  /** What a pair's only relation left, if it is down to one, means for their places. */
  private boolean order(State state, int relation, int i, int j) {
    return switch (relation) {
      case LEFT -> order(state.minX, state.maxX, w, i, j);
      case RIGHT -> order(state.minX, state.maxX, w, j, i);
      case BELOW -> order(state.minY, state.maxY, h, i, j);
      case ABOVE -> order(state.minY, state.maxY, h, j, i);
      default -> false;
    };
  }

  private int possible(State state, int i, int j) {
    int possible = 0;
    possible |= state.minX[i] + w[i] <= state.maxX[j] ? LEFT : 0;
    possible |= state.minX[j] + w[j] <= state.maxX[i] ? RIGHT : 0;
    possible |= state.minY[i] + h[i] <= state.maxY[j] ? BELOW : 0;
    possible |= state.minY[j] + h[j] <= state.maxY[i] ? ABOVE : 0;
    return possible;
  }

  /** One part ends before another starts; true when that takes places away. */
  private static boolean order(int[] min, int[] max, int[] size, int first, int second) {
    boolean changed = false;
    if (min[first] + size[first] > min[second]) {
      min[second] = min[first] + size[first];
      changed = true;
    }
    if (max[second] - size[first] < max[first]) {
      max[first] = max[second] - size[first];
      changed = true;
    }
    return changed;
  }

  private void write(State state) {
    for (int i = 0; i < type.length; i++) {
      layout.add(type[i], state.minX[i], state.minY[i], turned[i]);
    }
  }
}
