package trammel.app.commands;

import java.util.List;
import trammel.app.commandline.ExitCode;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Verdict;
import trammel.planning.draft.Draft;

/** The exit code that the verdicts of checks ask for. */
public final class Verdicts {
  private Verdicts() {}

  /** What the checks of a job say stop to. */
  public static Stops stops(Draft draft, List<CheckResult> results, Amounts amounts) {
    return Stops.of(draft.job().header().number(), results, amounts);
  }

  /** The exit code: whether any of them says stop. */
  public static ExitCode exitCode(List<CheckResult> results) {
    for (CheckResult result : results) {
      if (result instanceof CheckResult.Judged judged && judged.verdict() == Verdict.STOP) {
        return ExitCode.CHECK_SAYS_STOP;
      }
    }
    return ExitCode.DONE;
  }

  /** How many of each verdict, for the table over several jobs. */
  static List<JobFigure> figures(List<CheckResult> results) {
    return List.of(
        JobFigure.count("stop", "stop", count(results, Verdict.STOP)),
        JobFigure.count("look again", "look_again", count(results, Verdict.LOOK_AGAIN)),
        JobFigure.count("good", "good", count(results, Verdict.GOOD)));
  }

  private static int count(List<CheckResult> results, Verdict verdict) {
    int count = 0;
    for (CheckResult result : results) {
      if (result instanceof CheckResult.Judged judged && judged.verdict() == verdict) {
        count++;
      }
    }
    return count;
  }
}
