package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** A text that is not blank. */
final class TextType extends ValueType<String> {
  private final int maxLength;

  TextType(int maxLength) {
    if (maxLength < 1) {
      throw new IllegalArgumentException(
          "The greatest length (" + maxLength + ") must be 1 character or more.");
    }
    this.maxLength = maxLength;
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
    if (stripped.isEmpty() || stripped.length() > maxLength || hasControl(stripped)) {
      return refuse(
          node, reader, "It has " + stripped.length() + " characters; shorten or fill it in.");
    }
    return Optional.of(stripped);
  }

  private static boolean hasControl(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isISOControl(text.charAt(i)) && text.charAt(i) != '\n') {
        return true;
      }
    }
    return false;
  }

  @Override
  String allowed(UnitSystem units) {
    return "a text of 1 to " + maxLength + " printable characters";
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
