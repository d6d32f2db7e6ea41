package trammel.planning.arrange;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** What the best of the layouts that pass is the best at. */
public enum Goal {
  /** The lowest price with tax. */
  PRICE("price"),
  /** The fewest hours. */
  HOURS("hours"),
  /** The most room to the nearest limit. */
  MARGIN("margin"),
  /** The softest ride that its check calls good. */
  RIDE("ride");

  private final String word;

  Goal(String word) {
    this.word = word;
  }

  /** The word for it on a command line. */
  public String word() {
    return word;
  }

  /** The words to choose from. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Goal::word).toList();
  }

  /** The goal of a word, if there is one. */
  public static Optional<Goal> ofWord(String word) {
    return Arrays.stream(values()).filter(goal -> goal.word.equals(word)).findFirst();
  }
}
