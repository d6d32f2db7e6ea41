package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.TextNode;

/** The written text of single values. */
final class Scalars {
  private Scalars() {}

  /** The text of a text or number; empty for a list, a group, a flag or nothing. */
  static Optional<String> text(DocumentNode node) {
    if (node instanceof TextNode text) {
      return Optional.of(text.text());
    }
    return node instanceof NumberNode number ? Optional.of(number.text()) : Optional.empty();
  }
}
