package trammel.reading.fields;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ObjectNode;

/** Groups of keys, each under a name, for something else that knows the names and their fields. */
final class NamedOptionsType extends ValueType<Map<String, ObjectNode>> {
  private final OptionsType options = new OptionsType();

  @Override
  FieldKind kind() {
    return FieldKind.OPTIONS_MAP;
  }

  @Override
  Optional<Map<String, ObjectNode>> read(DocumentNode node, FieldReader reader) {
    if (!(node instanceof ObjectNode object)) {
      return refuse(node, reader, "Write names with a colon, and {} behind one without options.");
    }
    Map<String, ObjectNode> all = new LinkedHashMap<>();
    for (ObjectNode.Member member : object.members()) {
      if (member.value() instanceof ObjectNode given) {
        all.put(member.key(), given);
      } else {
        refuse(
            member.value(),
            reader,
            "Write its options in braces, or {} to leave each at its default.");
      }
    }
    return all.size() == object.members().size()
        ? Optional.of(Collections.unmodifiableMap(all))
        : Optional.empty();
  }

  @Override
  String allowed(UnitSystem units) {
    return "names, each with " + options.allowed(units) + ", {} for none";
  }

  @Override
  String example(UnitSystem units) {
    return "{name: {}}";
  }

  @Override
  String print(Map<String, ObjectNode> value, UnitSystem units) {
    return value.isEmpty() ? "none" : String.join(", ", value.keySet());
  }
}
