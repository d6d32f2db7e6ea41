package trammel.reading.fields;

import java.util.Currency;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** A currency by its ISO 4217 code. */
final class CurrencyType extends ValueType<Currency> {
  @Override
  FieldKind kind() {
    return FieldKind.CURRENCY;
  }

  @Override
  Optional<Currency> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    if (text.isPresent() && text.get().length() == 3) {
      try {
        return Optional.of(Currency.getInstance(text.get()));
      } catch (IllegalArgumentException e) {
        // Not a code of ISO 4217: refused below like any other text.
      }
    }
    return refuse(node, reader);
  }

  @Override
  String allowed(UnitSystem units) {
    return "a currency code of ISO 4217, three capital letters";
  }

  @Override
  String example(UnitSystem units) {
    return "USD";
  }

  @Override
  String print(Currency value, UnitSystem units) {
    return value.getCurrencyCode();
  }
}
