package trammel.app.commandline;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;

/** Ends a command early with a message for its user and an exit code. */
public final class CommandFailure extends RuntimeException {
  private final ExitCode exitCode;

  private CommandFailure(ExitCode exitCode, String message, Throwable cause) {
    super(message, cause);
    this.exitCode = exitCode;
  }

  /**
   * The user gave something that cannot be used.
   *
   * @param message what was given, what is allowed and what to do
   */
  public static CommandFailure badInput(String message) {
    return new CommandFailure(ExitCode.BAD_INPUT, message, null);
  }

  /**
   * A check says stop to something without which the command has nothing to show.
   *
   * @param message what the check found and what to do
   */
  public static CommandFailure stopped(String message) {
    return new CommandFailure(ExitCode.CHECK_SAYS_STOP, message, null);
  }

  /**
   * It cannot be done, and that is not for the user's input to mend.
   *
   * @param message what went wrong and what to do
   */
  public static CommandFailure fault(String message) {
    return new CommandFailure(ExitCode.FAULT, message, null);
  }

  /** A file that the user named cannot be read. */
  public static CommandFailure couldNotRead(Path file, IOException cause) {
    return new CommandFailure(
        ExitCode.BAD_INPUT, "Cannot read " + file + ": " + reason(file, cause) + ".", cause);
  }

  /** A file or folder cannot be written. */
  public static CommandFailure couldNotWrite(Path file, IOException cause) {
    return new CommandFailure(
        ExitCode.FAULT, "Cannot write " + file + ": " + reason(file, cause) + ".", cause);
  }

  /** What the command is to return. */
  public ExitCode exitCode() {
    return exitCode;
  }

  /** The messages of file exceptions are often the bare path, which tells the user nothing. */
  private static String reason(Path file, IOException cause) {
    if (cause instanceof NoSuchFileException) {
      return "there is no such file or folder";
    }
    if (cause instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (cause instanceof NotDirectoryException) {
      return "it is not a folder";
    }
    if (cause instanceof FileSystemException system && system.getReason() != null) {
      return system.getReason();
    }
    String message = cause.getMessage();
    return message == null || message.equals(file.toString())
        ? cause.getClass().getSimpleName()
        : message;
  }
}
