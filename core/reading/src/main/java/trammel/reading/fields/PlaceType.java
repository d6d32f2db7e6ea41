package trammel.reading.fields;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problems;

/** A place by the keys forward, left and up; what becomes of the three is the subclass's matter. */
abstract class PlaceType<A, T> extends ValueType<T> {
  private final AxisFields<A> axes;
  private final QuantityRange range;

  PlaceType(AxisFields<A> axes, QuantityRange range) {
    this.axes = axes;
    this.range = range;
  }

  abstract T place(FieldValues values, AxisFields<A> axes);

  @Override
  final Optional<T> read(DocumentNode node, FieldReader reader) {
    if (!(node instanceof ObjectNode object)) {
      return refuse(node, reader);
    }
    Problems own = new Problems();
    FieldValues values = reader.reportingTo(own).read(object, axes.all());
    reader.problems().addAll(own);
    return own.hasErrors() ? Optional.empty() : Optional.of(place(values, axes));
  }

  final QuantityRange range() {
    return range;
  }

  @Override
  String allowed(UnitSystem units) {
    return "forward, left and up, each " + range.allowed(units);
  }

  @Override
  String example(UnitSystem units) {
    return units == UnitSystem.US
        ? "{forward: 22 1/2 in, left: 0 in, up: 18 in}"
        : "{forward: 570 mm, left: 0 mm, up: 455 mm}";
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

  @Override
  List<Field<?>> children() {
    return axes.all();
  }
}
