package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ObjectNode;

/** A group of fields under one key. */
final class SectionType extends ValueType<FieldValues> {
  private final List<Field<?>> fields;

  SectionType(List<Field<?>> fields) {
    this.fields = List.copyOf(fields);
    if (fields.isEmpty()) {
      throw new IllegalArgumentException("A section needs at least one field; none was given.");
    }
  }

  @Override
  FieldKind kind() {
    return FieldKind.SECTION;
  }

  @Override
  Optional<FieldValues> read(DocumentNode node, FieldReader reader) {
    return node instanceof ObjectNode object
        ? Optional.of(reader.read(object, fields))
        : refuse(
            node, reader, "Indent its keys below it, such as " + example(reader.units()) + ".");
  }

  /** A section must be there if one of its fields must be. */
  boolean needsWriting() {
    for (Field<?> field : fields) {
      if (field.isRequired()) {
        return true;
      }
    }
    return false;
  }

  @Override
  String allowed(UnitSystem units) {
    return "a group with the keys " + WordList.and(keys());
  }

  @Override
  String example(UnitSystem units) {
    return "{" + fields.get(0).key() + ": " + fields.get(0).example(units) + "}";
  }

  @Override
  String print(FieldValues value, UnitSystem units) {
    return WordList.plain(keys());
  }

  @Override
  List<Field<?>> children() {
    return fields;
  }

  private List<String> keys() {
    List<String> keys = new ArrayList<>(fields.size());
    for (Field<?> field : fields) {
      keys.add(field.key());
    }
    return keys;
  }
}
