package trammel.app.text;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import trammel.planning.figures.Figure;
import trammel.planning.figures.FigureAnswer;
import trammel.planning.figures.FigureOutput;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** Bench figures on a screen. */
public final class FigureText {
  private static final String INDENT = "  ";

  private FigureText() {}

  /** All figures, subject by subject. */
  public static String list(List<Figure> figures) {
    StringBuilder text = new StringBuilder();
    String subject = "";
    Table table = new Table("ll");
    for (Figure figure : figures) {
      if (!figure.subject().equals(subject)) {
        text.append(table.text(INDENT)).append(text.length() == 0 ? "" : "\n");
        table = new Table("ll");
        subject = figure.subject();
        text.append(subject).append('\n');
      }
      table.row(figure.name(), figure.title());
    }
    text.append(table.text(INDENT));
    text.append("\n'trammel figure NAME' says what goes in.\n");
    return text.toString();
  }

  /** What goes into a figure and what comes out. */
  public static String inputs(Figure figure, UnitSystem units) {
    StringBuilder text = new StringBuilder(heading(figure));
    text.append("\nINPUTS\n");
    for (Field<?> input : figure.inputs()) {
      text.append(
          Paragraph.wrap(
              input.key() + ": " + input.help() + "; " + rule(input, units), INDENT, "      "));
    }
    text.append("\nRESULTS\n");
    Table results = new Table("ll");
    for (FigureOutput output : figure.outputs()) {
      results.row(output.title(), output.unit().symbol(units));
    }
    text.append(results.text(INDENT)).append('\n');
    text.append(
        Paragraph.wrap(
            "trammel figure " + figure.name() + " " + figure.example(), "Example: ", "    "));
    text.append(origin(figure));
    return text.toString();
  }

  private static String rule(Field<?> input, UnitSystem units) {
    Optional<String> standard = Figure.standard(input, units);
    if (standard.isPresent()) {
      return input.allowed(units) + "; without it " + standard.get();
    }
    return input.allowed(units) + (input.isRequired() ? "" : "; may be left out");
  }

  /** A figure worked out. */
  public static String answers(
      Figure figure, Map<String, String> given, List<FigureAnswer> answers, UnitSystem units) {
    StringBuilder text = new StringBuilder(heading(figure));
    Table inputs = new Table("ll");
    for (Field<?> input : figure.inputs()) {
      String written = given.get(input.key());
      if (written != null) {
        String unit = isBare(written) ? input.unit(units) : "";
        inputs.row(input.help(), unit.isEmpty() ? written : written + " " + unit);
      } else if (Figure.standard(input, units).isPresent()) {
        inputs.row(input.help(), Figure.standard(input, units).get() + " (not given)");
      }
    }
    text.append('\n').append(inputs.text(INDENT)).append('\n');
    Table results = new Table("ll");
    for (FigureAnswer answer : answers) {
      results.row(answer.output().title(), answer.text(units));
    }
    text.append(results.text(INDENT)).append('\n').append(origin(figure));
    return text.toString();
  }

  /** Whether a value was written without its unit. */
  private static boolean isBare(String written) {
    for (int i = 0; i < written.length(); i++) {
      if ("0123456789./ -+".indexOf(written.charAt(i)) < 0) {
        return false;
      }
    }
    return true;
  }

  private static String heading(Figure figure) {
    return figure.name().toUpperCase(Locale.ROOT) + "  " + figure.title() + "\n";
  }

  private static String origin(Figure figure) {
    return Paragraph.wrap(figure.formula(), "Formula: ", "    ")
        + Paragraph.wrap(figure.source(), "Source: ", "    ");
  }
}
