package trammel.brackets.mount;

import java.util.Arrays;
import java.util.List;

/** What a crossmember that lies above or below the rails stands on. */
public enum Legs {
  /** Pieces of its own tube. */
  TUBE("tube"),
  /** Plates that lie flat on the rails' inner faces, which leave more room to bars beside them. */
  PLATE("plate");

  private final String word;

  Legs(String word) {
    this.word = word;
  }

  /** The word for it in job files. */
  public String word() {
    return word;
  }

  /** The words to choose from. */
  public static List<String> words() {
    return Arrays.stream(values()).map(Legs::word).toList();
  }

  /** The legs of a word. */
  public static Legs ofWord(String word) {
    return PLATE.word.equals(word) ? PLATE : TUBE;
  }
}
