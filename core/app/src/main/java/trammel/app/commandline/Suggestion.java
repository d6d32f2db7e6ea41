package trammel.app.commandline;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Finds the name that a mistyped word most likely meant. */
public final class Suggestion {
  /** More differences than this and the guess is more likely to annoy than to help. */
  private static final int MOST_DIFFERENCES = 2;

  private Suggestion() {}

  /** The closest of the names, or nothing if none is close. */
  public static Optional<String> closest(String typed, List<String> names) {
    String word = typed.toLowerCase(Locale.ROOT);
    String best = null;
    int fewest = MOST_DIFFERENCES + 1;
    for (String name : names) {
      int differences = word.length() > 2 && name.startsWith(word) ? 1 : differences(word, name);
      if (differences < fewest && differences < name.length()) {
        fewest = differences;
        best = name;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Letters to add, drop or replace, a swap of neighbours counted once (restricted distance). */
  private static int differences(String a, String b) {
    int[][] table = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      for (int j = 0; j <= b.length(); j++) {
        if (i == 0 || j == 0) {
          table[i][j] = i + j;
          continue;
        }
        int replaced = table[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        table[i][j] = Math.min(replaced, 1 + Math.min(table[i - 1][j], table[i][j - 1]));
        if (isSwap(a, i, b, j)) {
          table[i][j] = Math.min(table[i][j], table[i - 2][j - 2] + 1);
        }
      }
    }
    return table[a.length()][b.length()];
  }

  private static boolean isSwap(String a, int i, String b, int j) {
    return i > 1
        && j > 1
        && a.charAt(i - 1) == b.charAt(j - 2)
        && a.charAt(i - 2) == b.charAt(j - 1);
  }
}
