package trammel.reading.fields;

import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.Span;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;

/** Two distances along one axis, the smaller first. */
final class SpanType extends ValueType<Span> {
  private final QuantityRange range;

  SpanType(QuantityRange range) {
    this.range = range;
  }

  @Override
  FieldKind kind() {
    return FieldKind.SPAN;
  }

  @Override
  Optional<Span> read(DocumentNode node, FieldReader reader) {
    if (!(node instanceof ListNode list) || list.entries().size() != 2) {
      return refuse(node, reader);
    }
    Optional<Double> fromMm = range.read(list.entries().get(0), reader);
    Optional<Double> toMm = range.read(list.entries().get(1), reader);
    if (fromMm.isEmpty() || toMm.isEmpty()) {
      return Optional.empty();
    }
    if (fromMm.get() >= toMm.get()) {
      return refuse(node, reader, "Write the smaller distance first: swap them.");
    }
    return Optional.of(new Span(fromMm.get(), toMm.get()));
  }

  @Override
  String allowed(UnitSystem units) {
    return "a list of two lengths, the smaller first, each " + range.allowed(units);
  }

  @Override
  String example(UnitSystem units) {
    return units == UnitSystem.US ? "[12 in, 30 1/2 in]" : "[305 mm, 775 mm]";
  }

  @Override
  String print(Span value, UnitSystem units) {
    QuantityPrinter printer = new QuantityPrinter(units);
    return "[" + printer.length(value.fromMm()) + ", " + printer.length(value.toMm()) + "]";
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
