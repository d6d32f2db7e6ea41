package trammel.app.commands;

import java.util.List;
import trammel.app.commandline.ExitCode;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.Verdict;

/** The exit code that the verdicts of checks ask for. */
final class Verdicts {
  private Verdicts() {}

  static ExitCode exitCode(List<CheckResult> results) {
    for (CheckResult result : results) {
      if (result instanceof CheckResult.Judged judged && judged.verdict() == Verdict.STOP) {
        return ExitCode.CHECK_SAYS_STOP;
      }
    }
    return ExitCode.DONE;
  }
}
