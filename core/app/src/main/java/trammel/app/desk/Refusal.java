package trammel.app.desk;

import java.nio.file.InvalidPathException;
import java.util.Optional;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.brackets.UnworkableLayoutException;
import trammel.reading.tree.BadInputException;

/** Tells what a user gave and can mend from a fault of our own. */
public final class Refusal {
  private static final String OWN_PACKAGES = "trammel.";

  private Refusal() {}

  /** The message for the user, if what was thrown refuses what the user gave. */
  public static Optional<String> message(Throwable thrown) {
    if (thrown instanceof InvalidPathException name) {
      return Optional.of(
          "A file or folder was given a name that this system cannot have; give another: "
              + name.getReason()
              + ".");
    }
    boolean refused =
        thrown instanceof BadInputException
            || thrown instanceof UnworkableLayoutException
            || thrown instanceof CommandFailure failure && failure.exitCode() != ExitCode.FAULT
            || thrown instanceof IllegalArgumentException && isOurOwn(thrown);
    return refused ? Optional.ofNullable(thrown.getMessage()) : Optional.empty();
  }

  /**
   * Trammel's own types refuse impossible values with a message written for the user. The same
   * exception out of a library or the JDK is a fault: its message was written for a programmer.
   */
  private static boolean isOurOwn(Throwable thrown) {
    StackTraceElement[] frames = thrown.getStackTrace();
    return thrown.getMessage() != null
        && frames.length > 0
        && frames[0].getClassName().startsWith(OWN_PACKAGES);
  }
}
