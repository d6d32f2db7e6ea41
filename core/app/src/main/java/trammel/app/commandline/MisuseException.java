package trammel.app.commandline;

/** The words after a command are not what it takes; the message says what to change. */
public final class MisuseException extends RuntimeException {
  MisuseException(String message) {
    super(message);
  }
}
