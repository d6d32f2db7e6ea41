package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.quantity.DecimalText;
import trammel.reading.quantity.Quantities;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.Unit;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.Location;

/**
 * The range of a quantity: reads a value in it, or reports why not.
 *
 * @param kind what it measures
 * @param least least value, inside unit
 * @param greatest greatest value, inside unit
 */
record QuantityRange(QuantityKind kind, double least, double greatest) {
  /** A bound that was converted to shop units and back must still be accepted. */
  private static final double SLACK = 1e-9;

  private static final double THIRTY_SECOND_MM = 25.4 / 32;

  QuantityRange {
    if (!Double.isFinite(least) || !Double.isFinite(greatest) || least >= greatest) {
      throw new IllegalArgumentException(
          "The range from ("
              + least
              + ") to ("
              + greatest
              + ") must be finite with the lesser value first.");
    }
  }

  boolean holds(double inside) {
    double slack = SLACK * Math.max(Math.abs(least), Math.abs(greatest));
    return inside >= least - slack && inside <= greatest + slack;
  }

  Optional<Double> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    if (text.isEmpty()) {
      return refused(node.location(), node.given(), reader, writeExample(reader));
    }
    return read(node.location(), text.get(), node.given(), reader);
  }

  Optional<Double> read(Location where, String text, String given, FieldReader reader) {
    double inside;
    try {
      inside = Quantities.parse(text, kind, reader.units());
    } catch (QuantityFormatException e) {
      return refused(where, given, reader, e.remedy());
    }
    if (holds(inside)) {
      return Optional.of(Math.max(least, Math.min(greatest, inside)));
    }
    return refused(
        where, given, reader, "Check the unit and the reading; write a value in this range.");
  }

  String allowed(UnitSystem units) {
    return kind.noun()
        + " from "
        + bound(least, true, units)
        + " to "
        + bound(greatest, false, units);
  }

  String example(UnitSystem units) {
    String usual = kind.example(units);
    if (holds(Quantities.parse(usual, kind, units))) {
      return usual;
    }
    double middle = (least + greatest) / 2;
    String printed = new QuantityPrinter(units).print(middle, kind);
    return holds(Quantities.parse(printed, kind, units)) ? printed : bound(greatest, false, units);
  }

  private String writeExample(FieldReader reader) {
    return "Write one value, such as " + example(reader.units()) + ".";
  }

  private Optional<Double> refused(
      Location where, String given, FieldReader reader, String remedy) {
    reader.problems().error(where, given, allowed(reader.units()), remedy);
    return Optional.empty();
  }

  /** A bound in the job's units, rounded into the range so that what is printed is accepted. */
  private String bound(double inside, boolean up, UnitSystem units) {
    if (kind == QuantityKind.LENGTH && units == UnitSystem.US) {
      double parts = inside / THIRTY_SECOND_MM;
      if (Math.abs(parts - Math.rint(parts)) < 1e-6) {
        return QuantityPrinter.inches(inside);
      }
    }
    Unit unit = kind.bareUnit(units);
    double thousandths = unit.fromInside(inside) * 1000;
    double rounded = up ? Math.ceil(thousandths - 1e-6) : Math.floor(thousandths + 1e-6);
    return DecimalText.trimmed(rounded / 1000, 3) + " " + unit.symbol();
  }
}
