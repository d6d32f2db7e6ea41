package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;

/** A list of groups of the same fields. */
final class SectionListType extends ValueType<List<FieldValues>> {
  private final SectionType section;

  SectionListType(List<Field<?>> fields) {
    this.section = new SectionType(fields);
  }

  @Override
  FieldKind kind() {
    return FieldKind.SECTION_LIST;
  }

  @Override
  Optional<List<FieldValues>> read(DocumentNode node, FieldReader reader) {
    if (!(node instanceof ListNode list)) {
      return refuse(node, reader, "Start each entry with a dash and indent its keys below it.");
    }
    List<FieldValues> all = new ArrayList<>();
    for (DocumentNode entry : list.entries()) {
      Optional<FieldValues> values = section.read(entry, reader);
      if (values.isPresent()) {
        all.add(values.get());
      }
    }
    return all.size() == list.entries().size() ? Optional.of(List.copyOf(all)) : Optional.empty();
  }

  @Override
  String allowed(UnitSystem units) {
    return "a list; each entry is " + section.allowed(units);
  }

  @Override
  String example(UnitSystem units) {
    return "[" + section.example(units) + "]";
  }

  @Override
  String print(List<FieldValues> value, UnitSystem units) {
    return value.isEmpty() ? "none" : "a list of " + value.size();
  }

  @Override
  List<Field<?>> children() {
    return section.children();
  }
}
