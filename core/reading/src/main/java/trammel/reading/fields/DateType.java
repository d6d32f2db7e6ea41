package trammel.reading.fields;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;

/** A day, year first, as in ISO 8601. */
final class DateType extends ValueType<LocalDate> {
  private static final int LENGTH = 10;

  @Override
  FieldKind kind() {
    return FieldKind.DATE;
  }

  @Override
  Optional<LocalDate> read(DocumentNode node, FieldReader reader) {
    Optional<String> text = Scalars.text(node);
    Optional<LocalDate> day = text.isPresent() ? day(text.get()) : Optional.empty();
    return day.isPresent()
        ? day
        : refuse(node, reader, "Write year, month and day, such as 2026-11-25.");
  }

  /** Taken apart by hand: the formatter of the library costs a short command too much time. */
  private static Optional<LocalDate> day(String text) {
    if (text.length() != LENGTH || text.charAt(4) != '-' || text.charAt(7) != '-') {
      return Optional.empty();
    }
    for (int i = 0; i < LENGTH; i++) {
      char c = text.charAt(i);
      if (i != 4 && i != 7 && (c < '0' || c > '9')) {
        return Optional.empty();
      }
    }
    try {
      return Optional.of(
          LocalDate.of(
              Integer.parseInt(text.substring(0, 4)),
              Integer.parseInt(text.substring(5, 7)),
              Integer.parseInt(text.substring(8))));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  @Override
  String allowed(UnitSystem units) {
    return "a day of the calendar as year-month-day";
  }

  @Override
  String example(UnitSystem units) {
    return "2026-11-25";
  }

  @Override
  String print(LocalDate value, UnitSystem units) {
    return value.toString();
  }
}
