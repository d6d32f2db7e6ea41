package trammel.reading.fields;

import java.util.Optional;
import trammel.reading.quantity.Datum;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** An angle that is always from level; saying so is allowed, saying otherwise is refused. */
final class LevelAngleType extends QuantityType {
  LevelAngleType(QuantityRange range) {
    super(range);
  }

  @Override
  Optional<Double> read(DocumentNode node, FieldReader reader) {
    Optional<DatumText> split = DatumText.of(node);
    if (split.isEmpty() || split.get().from().isEmpty()) {
      return range().read(node, reader);
    }
    if (!split.get().from().get().equals(Datum.LEVEL.word())) {
      return refuse(
          node, reader, "Measure this angle from level: " + example(reader.units()) + ".");
    }
    return range().read(node.location(), split.get().quantity(), node.given(), reader);
  }

  @Override
  String allowed(UnitSystem units) {
    return super.allowed(units) + " from level";
  }

  @Override
  String example(UnitSystem units) {
    return super.example(units) + " from level";
  }

  @Override
  String print(Double value, UnitSystem units) {
    return super.print(value, units) + " from level";
  }
}
