package trammel.planning.figures;

import java.util.List;
import java.util.Optional;
import trammel.reading.fields.Field;
import trammel.reading.quantity.UnitSystem;

/** The reference of all figures in Markdown. */
public final class FigureDocumentation {
  private static final String INTRODUCTION =
      """
      # Formulas

      Every single formula of the tool, with its source. Each can be worked out on its own:

          trammel figure                                   lists them
          trammel figure tube-weight                       says what goes in
          trammel figure tube-weight outside=1.75 wall=0.120

      A bare number takes US shop units, or metric ones with `--units metric`; `3/16 in`, `29 1/2"`,
      `750 mm`, `1.5 deg`, `180 lb/in` and `60 ksi` are understood too. "From memory" says that the
      source was not at hand when its formula was written down; "common practice, no source" that
      there is none. Strength figures are screening estimates for comparison, not certification.

      This page is written by the tool's own tests from the figures themselves.

      """;

  private FigureDocumentation() {}

  /** The page. */
  public static String markdown() {
    StringBuilder page = new StringBuilder(INTRODUCTION);
    String subject = "";
    for (Figure figure : Figures.all()) {
      if (!figure.subject().equals(subject)) {
        subject = figure.subject();
        page.append("## ").append(subject).append("\n\n");
      }
      page.append("### `").append(figure.name()).append("`\n\n");
      page.append(figure.title()).append(".\n\n");
      page.append("* Formula: ").append(figure.formula()).append("\n");
      page.append("* Source: ").append(figure.source()).append("\n");
      page.append("* Results: ").append(results(figure.outputs())).append("\n");
      page.append("* Example: `trammel figure ").append(figure.name()).append(' ');
      page.append(figure.example()).append("`\n\n");
      table(page, figure.inputs());
    }
    return page.toString().stripTrailing() + "\n";
  }

  private static void table(StringBuilder page, List<Field<?>> inputs) {
    page.append("| key | what | allowed | without it |\n|---|---|---|---|\n");
    for (Field<?> input : inputs) {
      String us = input.allowed(UnitSystem.US);
      String metric = input.allowed(UnitSystem.METRIC);
      page.append("| `").append(input.key()).append("` | ").append(input.help()).append(" | ");
      page.append(us.equals(metric) ? us : us + " (metric: " + metric + ")").append(" | ");
      page.append(without(input)).append(" |\n");
    }
    page.append('\n');
  }

  private static String without(Field<?> input) {
    Optional<String> standard = Figure.standard(input, UnitSystem.US);
    return standard.orElse(input.isRequired() ? "required" : "may be left out");
  }

  private static String results(List<FigureOutput> outputs) {
    StringBuilder text = new StringBuilder();
    for (FigureOutput output : outputs) {
      String us = output.unit().symbol(UnitSystem.US);
      String metric = output.unit().symbol(UnitSystem.METRIC);
      text.append(text.length() == 0 ? "" : "; ").append(output.title());
      if (!us.isEmpty()) {
        text.append(" (").append(us.equals(metric) ? us : us + ", " + metric).append(')');
      }
    }
    return text.toString();
  }
}
