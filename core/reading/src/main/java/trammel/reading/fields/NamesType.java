package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;

/** A list of names, each at most once; which names there are is not known beforehand. */
final class NamesType extends ValueType<List<String>> {
  private final TextType name;

  NamesType(int maxLength) {
    this.name = new TextType(maxLength, false);
  }

  @Override
  FieldKind kind() {
    return FieldKind.NAMES;
  }

  @Override
  Optional<List<String>> read(DocumentNode node, FieldReader reader) {
    if (!(node instanceof ListNode list)) {
      return refuse(node, reader);
    }
    List<String> names = new ArrayList<>();
    boolean good = true;
    for (DocumentNode entry : list.entries()) {
      Optional<String> one = name.read(entry, reader);
      if (one.isPresent() && names.contains(one.get())) {
        return refuse(node, reader, "Write the name " + one.get() + " once.");
      }
      good = good && one.isPresent();
      one.ifPresent(names::add);
    }
    return good ? Optional.of(List.copyOf(names)) : Optional.empty();
  }

  @Override
  String allowed(UnitSystem units) {
    return "a list of names";
  }

  @Override
  String example(UnitSystem units) {
    return "[a name]";
  }

  @Override
  String print(List<String> value, UnitSystem units) {
    return "[" + String.join(", ", value) + "]";
  }
}
