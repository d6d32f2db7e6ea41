package trammel.reading.fields;

import trammel.reading.quantity.Position;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/** A place by three distances. */
final class PointType extends PlaceType<Double, Position> {
  PointType(QuantityRange range) {
    super(new AxisFields<>(new QuantityType(range), true), range);
  }

  @Override
  FieldKind kind() {
    return FieldKind.POINT;
  }

  @Override
  Position place(FieldValues values, AxisFields<Double> axes) {
    return new Position(values.get(axes.forward()), values.get(axes.left()), values.get(axes.up()));
  }

  @Override
  String print(Position value, UnitSystem units) {
    QuantityPrinter printer = new QuantityPrinter(units);
    return "{forward: "
        + printer.length(value.forwardMm())
        + ", left: "
        + printer.length(value.leftMm())
        + ", up: "
        + printer.length(value.upMm())
        + "}";
  }
}
