package trammel.planning.figures;

import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/**
 * What a figure is given.
 *
 * @param values the values of its fields, checked
 * @param units the units that bare numbers inside a text take
 */
record FigureInputs(FieldValues values, UnitSystem units) {
  <T> T get(Field<T> field) {
    return values.get(field);
  }

  <T> Optional<T> find(Field<T> field) {
    return values.find(field);
  }
}
