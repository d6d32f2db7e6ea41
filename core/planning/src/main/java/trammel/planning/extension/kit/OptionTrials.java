package trammel.planning.extension.kit;

import java.util.ArrayList;
import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.fields.FieldValues;
import trammel.reading.quantity.UnitSystem;

/** What a plugin declares as its options, and sets of values to try it with. */
final class OptionTrials {
  private final String plugin;
  private final List<Field<?>> fields;

  OptionTrials(String plugin, List<Field<?>> fields) {
    this.plugin = plugin;
    this.fields = fields;
  }

  void verifyDeclarations() {
    List<String> keys = new ArrayList<>();
    for (Field<?> field : fields) {
      String option = "Option " + field.key() + " of " + plugin;
      Promise.kept(!keys.contains(field.key()), option + " is declared twice; once is allowed.");
      keys.add(field.key());
      Promise.kept(
          !field.isRequired(),
          option + " must be given; an option needs a default or is optional.");
      Promise.kept(
          field.help().length() >= 8,
          option + " is described as '" + field.help() + "'; say in a few words what it does.");
      Promise.kept(
          !field.allowed(UnitSystem.US).isBlank() && !field.allowed(UnitSystem.METRIC).isBlank(),
          option + " does not say what may stand there.");
    }
  }

  /** One set for each choice and each end of a range, the other options left to their defaults. */
  List<FieldValues> extremes() {
    List<FieldValues> trials = new ArrayList<>();
    for (Field<?> field : fields) {
      if (field.kind() == FieldKind.CHOICE) {
        for (String choice : field.choices()) {
          trials.add(with(field, choice));
        }
      } else if (field.min().isPresent() && field.defaultValue().isPresent()) {
        if (field.defaultValue().get() instanceof Double) {
          trials.add(with(field, field.min().getAsDouble()));
          trials.add(with(field, field.max().getAsDouble()));
        }
      }
    }
    return trials;
  }

  private static <T> FieldValues with(Field<T> field, Object value) {
    // The value is of the kind that the field just named: a word for a choice, a number otherwise.
    @SuppressWarnings("unchecked")
    T typed = (T) value;
    return FieldValues.none().with(field, typed);
  }

  static void verifyNames(String id, String title, String summary) {
    Promise.kept(isId(id), "The id '" + id + "' must be lower-case words joined by hyphens.");
    Promise.kept(title != null && !title.isBlank(), "The title of " + id + " is blank.");
    Promise.kept(
        summary != null && summary.length() >= 20,
        "The summary of " + id + " must say in a sentence what it is good for.");
  }

  private static boolean isId(String id) {
    if (id == null || id.isEmpty() || id.startsWith("-") || id.endsWith("-")) {
      return false;
    }
    for (int i = 0; i < id.length(); i++) {
      char c = id.charAt(i);
      if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-')) {
        return false;
      }
    }
    return !id.contains("--");
  }
}
