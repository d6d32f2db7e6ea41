package trammel.app.text;

import java.util.List;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** What is installed and what can be set on it, on a screen. */
public final class OptionsText {
  private static final String INDENT = "      ";

  private final UnitSystem units;

  /**
   * @param units the units in which ranges are shown
   */
  public OptionsText(UnitSystem units) {
    this.units = units;
  }

  /** What one linkage, spring mount or addition is. */
  public String text(String id, String title, String summary) {
    return "\n  " + id + ": " + title + "\n" + Paragraph.wrap(summary, "    ", "    ");
  }

  /** Its options. */
  public String options(String path, List<Field<?>> options) {
    StringBuilder text = new StringBuilder("    options, under " + path + ":\n");
    for (Field<?> option : options) {
      String value =
          option.defaultText(units).map(given -> " (" + given + " unless set)").orElse("");
      text.append(INDENT).append(option.key()).append(value).append('\n');
      text.append(
          Paragraph.wrap(
              sentence(option.help()) + " Allowed: " + option.allowed(units) + ".",
              INDENT + "  ",
              INDENT + "  "));
    }
    return text.toString();
  }

  private static String sentence(String help) {
    return help.endsWith(".") ? help : help + ".";
  }
}
