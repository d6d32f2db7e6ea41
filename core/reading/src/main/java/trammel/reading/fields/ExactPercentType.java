package trammel.reading.fields;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.QuantityKind;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** A percentage that multiplies money: the ratio is an exact decimal. */
final class ExactPercentType extends ValueType<BigDecimal> {
  private final QuantityRange range;

  ExactPercentType(double leastRatio, double greatestRatio) {
    this.range = new QuantityRange(QuantityKind.PERCENT, leastRatio, greatestRatio);
  }

  @Override
  FieldKind kind() {
    return FieldKind.PERCENT;
  }

  @Override
  Optional<BigDecimal> read(DocumentNode node, FieldReader reader) {
    Optional<Double> ratio = range.read(node, reader);
    // The ratio is the double nearest to the decimal written, so its shortest text is that decimal.
    return ratio.isPresent() ? Optional.of(BigDecimal.valueOf(ratio.get())) : Optional.empty();
  }

  @Override
  boolean accepts(BigDecimal value) {
    return range.holds(value.doubleValue());
  }

  @Override
  String allowed(UnitSystem units) {
    return range.allowed(units);
  }

  @Override
  String example(UnitSystem units) {
    return range.example(units);
  }

  @Override
  String print(BigDecimal value, UnitSystem units) {
    return QuantityPrinter.percent(value);
  }

  @Override
  String unit(UnitSystem units) {
    return "%";
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
