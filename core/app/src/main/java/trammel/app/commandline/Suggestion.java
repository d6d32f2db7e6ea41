package trammel.app.commandline;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.reading.fields.NearestWord;

/** Finds the name that a mistyped word most likely meant. */
public final class Suggestion {
  /** A shorter beginning fits too many names to be a hint. */
  private static final int SHORTEST_BEGINNING = 3;

  private Suggestion() {}

  /** The name that the word begins, or else the closest; nothing if none is close. */
  public static Optional<String> closest(String typed, List<String> names) {
    String word = typed.toLowerCase(Locale.ROOT);
    if (word.length() >= SHORTEST_BEGINNING) {
      for (String name : names) {
        if (name.startsWith(word)) {
          return Optional.of(name);
        }
      }
    }
    return NearestWord.to(typed, names);
  }
}
