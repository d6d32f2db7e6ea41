package trammel.reading.fields;

import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** A whole number. */
final class CountType extends ValueType<Integer> {
  private final int least;
  private final int greatest;

  CountType(int least, int greatest) {
    if (least > greatest) {
      throw new IllegalArgumentException(
          "The range from (" + least + ") to (" + greatest + ") must have the lesser value first.");
    }
    this.least = least;
    this.greatest = greatest;
  }

  @Override
  FieldKind kind() {
    return FieldKind.COUNT;
  }

  @Override
  Optional<Integer> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    Optional<Integer> count = text.isPresent() ? whole(text.get()) : Optional.empty();
    if (count.isEmpty()) {
      return refuse(node, reader, "Write a whole number, such as " + example(reader.units()) + ".");
    }
    if (!accepts(count.get())) {
      return refuse(node, reader, "Write a whole number in this range.");
    }
    return count;
  }

  private static Optional<Integer> whole(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c < '0' || c > '9') && !(c == '-' && i == 0)) {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(Integer.parseInt(text));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  @Override
  boolean accepts(Integer value) {
    return value >= least && value <= greatest;
  }

  @Override
  String allowed(UnitSystem units) {
    return "a whole number from " + least + " to " + greatest;
  }

  @Override
  String example(UnitSystem units) {
    return Integer.toString(least + (greatest - least) / 2);
  }

  @Override
  String print(Integer value, UnitSystem units) {
    return Integer.toString(value);
  }

  @Override
  OptionalDouble least() {
    return OptionalDouble.of(least);
  }

  @Override
  OptionalDouble greatest() {
    return OptionalDouble.of(greatest);
  }
}
