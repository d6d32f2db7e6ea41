package trammel.reading.fields;

import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** A number without unit. */
final class NumberType extends ValueType<Double> {
  private static final int LONGEST = 30;

  private final double least;
  private final double greatest;

  NumberType(double least, double greatest) {
    if (!Double.isFinite(least) || !Double.isFinite(greatest) || least >= greatest) {
      throw new IllegalArgumentException(
          "The range from ("
              + least
              + ") to ("
              + greatest
              + ") must be finite with the lesser value first.");
    }
    this.least = least;
    this.greatest = greatest;
  }

  @Override
  FieldKind kind() {
    return FieldKind.NUMBER;
  }

  @Override
  Optional<Double> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    Optional<Double> number = text.isPresent() ? decimal(text.get()) : Optional.empty();
    if (number.isEmpty()) {
      return refuse(node, reader, "Write a plain number, such as " + example(reader.units()) + ".");
    }
    if (!accepts(number.get())) {
      return refuse(node, reader, "Write a number in this range.");
    }
    return number;
  }

  /** The value of a text that is nothing but a decimal number. */
  static Optional<Double> decimal(String text) {
    for (int i = 0; i < text.length(); i++) {
      if ("0123456789.+-eE".indexOf(text.charAt(i)) < 0) {
        return Optional.empty();
      }
    }
    if (text.isEmpty() || text.length() > LONGEST) {
      return Optional.empty();
    }
    try {
      return Optional.of(Double.parseDouble(text));
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  @Override
  boolean accepts(Double value) {
    return value >= least && value <= greatest;
  }

  @Override
  String allowed(UnitSystem units) {
    return "a number from " + print(least, units) + " to " + print(greatest, units);
  }

  @Override
  String example(UnitSystem units) {
    return print((least + greatest) / 2, units);
  }

  @Override
  String print(Double value, UnitSystem units) {
    return DecimalText.trimmed(value, 6);
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
