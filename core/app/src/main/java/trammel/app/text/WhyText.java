package trammel.app.text;

import java.util.List;
import trammel.planning.estimate.Explanation;

/** How figures of a price came about, on a screen. */
public final class WhyText {
  private WhyText() {}

  /** One block a figure. */
  public static String text(List<Explanation> explanations) {
    StringBuilder text = new StringBuilder();
    for (Explanation one : explanations) {
      text.append(one.amount().text()).append("  ").append(one.name());
      text.append(" (").append(one.title()).append(")\n");
      Table table = new Table("rl");
      for (Explanation.Step step : one.steps()) {
        table.row(step.figure(), step.text());
      }
      text.append(table.text("  ")).append('\n');
    }
    return text.toString();
  }
}
