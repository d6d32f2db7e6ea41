package trammel.reading.fields;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** An amount of money, an exact decimal without sign of currency. */
final class MoneyType extends ValueType<BigDecimal> {
  private static final BigDecimal MOST = new BigDecimal(10_000_000);
  private static final int MOST_DECIMALS = 4;

  @Override
  FieldKind kind() {
    return FieldKind.MONEY;
  }

  @Override
  Optional<BigDecimal> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    if (text.isEmpty() || !isPlainDecimal(text.get())) {
      return refuse(
          node,
          reader,
          "Write digits with a point for the decimals and nothing else, such as 95.00: the currency"
              + " stands in its own field.");
    }
    BigDecimal amount = new BigDecimal(text.get());
    if (!accepts(amount)) {
      return refuse(node, reader, "Write an amount in this range.");
    }
    return Optional.of(amount);
  }

  private static boolean isPlainDecimal(String text) {
    int points = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean point = c == '.' && i > 0 && i < text.length() - 1;
      points += point ? 1 : 0;
      if (!point && (c < '0' || c > '9')) {
        return false;
      }
    }
    return !text.isEmpty() && text.length() <= 20 && points <= 1;
  }

  @Override
  boolean accepts(BigDecimal value) {
    return value.signum() >= 0 && value.compareTo(MOST) <= 0 && value.scale() <= MOST_DECIMALS;
  }

  @Override
  String allowed(UnitSystem units) {
    return "an amount from 0 to "
        + MOST.toPlainString()
        + " with at most "
        + MOST_DECIMALS
        + " decimals";
  }

  @Override
  String example(UnitSystem units) {
    return "95.00";
  }

  @Override
  String print(BigDecimal value, UnitSystem units) {
    return value.toPlainString();
  }

  @Override
  OptionalDouble least() {
    return OptionalDouble.of(0);
  }

  @Override
  OptionalDouble greatest() {
    return OptionalDouble.of(MOST.doubleValue());
  }
}
