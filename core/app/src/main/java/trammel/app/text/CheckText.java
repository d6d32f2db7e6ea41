package trammel.app.text;

import java.util.List;
import java.util.stream.Collectors;
import trammel.engine.checks.Change;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.CheckResult.NotJudged;
import trammel.engine.checks.Verdict;
import trammel.planning.arrange.LayoutChange;
import trammel.planning.arrange.OptionChanges;
import trammel.planning.draft.Draft;
import trammel.planning.draft.FieldChanges;

/** The checks of a job on a screen, worst first. */
public final class CheckText {
  private static final String MARGIN = "              ";

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
    return text(results, OptionChanges.Found.NONE);
  }

  /** All results, with changes of options where no move of a point helps. */
  public String text(List<CheckResult> results, OptionChanges.Found options) {
    StringBuilder text = new StringBuilder("CHECKS, worst first\n");
    for (CheckResult result : results) {
      if (result instanceof Judged judged && judged.verdict() != Verdict.GOOD) {
        text.append(failing(judged, options));
      } else if (result instanceof NotJudged open) {
        text.append("  not judged  ").append(open.title()).append('\n');
        text.append(Paragraph.wrap(open.reason().in(amounts.printer()), MARGIN, MARGIN));
      }
    }
    return text.append(good(results)).toString();
  }

  /**
   * What is not good, each with its change on one line; the rest counted where there are more.
   *
   * @param most how many are told
   */
  public String notGood(List<CheckResult> results, int most) {
    StringBuilder text = new StringBuilder();
    int told = 0;
    int more = 0;
    for (CheckResult result : results) {
      if (result instanceof Judged judged && judged.verdict() == Verdict.GOOD) {
        continue;
      }
      if (told == most) {
        more++;
        continue;
      }
      told++;
      text.append(
          result instanceof Judged judged
              ? brief(judged)
              : "  not judged  " + result.title() + "\n");
    }
    if (more > 0) {
      text.append("  and ").append(more).append(" more\n");
    }
    return text.toString();
  }

  private String brief(Judged judged) {
    StringBuilder text =
        new StringBuilder(judged.verdict() == Verdict.STOP ? "  STOP        " : "  look again  ")
            .append(amounts.value(judged.measure(), judged.value()))
            .append("  ")
            .append(Stops.title(judged))
            .append('\n');
    judged.change().ifPresent(change -> text.append(wrapped(brief(change))));
    return text.toString();
  }

  private String brief(Change change) {
    String upsets =
        change.upsets().isEmpty() ? "" : "; makes worse: " + String.join(", ", change.upsets());
    return "change: " + ChangeText.fields(new FieldChanges(draft).of(change)) + upsets;
  }

  private String failing(Judged judged, OptionChanges.Found options) {
    StringBuilder text = new StringBuilder();
    text.append(judged.verdict() == Verdict.STOP ? "  STOP        " : "  look again  ");
    text.append(Stops.finding(judged, "  ", amounts)).append('\n');
    String limit = Stops.limit(judged, amounts) + "; " + judged.limit().source();
    text.append(Paragraph.wrap(limit, MARGIN, MARGIN));
    if (!judged.details().isEmpty()) {
      text.append(Paragraph.wrap(details(judged), MARGIN, MARGIN));
    }
    return text.append(remedy(judged, options)).toString();
  }

  private String details(Judged judged) {
    return judged.details().stream()
        .map(one -> one.words() + " " + amounts.value(one.measure(), one.value()))
        .collect(Collectors.joining(", "));
  }

  private String remedy(Judged judged, OptionChanges.Found options) {
    List<LayoutChange> together = options.byCheck().getOrDefault(judged.id(), List.of());
    if (!together.isEmpty()) {
      String fields =
          together.stream()
              .map(change -> change.path() + ": " + change.after())
              .collect(Collectors.joining("; "));
      String many = together.size() == 1 ? "" : ", together";
      return wrapped("Change (tried" + many + "): in the job file: " + fields);
    }
    return judged
        .change()
        .map(this::moved)
        .orElseGet(() -> wrapped(unmended(options) + sentence(judged.advice())));
  }

  private String moved(Change change) {
    String text =
        wrapped("Change (tried): " + new ChangeText(amounts.printer()).words(change) + ".")
            + wrapped("In the job file: " + ChangeText.fields(new FieldChanges(draft).of(change)));
    return change.upsets().isEmpty() ? text : text + wrapped(ChangeText.upsets(change) + ".");
  }

  private static String unmended(OptionChanges.Found options) {
    return options.tried() == 0
        ? "Change: no single change within reach makes it good."
        : "Change: no single change within reach makes it good, and of "
            + options.tried()
            + " changes of options that were tried for all checks none does; trammel arrange"
            + " searches further.";
  }

  private static String sentence(String advice) {
    return advice.isEmpty() ? "" : " " + advice;
  }

  private static String wrapped(String text) {
    return Paragraph.wrap(text, MARGIN, MARGIN + "  ");
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
