package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ObjectNode;

/** A group of keys kept as it is, for something else that knows its fields. */
final class OptionsType extends ValueType<ObjectNode> {
  @Override
  FieldKind kind() {
    return FieldKind.OPTIONS;
  }

  @Override
  Optional<ObjectNode> read(DocumentNode node, FieldReader reader) {
    return node instanceof ObjectNode object
        ? Optional.of(object)
        : refuse(node, reader, "Indent its keys below it, one to a line.");
  }

  @Override
  String allowed(UnitSystem units) {
    return "a group of keys with values";
  }

  @Override
  String example(UnitSystem units) {
    return "{}";
  }

  @Override
  String print(ObjectNode value, UnitSystem units) {
    return value.given();
  }
}
