package trammel.reading.fields;

import trammel.reading.quantity.MeasuredPosition;
import trammel.reading.quantity.Measurement;
import trammel.reading.quantity.UnitSystem;

/** A place by three measured distances. */
final class MeasuredPointType extends PlaceType<Measurement, MeasuredPosition> {
  private final PointType plain;

  MeasuredPointType(QuantityRange range) {
    super(new AxisFields<>(new MeasurementType(new QuantityType(range)), true), range);
    this.plain = new PointType(range);
  }

  @Override
  FieldKind kind() {
    return FieldKind.MEASURED_POINT;
  }

  @Override
  MeasuredPosition place(FieldValues values, AxisFields<Measurement> axes) {
    return new MeasuredPosition(
        values.get(axes.forward()), values.get(axes.left()), values.get(axes.up()));
  }

  @Override
  String print(MeasuredPosition value, UnitSystem units) {
    return plain.print(value.mean(), units);
  }
}
