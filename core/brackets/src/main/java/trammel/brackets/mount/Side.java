package trammel.brackets.mount;

import java.util.List;

/** On which side of the axle tube a spring or shock stands. */
public enum Side {
  BEHIND("behind-axle", "behind the axle", -1),
  AHEAD("ahead-of-axle", "ahead of the axle", 1);

  private final String word;
  private final String phrase;
  private final int sign;

  Side(String word, String phrase, int sign) {
    this.word = word;
    this.phrase = phrase;
    this.sign = sign;
  }

  /** The word for it in job files. */
  public String word() {
    return word;
  }

  /** The words to choose from. */
  public static List<String> words() {
    return List.of(BEHIND.word, AHEAD.word);
  }

  /** The side of a word. */
  public static Side ofWord(String word) {
    return AHEAD.word.equals(word) ? AHEAD : BEHIND;
  }

  /** The other side. */
  public Side other() {
    return this == BEHIND ? AHEAD : BEHIND;
  }

  /** As it reads in a sentence. */
  public String phrase() {
    return phrase;
  }

  /** A distance from the axle's centre on this side as a forward coordinate (mm). */
  public double forwardMm(double distanceMm) {
    return sign * distanceMm;
  }
}
