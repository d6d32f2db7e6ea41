package trammel.app.commands;

import java.util.List;
import java.util.Map;
import trammel.app.commandline.ExitCode;

/**
 * What a command makes of one job.
 *
 * @param text the result for a reader
 * @param json the result for a machine
 * @param exitCode what it comes to
 * @param figures what the table over several jobs shows of it, the same for every job
 */
record JobResult(
    String text, Map<String, Object> json, ExitCode exitCode, List<JobFigure> figures) {
  JobResult {
    figures = List.copyOf(figures);
  }
}
