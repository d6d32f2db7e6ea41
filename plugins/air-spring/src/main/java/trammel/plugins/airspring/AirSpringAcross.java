package trammel.plugins.airspring;

import java.util.List;

/** On which side of the frame rails air springs stand. */
enum AirSpringAcross {
  /** Between the rails, under a bridge. */
  INBOARD("inboard", "between the rails"),
  /** Outside the rails, under outriggers. */
  OUTBOARD("outboard", "outside the rails");

  private final String word;
  private final String phrase;

  AirSpringAcross(String word, String phrase) {
    this.word = word;
    this.phrase = phrase;
  }

  /** As it reads in a sentence. */
  String phrase() {
    return phrase;
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
