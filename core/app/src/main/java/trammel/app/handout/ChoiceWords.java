package trammel.app.handout;

import java.util.Optional;
import trammel.planning.catalog.Catalog;
import trammel.reading.fields.Field;

/** What a choice of an option is called on paper: words, never the keys of a file. */
final class ChoiceWords {
  private ChoiceWords() {}

  /**
   * The words.
   *
   * @param field the option
   * @param choice one of its choices
   * @param catalog what entries that are chosen by their key are called
   */
  static String of(Field<?> field, String choice, Catalog catalog) {
    return field
        .called(choice)
        .or(() -> title(choice, catalog))
        .orElseGet(() -> about(field) + ": " + choice.replace('-', ' ').replace('_', ' '));
  }

  private static Optional<String> title(String key, Catalog catalog) {
    if (catalog.bars().containsKey(key)) {
      return Optional.of(catalog.bars().get(key).title());
    }
    if (catalog.plates().containsKey(key)) {
      return Optional.of(catalog.plates().get(key).title());
    }
    return catalog.items().containsKey(key)
        ? Optional.of(catalog.items().get(key).title())
        : Optional.empty();
  }

  /** What the option is about: its help up to where it begins to explain. */
  private static String about(Field<?> field) {
    return field.help().split("[;,:(]", 2)[0].strip();
  }
}
