package trammel.plugins.airspring;

import java.util.List;

/** On which side of the frame rails air springs stand. */
enum AirSpringAcross {
  /** Between the rails, under a bridge. */
  INBOARD("inboard"),
  /** Outside the rails, under outriggers. */
  OUTBOARD("outboard");

  private final String word;

  AirSpringAcross(String word) {
    this.word = word;
  }

  /** The word for it in job files. */
  public String word() {
    return word;
  }

  /** The words to choose from. */
  public static List<String> words() {
    return List.of(INBOARD.word, OUTBOARD.word);
  }

  /** The one of a word. */
  public static AirSpringAcross ofWord(String word) {
    return OUTBOARD.word.equals(word) ? OUTBOARD : INBOARD;
  }
}
