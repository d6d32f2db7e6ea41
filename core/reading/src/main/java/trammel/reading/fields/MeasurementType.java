package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** A length, weight or angle from level, one reading or a list of repeats. */
final class MeasurementType extends ValueType<Measurement> {
  private final QuantityType one;

  MeasurementType(QuantityType one) {
    this.one = one;
  }

  @Override
  FieldKind kind() {
    return switch (one.range().kind()) {
      case MASS -> FieldKind.MEASURED_MASS;
      case ANGLE -> FieldKind.MEASURED_LEVEL_ANGLE;
      default -> FieldKind.MEASURED_LENGTH;
    };
  }

  @Override
  Optional<Measurement> read(DocumentNode node, FieldReader reader) {
    Optional<List<DocumentNode>> nodes = Repeats.of(node, this, reader);
    if (nodes.isEmpty()) {
      return Optional.empty();
    }
    List<Double> readings = new ArrayList<>();
    for (DocumentNode repeat : nodes.get()) {
      Optional<Double> reading = one.read(repeat, reader);
      if (reading.isPresent()) {
        readings.add(reading.get());
      }
    }
    if (readings.size() < nodes.get().size()) {
      return Optional.empty();
    }
    QuantityKind kind = one.range().kind();
    Measurement measurement = new Measurement(kind, readings, reader.tolerances().of(kind));
    Repeats.warnOfSpread(node, measurement, reader);
    return Optional.of(measurement);
  }

  @Override
  String allowed(UnitSystem units) {
    return one.allowed(units) + ", or a list of repeats";
  }

  @Override
  String example(UnitSystem units) {
    return one.example(units);
  }

  @Override
  String print(Measurement value, UnitSystem units) {
    return one.print(value.mean(), units);
  }

  @Override
  boolean accepts(Measurement value) {
    return value.kind() == one.range().kind() && one.accepts(value.mean());
  }

  @Override
  String unit(UnitSystem units) {
    return one.unit(units);
  }

  @Override
  OptionalDouble least() {
    return one.least();
  }

  @Override
  OptionalDouble greatest() {
    return one.greatest();
  }
}
