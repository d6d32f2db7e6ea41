package trammel.app.text;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Verdict;
import trammel.engine.quantity.Phrase;
import trammel.planning.arrange.ArrangedLayout;
import trammel.planning.arrange.Arrangement;
import trammel.planning.arrange.Conflict;
import trammel.planning.arrange.LayoutChange;

/** What a search for layouts found, on a screen. */
public final class ArrangeText {
  private final Amounts amounts;

  /**
   * @param amounts prints values in the reader's units
   */
  public ArrangeText(Amounts amounts) {
    this.amounts = amounts;
  }

  /** The layouts side by side, what makes each, and where none passes, why. */
  public String text(Arrangement found) {
    StringBuilder text = new StringBuilder();
    text.append(heading(found));
    if (!found.layouts().isEmpty()) {
      text.append('\n').append(sideBySide(found.layouts()));
    }
    for (int i = 0; i < found.layouts().size(); i++) {
      text.append('\n').append(changes(i + 1, found.layouts().get(i)));
    }
    found.conflict().ifPresent(conflict -> text.append('\n').append(conflict(conflict)));
    if (!found.layouts().isEmpty()) {
      text.append(measurements(found.layouts().get(0)));
    }
    for (String remark : found.remarks()) {
      text.append(Paragraph.wrap("Left out: " + remark, "", "  "));
    }
    return text.toString();
  }

  /** What no layout changes: it is told once. */
  private String measurements(ArrangedLayout layout) {
    StringBuilder text = new StringBuilder();
    for (CheckResult.Judged judged : layout.open()) {
      if (layout.isOfMeasurements(judged)) {
        text.append(
            Paragraph.wrap(
                (judged.verdict() == Verdict.STOP ? "STOP: " : "look again: ")
                    + Stops.finding(judged, " ", amounts)
                    + ". "
                    + judged.advice(),
                "  ",
                "    "));
      }
    }
    return text.length() == 0 ? "" : "\nMEASUREMENTS TO TAKE AGAIN, whatever the layout\n" + text;
  }

  private static String heading(Arrangement found) {
    long passing = found.layouts().stream().filter(ArrangedLayout::passes).count();
    String tried = found.tried() + " layouts tried";
    String how = found.cutShort() ? tried + ", cut short before the effort was spent" : tried;
    if (passing > 0) {
      return passing
          + (passing == 1 ? " layout passes every check (" : " layouts pass every check (")
          + how
          + ")\n";
    }
    return "No layout passes every check ("
        + how
        + ")"
        + (found.layouts().isEmpty() ? ".\n" : "; these come nearest.\n");
  }

  private String sideBySide(List<ArrangedLayout> layouts) {
    Table table = new Table("l" + "r".repeat(layouts.size()));
    row(table, "", layouts, layout -> Integer.toString(layouts.indexOf(layout) + 1));
    row(table, "price with tax", layouts, layout -> layout.estimate().price().total().text());
    row(
        table,
        "hours, mean",
        layouts,
        layout -> amounts.printer().hours(layout.estimate().hours().meanHours()));
    row(
        table,
        "steel added",
        layouts,
        layout -> amounts.printer().mass(layout.estimate().materials().steelMassKg()));
    row(table, "checks: stop", layouts, layout -> Integer.toString(layout.count(Verdict.STOP)));
    row(
        table,
        "checks: look again",
        layouts,
        layout -> Integer.toString(layout.count(Verdict.LOOK_AGAIN)));
    row(
        table,
        "no STOP within tolerances",
        layouts,
        layout -> Math.round(100 * layout.noStopShare()) + " of 100");
    return "SIDE BY SIDE\n" + table.text("  ");
  }

  private static void row(
      Table table,
      String title,
      List<ArrangedLayout> layouts,
      Function<ArrangedLayout, String> figure) {
    String[] cells = new String[layouts.size() + 1];
    cells[0] = title;
    for (int i = 0; i < layouts.size(); i++) {
      cells[i + 1] = figure.apply(layouts.get(i));
    }
    table.row(cells);
  }

  private String changes(int number, ArrangedLayout layout) {
    StringBuilder text = new StringBuilder();
    text.append(Paragraph.wrap(number + "  " + layout.kind(), "", "   "));
    if (layout.changes().isEmpty()) {
      text.append("   the job as it is\n");
    }
    for (LayoutChange change : layout.changes()) {
      text.append(Paragraph.wrap(line(change), "   ", "     "));
      text.append(Paragraph.wrap(change.reason(), "       ", "       "));
    }
    for (CheckResult.Judged judged : layout.open()) {
      if (!layout.isOfMeasurements(judged)) {
        text.append(
            Paragraph.wrap(
                (judged.verdict() == Verdict.STOP ? "left, STOP: " : "left, look again: ")
                    + Stops.finding(judged, " ", amounts),
                "   ",
                "     "));
      }
    }
    return text.toString();
  }

  private static String line(LayoutChange change) {
    Optional<String> before = change.before();
    return change.path()
        + ": "
        + change.after()
        + (before.isPresent() ? "  (was " + before.get() + ")" : "");
  }

  private String conflict(Conflict conflict) {
    StringBuilder text = new StringBuilder("WHAT EXCLUDES WHAT\n");
    for (Phrase one : conflict.remaining()) {
      text.append(Paragraph.wrap(one.in(amounts.printer()), "  ", "    "));
    }
    if (conflict.ways().isEmpty()) {
      text.append(
          Paragraph.wrap(
              "No wish or measurement that was relaxed, alone or with another, lets a layout pass.",
              "  ",
              "    "));
      return text.toString();
    }
    text.append("  A layout passes with (each tried)\n");
    for (Conflict.Way way : conflict.ways()) {
      String together =
          String.join(", and ", way.relaxed().stream().map(ArrangeText::relaxed).toList());
      text.append(Paragraph.wrap(together, "    ", "      "));
    }
    return text.toString();
  }

  private static String relaxed(LayoutChange change) {
    return change.path()
        + ": "
        + change.after()
        + (change.before().isPresent() ? " in place of " + change.before().get() : "");
  }
}
