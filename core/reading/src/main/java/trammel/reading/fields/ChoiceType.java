package trammel.reading.fields;

import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.TextNode;

/** One of several words. */
final class ChoiceType extends ValueType<String> {
  private final List<String> choices;

  ChoiceType(List<String> choices) {
    if (choices.isEmpty()) {
      throw new IllegalArgumentException("A choice needs at least one word; none was given.");
    }
    this.choices = List.copyOf(choices);
  }

  @Override
  FieldKind kind() {
    return FieldKind.CHOICE;
  }

  @Override
  Optional<String> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    if (text.isPresent() && choices.contains(text.get())) {
      return text;
    }
    Optional<String> near =
        node instanceof TextNode ? NearestWord.to(text.get(), choices) : Optional.empty();
    return refuse(
        node,
        reader,
        near.isPresent() ? "Did you mean " + near.get() + "?" : "Write one of these words.");
  }

  @Override
  boolean accepts(String value) {
    return choices.contains(value);
  }

  @Override
  String allowed(UnitSystem units) {
    return WordList.or(choices);
  }

  @Override
  String example(UnitSystem units) {
    return choices.get(0);
  }

  @Override
  String print(String value, UnitSystem units) {
    return value;
  }

  @Override
  List<String> choices() {
    return choices;
  }
}
