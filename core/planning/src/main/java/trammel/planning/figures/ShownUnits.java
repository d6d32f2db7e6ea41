package trammel.planning.figures;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import trammel.reading.quantity.UnitSystem;

/**
 * Says a refusal of a calculation, which works in mm, N, MPa and kg, in the units of the one who
 * asked.
 */
final class ShownUnits {
  private static final String NUMBER = "-?\\d+(?:\\.\\d+)?(?:[eE]-?\\d+)?";

  /** One number, or two with the words of a range between them, and their unit. */
  private static final Pattern QUANTITY =
      Pattern.compile(
          "(" + NUMBER + ")(?:( to | and )(" + NUMBER + "))? (mm|N/mm|N|MPa|kg|Nmm)(?![\\w/])");

  private static final Map<String, FigureUnit> UNITS =
      Map.of(
          "mm", FigureUnit.LENGTH,
          "N/mm", FigureUnit.RATE,
          "N", FigureUnit.FORCE,
          "MPa", FigureUnit.STRESS,
          "kg", FigureUnit.MASS,
          "Nmm", FigureUnit.TORQUE);

  private ShownUnits() {}

  /** A message with its quantities in the units of a system. */
  static String of(String message, UnitSystem units) {
    if (units == UnitSystem.METRIC) {
      return message;
    }
    Matcher matcher = QUANTITY.matcher(message);
    StringBuilder shown = new StringBuilder();
    while (matcher.find()) {
      FigureUnit unit = UNITS.get(matcher.group(4));
      String first = number(matcher.group(1), unit);
      String words =
          matcher.group(3) == null
              ? first
              : first + matcher.group(2) + number(matcher.group(3), unit);
      matcher.appendReplacement(
          shown, Matcher.quoteReplacement(words + " " + unit.symbol(UnitSystem.US)));
    }
    return matcher.appendTail(shown).toString();
  }

  private static String number(String inside, FigureUnit unit) {
    return FigureAnswer.Quantity.digits(unit.shown(Double.parseDouble(inside), UnitSystem.US));
  }
}
