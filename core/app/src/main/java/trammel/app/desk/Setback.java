package trammel.app.desk;

import java.util.List;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.planning.extension.PluginFaultException;

/**
 * Why a job could not be worked out, where the other jobs of the run go on.
 *
 * @param exitCode what the run ends with for it
 * @param message what its user is told
 */
public record Setback(ExitCode exitCode, String message) {

  /**
   * The setback that was thrown: the user's to mend, or a plugin's fault, of which a report is
   * written.
   *
   * @param words what the report says was asked for
   * @return empty if it is neither: a fault of our own, after which nothing goes on
   */
  public static Optional<Setback> of(Throwable thrown, List<String> words) {
    if (thrown instanceof PluginFaultException fault) {
      return Optional.of(
          new Setback(
              ExitCode.FAULT,
              fault.getMessage()
                  + "\nWhat uses it cannot be worked out. Take its jar out of the plugins folder,"
                  + " or get one that works.\n"
                  + new FaultReport(words, fault).write()));
    }
    ExitCode exitCode =
        thrown instanceof CommandFailure failure ? failure.exitCode() : ExitCode.BAD_INPUT;
    return Refusal.message(thrown).map(message -> new Setback(exitCode, message));
  }
}
