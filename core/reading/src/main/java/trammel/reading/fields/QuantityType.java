package trammel.reading.fields;

import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** One quantity in a range. */
class QuantityType extends ValueType<Double> {
  private final QuantityRange range;

  QuantityType(QuantityRange range) {
    this.range = range;
  }

  final QuantityRange range() {
    return range;
  }

  @Override
  FieldKind kind() {
    return FieldKind.valueOf(range.kind().name());
  }

  @Override
  Optional<Double> read(DocumentNode node, FieldReader reader) {
    return range.read(node, reader);
  }

  @Override
  String allowed(UnitSystem units) {
    return range.allowed(units);
  }

  @Override
  String example(UnitSystem units) {
    return range.example(units);
  }

  @Override
  String print(Double value, UnitSystem units) {
    return new QuantityPrinter(units).print(value, range.kind());
  }

  @Override
  boolean accepts(Double value) {
    return range.holds(value);
  }

  @Override
  String unit(UnitSystem units) {
    return range.kind().bareUnit(units).symbol();
  }

  @Override
  OptionalDouble least() {
    return OptionalDouble.of(range.least());
  }

  @Override
  OptionalDouble greatest() {
    return OptionalDouble.of(range.greatest());
  }
}
