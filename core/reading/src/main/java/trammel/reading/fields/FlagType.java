package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.FlagNode;
import trammel.reading.tree.TextNode;

/** True or false; yes and no are understood. */
final class FlagType extends ValueType<Boolean> {
  @Override
  FieldKind kind() {
    return FieldKind.FLAG;
  }

  @Override
  Optional<Boolean> read(DocumentNode node, FieldReader reader) {
    if (node instanceof FlagNode flag) {
      return Optional.of(flag.value());
    }
    if (node instanceof TextNode text && (text.text().equals("yes") || text.text().equals("no"))) {
      return Optional.of(text.text().equals("yes"));
    }
    return refuse(node, reader);
  }

  @Override
  String allowed(UnitSystem units) {
    return "true or false";
  }

  @Override
  String example(UnitSystem units) {
    return "true";
  }

  @Override
  String print(Boolean value, UnitSystem units) {
    return value.toString();
  }
}
