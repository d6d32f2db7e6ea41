package trammel.brackets.bar;

import java.util.List;

/** On which side of the frame rails the bars run. */
public enum Mounting {
  /** Between the rails, against their inner faces. */
  INBOARD("inboard"),
  /** Outside the rails, on outriggers from their outer faces. */
  OUTBOARD("outboard");

  private final String word;

  Mounting(String word) {
    this.word = word;
  }

  /** The word for it in job files. */
  public String word() {
    return word;
  }

  /** The words to choose from, the usual one first. */
  public static List<String> words() {
    return List.of(INBOARD.word, OUTBOARD.word);
  }

  /**
   * The mounting of a word.
   *
   * @throws IllegalArgumentException if it is neither {@code inboard} nor {@code outboard}
   */
  public static Mounting ofWord(String word) {
    for (Mounting mounting : values()) {
      if (mounting.word.equals(word)) {
        return mounting;
      }
    }
    throw new IllegalArgumentException(
        "mounting is '" + word + "'; allowed is inboard or outboard. Write one of the two.");
  }
}
