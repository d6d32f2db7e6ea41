package trammel.reading.fields;

import trammel.reading.quantity.PartialPosition;
import trammel.reading.quantity.UnitSystem;

/** Some of the three distances of a place. */
final class PartialPointType extends PlaceType<Double, PartialPosition> {
  PartialPointType(QuantityRange range) {
    super(new AxisFields<>(new QuantityType(range), false), range);
  }

  @Override
  FieldKind kind() {
    return FieldKind.PARTIAL_POINT;
  }

  @Override
  PartialPosition place(FieldValues values, AxisFields<Double> axes) {
    return new PartialPosition(
        values.find(axes.forward()), values.find(axes.left()), values.find(axes.up()));
  }

  @Override
  String allowed(UnitSystem units) {
    return "some of forward, left and up, each " + range().allowed(units);
  }

  @Override
  String example(UnitSystem units) {
    return units == UnitSystem.US ? "{up: 12 1/4 in}" : "{up: 311 mm}";
  }

  @Override
  String print(PartialPosition value, UnitSystem units) {
    return value.toString();
  }
}
