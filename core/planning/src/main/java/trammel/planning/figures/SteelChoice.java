package trammel.planning.figures;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import trammel.engine.strength.PublishedSteel;

/** Published steels by words that can be typed. */
final class SteelChoice {
  private SteelChoice() {}

  static List<String> words() {
    List<String> words = new ArrayList<>();
    for (PublishedSteel steel : PublishedSteel.values()) {
      words.add(word(steel));
    }
    return words;
  }

  static PublishedSteel of(String word) {
    for (PublishedSteel steel : PublishedSteel.values()) {
      if (word(steel).equals(word)) {
        return steel;
      }
    }
    throw new IllegalStateException("The steel (" + word + ") passed its field and is not known.");
  }

  private static String word(PublishedSteel steel) {
    return steel.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
