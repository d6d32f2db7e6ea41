package trammel.planning.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.planning.document.DocumentNode;
import trammel.planning.quantity.Measurement;
import trammel.planning.quantity.QuantityKind;
import trammel.planning.quantity.QuantityPrinter;
import trammel.planning.quantity.UnitSystem;

/** A length or weight, one reading or a list of repeats. */
final class MeasurementType extends ValueType<Measurement> {
  private final QuantityRange range;

  MeasurementType(QuantityRange range) {
    this.range = range;
  }

  @Override
  FieldKind kind() {
    return range.kind() == QuantityKind.MASS ? FieldKind.MEASURED_MASS : FieldKind.MEASURED_LENGTH;
  }

  @Override
  Optional<Measurement> read(DocumentNode node, FieldReader reader) {
    Optional<List<DocumentNode>> nodes = Repeats.of(node, this, reader);
    if (nodes.isEmpty()) {
      return Optional.empty();
    }
    List<Double> readings = new ArrayList<>();
    for (DocumentNode one : nodes.get()) {
      Optional<Double> reading = range.read(one, reader);
      if (reading.isPresent()) {
        readings.add(reading.get());
      }
    }
    if (readings.size() < nodes.get().size()) {
      return Optional.empty();
    }
    Measurement measurement =
        new Measurement(range.kind(), readings, reader.tolerances().of(range.kind()));
    Repeats.warnOfSpread(node, measurement, reader);
    return Optional.of(measurement);
  }

  @Override
  String allowed(UnitSystem units) {
    return range.allowed(units) + ", or a list of repeats";
  }

  @Override
  String example(UnitSystem units) {
    return range.example(units);
  }

  @Override
  String print(Measurement value, UnitSystem units) {
    return new QuantityPrinter(units).print(value.mean(), range.kind());
  }

  @Override
  boolean accepts(Measurement value) {
    return value.kind() == range.kind() && range.holds(value.mean());
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
