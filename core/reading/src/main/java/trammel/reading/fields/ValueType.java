package trammel.reading.fields;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** How the value of one kind of field is read, described and printed. */
abstract class ValueType<T> {
  abstract FieldKind kind();

  /** The value of a node, or empty after the problem has been reported to the reader. */
  abstract Optional<T> read(DocumentNode node, FieldReader reader);

  /** What may stand there, in words: {@code a length from 1 in to 12 in}. */
  abstract String allowed(UnitSystem units);

  /** Something that may stand there. */
  abstract String example(UnitSystem units);

  /** A value as it could be written in a file. */
  abstract String print(T value, UnitSystem units);

  /** Whether a value, such as a default, is within the range. */
  boolean accepts(T value) {
    return true;
  }

  String unit(UnitSystem units) {
    return "";
  }

  OptionalDouble least() {
    return OptionalDouble.empty();
  }

  OptionalDouble greatest() {
    return OptionalDouble.empty();
  }

  List<String> choices() {
    return List.of();
  }

  List<Field<?>> children() {
    return List.of();
  }

  /** Reports that a node is of the wrong kind or out of range. */
  final Optional<T> refuse(DocumentNode node, FieldReader reader, String remedy) {
    reader.problems().error(node.location(), node.given(), allowed(reader.units()), remedy);
    return Optional.empty();
  }

  final Optional<T> refuse(DocumentNode node, FieldReader reader) {
    return refuse(node, reader, "Write for example " + example(reader.units()) + ".");
  }
}
