package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.PlainText;

/** A text that is not blank; one line, unless it is a note. */
final class TextType extends ValueType<String> {
  private final int maxLength;
  private final boolean severalLines;

  TextType(int maxLength, boolean severalLines) {
    if (maxLength < 1) {
      throw new IllegalArgumentException(
          "The greatest length (" + maxLength + ") must be 1 character or more.");
    }
    this.maxLength = maxLength;
    this.severalLines = severalLines;
  }

  @Override
  FieldKind kind() {
    return FieldKind.TEXT;
  }

  @Override
  Optional<String> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    if (text.isEmpty()) {
      return refuse(node, reader, "Write a text; put it in quotes if it is true or false.");
    }
    String stripped = text.get().strip();
    Optional<String> trouble =
        severalLines ? PlainText.troubleOfLines(stripped) : PlainText.troubleOfLine(stripped);
    if (trouble.isPresent()) {
      return refuse(node, reader, "It has " + trouble.get() + "; take it out.");
    }
    if (stripped.isEmpty() || stripped.length() > maxLength) {
      return refuse(
          node, reader, "It has " + stripped.length() + " characters; shorten or fill it in.");
    }
    return Optional.of(stripped);
  }

  @Override
  String allowed(UnitSystem units) {
    String text = "a text of 1 to " + maxLength + " printable characters";
    return severalLines ? text + ", in one line or several" : text;
  }

  @Override
  String example(UnitSystem units) {
    return "text";
  }

  @Override
  String print(String value, UnitSystem units) {
    return value;
  }

  @Override
  boolean accepts(String value) {
    return value.length() <= maxLength;
  }
}
