package trammel.reading.fields;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ObjectNode;

/** Groups of the same fields, each under a name that the user chooses. */
final class SectionMapType extends ValueType<Map<String, FieldValues>> {
  private final SectionType section;

  SectionMapType(List<Field<?>> fields) {
    this.section = new SectionType(fields);
  }

  @Override
  FieldKind kind() {
    return FieldKind.SECTION_MAP;
  }

  @Override
  Optional<Map<String, FieldValues>> read(DocumentNode node, FieldReader reader) {
    if (!(node instanceof ObjectNode object)) {
      return refuse(node, reader, "Write a name with a colon and indent its keys below it.");
    }
    Map<String, FieldValues> all = new LinkedHashMap<>();
    for (ObjectNode.Member member : object.members()) {
      Optional<FieldValues> values = section.read(member.value(), reader);
      if (values.isPresent()) {
        all.put(member.key(), values.get());
      }
    }
    return all.size() == object.members().size()
        ? Optional.of(Collections.unmodifiableMap(all))
        : Optional.empty();
  }

  @Override
  String allowed(UnitSystem units) {
    return "names, each with " + section.allowed(units);
  }

  @Override
  String example(UnitSystem units) {
    return "{name: " + section.example(units) + "}";
  }

  @Override
  String print(Map<String, FieldValues> value, UnitSystem units) {
    return value.isEmpty() ? "none" : "a group of " + value.size();
  }

  @Override
  List<Field<?>> children() {
    return section.children();
  }
}
