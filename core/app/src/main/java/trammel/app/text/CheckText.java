package trammel.app.text;

import java.util.List;
import java.util.stream.Collectors;
import trammel.engine.checks.Change;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.CheckResult.NotJudged;
import trammel.engine.checks.Verdict;
import trammel.planning.draft.Draft;
import trammel.planning.draft.FieldChanges;

/** The checks of a job on a screen, worst first. */
public final class CheckText {
  private final Draft draft;
  private final Amounts amounts;

  /**
   * @param draft the job whose layout was judged
   * @param amounts prints values in the reader's units
   */
  public CheckText(Draft draft, Amounts amounts) {
    this.draft = draft;
    this.amounts = amounts;
  }

  /** The word for a verdict. */
  public static String word(Verdict verdict) {
    return switch (verdict) {
      case GOOD -> "good";
      case LOOK_AGAIN -> "look again";
      case STOP -> "STOP";
    };
  }

  /** All results. */
  public String text(List<CheckResult> results) {
    StringBuilder text = new StringBuilder("CHECKS, worst first\n");
    for (CheckResult result : results) {
      if (result instanceof Judged judged && judged.verdict() != Verdict.GOOD) {
        text.append(failing(judged));
      } else if (result instanceof NotJudged open) {
        text.append("  not judged  ").append(open.title()).append('\n');
        text.append(Paragraph.wrap(open.reason(), "              ", "              "));
      }
    }
    return text.append(good(results)).toString();
  }

  private String failing(Judged judged) {
    StringBuilder text = new StringBuilder();
    text.append(judged.verdict() == Verdict.STOP ? "  STOP        " : "  look again  ");
    text.append(Stops.finding(judged, "  ", amounts)).append('\n');
    String margin = "              ";
    String limit = Stops.limit(judged, amounts) + "; " + judged.limit().source();
    text.append(Paragraph.wrap(limit, margin, margin));
    if (!judged.details().isEmpty()) {
      text.append(Paragraph.wrap(details(judged), margin, margin));
    }
    return text.append(remedy(judged)).toString();
  }

  private String details(Judged judged) {
    return judged.details().stream()
        .map(one -> one.words() + " " + amounts.value(one.measure(), one.value()))
        .collect(Collectors.joining(", "));
  }

  private String remedy(Judged judged) {
    String margin = "              ";
    if (judged.change().isEmpty()) {
      String none = "Change: no single change within reach makes it good.";
      String advice = judged.advice().isEmpty() ? "" : " " + judged.advice();
      return Paragraph.wrap(none + advice, margin, margin + "  ");
    }
    Change change = judged.change().get();
    StringBuilder text = new StringBuilder();
    String words = "Change (tried): " + new ChangeText(amounts.printer()).words(change) + ".";
    text.append(Paragraph.wrap(words, margin, margin + "  "));
    String fields = ChangeText.fields(new FieldChanges(draft).of(change));
    text.append(Paragraph.wrap("In the job file: " + fields, margin, margin + "  "));
    if (!change.upsets().isEmpty()) {
      text.append(Paragraph.wrap("It makes worse: " + change.upsets(), margin, margin + "  "));
    }
    return text.toString();
  }

  private String good(List<CheckResult> results) {
    Table table = new Table("lrll");
    for (CheckResult result : results) {
      if (result instanceof Judged judged && judged.verdict() == Verdict.GOOD) {
        table.row(
            "good",
            amounts.value(judged.measure(), judged.value()),
            judged.title(),
            amounts.good(judged.measure(), judged.limit()));
      }
    }
    return table.text("  ");
  }
}
