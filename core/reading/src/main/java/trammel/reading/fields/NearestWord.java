package trammel.reading.fields;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the word that was probably meant. */
public final class NearestWord {
  private NearestWord() {}

  /**
   * The known word with the fewest letters changed, left out, added or swapped, if that is few
   * enough for a slip of the hand: about one letter in three.
   */
  public static Optional<String> to(String word, List<String> known) {
    String lower = word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    int least = 1 + Math.min(lower.length(), 12) / 3;
    Optional<String> nearest = Optional.empty();
    for (String candidate : known) {
      if (Math.abs(candidate.length() - lower.length()) >= least) {
        continue;
      }
      int distance = distance(lower, candidate.replace('-', '_'));
      if (distance < least) {
        least = distance;
        nearest = Optional.of(candidate);
      }
    }
    return nearest;
  }

  /** Restricted edit distance, in which swapping two neighbours counts once. */
  private static int distance(String a, String b) {
    int[][] cost = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        cost[i][j] = i == 0 || j == 0 ? i + j : stepCost(cost, a, b, i, j);
      }
    }
    return cost[a.length()][b.length()];
  }

  private static int stepCost(int[][] cost, String a, String b, int i, int j) {
    int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
    int least = Math.min(cost[i - 1][j] + 1, cost[i][j - 1] + 1);
    least = Math.min(least, cost[i - 1][j - 1] + change);
    boolean swapped =
        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
    return swapped ? Math.min(least, cost[i - 2][j - 2] + 1) : least;
  }
}
