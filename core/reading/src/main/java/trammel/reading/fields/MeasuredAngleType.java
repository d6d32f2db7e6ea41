package trammel.reading.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.MeasuredAngle;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** An angle that says what it was read against, one reading or a list of repeats. */
final class MeasuredAngleType extends ValueType<MeasuredAngle> {
  private final QuantityRange range;

  MeasuredAngleType(QuantityRange range) {
    this.range = range;
  }

  @Override
  FieldKind kind() {
    return FieldKind.MEASURED_ANGLE;
  }

  @Override
  Optional<MeasuredAngle> read(DocumentNode node, FieldReader reader) {
    Optional<List<DocumentNode>> nodes = Repeats.of(node, this, reader);
    if (nodes.isEmpty()) {
      return Optional.empty();
    }
    List<MeasuredAngle> readings = new ArrayList<>();
    for (DocumentNode one : nodes.get()) {
      Optional<MeasuredAngle> reading = readOne(one, reader);
      if (reading.isPresent()) {
        readings.add(reading.get());
      }
    }
    return readings.size() < nodes.get().size()
        ? Optional.empty()
        : together(node, readings, reader);
  }

  private Optional<MeasuredAngle> readOne(DocumentNode node, FieldReader reader) {
    Optional<DatumText> split = DatumText.of(node);
    if (split.isEmpty() || split.get().from().isEmpty()) {
      return refuse(
          node, reader, "Say what it was read against: 2.5 deg from level, or 2.5 deg from frame.");
    }
    Optional<Datum> datum = datumNamed(split.get().from().get());
    if (datum.isEmpty()) {
      return refuse(
          node, reader, "The words after from are level or frame: write 2.5 deg from level.");
    }
    Optional<Double> angleRad =
        range.read(node.location(), split.get().quantity(), node.given(), reader);
    if (angleRad.isEmpty()) {
      return Optional.empty();
    }
    double toleranceRad = reader.tolerances().angleFinderRad();
    return Optional.of(
        new MeasuredAngle(Measurement.ofAngleRad(angleRad.get(), toleranceRad), datum.get()));
  }

  private Optional<MeasuredAngle> together(
      DocumentNode node, List<MeasuredAngle> readings, FieldReader reader) {
    Datum from = readings.get(0).from();
    List<Double> anglesRad = new ArrayList<>();
    for (MeasuredAngle reading : readings) {
      if (reading.from() != from) {
        return refuse(node, reader, "Read all repeats of one angle against the same datum.");
      }
      anglesRad.add(reading.meanRad());
    }
    Measurement all =
        new Measurement(QuantityKind.ANGLE, anglesRad, reader.tolerances().angleFinderRad());
    Repeats.warnOfSpread(node, all, reader);
    return Optional.of(new MeasuredAngle(all, from));
  }

  private static Optional<Datum> datumNamed(String word) {
    for (Datum datum : Datum.values()) {
      if (datum.word().equals(word)) {
        return Optional.of(datum);
      }
    }
    return Optional.empty();
  }

  @Override
  String allowed(UnitSystem units) {
    return range.allowed(units) + " that ends in from level or from frame, or a list of repeats";
  }

  @Override
  String example(UnitSystem units) {
    return range.example(units) + " from level";
  }

  @Override
  String print(MeasuredAngle value, UnitSystem units) {
    return new QuantityPrinter(units).angle(value.meanRad(), 2) + " from " + value.from().word();
  }

  @Override
  boolean accepts(MeasuredAngle value) {
    return range.holds(value.meanRad());
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
