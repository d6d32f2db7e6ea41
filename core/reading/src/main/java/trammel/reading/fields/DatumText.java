package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.tree.DocumentNode;

/**
 * A written angle taken apart: the quantity, and the word after {@code from} if there is one.
 *
 * @param quantity the text before {@code from}
 * @param from the text after {@code from}
 */
record DatumText(String quantity, Optional<String> from) {
  private static final String WORD = " from ";

  static Optional<DatumText> of(DocumentNode node) {
    Optional<String> text = Scalars.text(node);
    return text.isPresent() ? Optional.of(of(text.get())) : Optional.empty();
  }

  static DatumText of(String text) {
    int at = text.indexOf(WORD);
    return at < 0
        ? new DatumText(text, Optional.empty())
        : new DatumText(
            text.substring(0, at), Optional.of(text.substring(at + WORD.length()).strip()));
  }
}
