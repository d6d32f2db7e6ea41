package trammel.app.commandline;

/** What a command tells the shell that called it. */
public enum ExitCode {
  DONE(0, "done"),
  CHECK_SAYS_STOP(1, "done, and at least one check says stop"),
  BAD_INPUT(2, "bad usage or bad input, for which nothing was written"),
  FAULT(3, "could not write, or a fault inside Trammel, a plugin or Java");

  private final int code;
  private final String meaning;

  ExitCode(int code, String meaning) {
    this.code = code;
    this.meaning = meaning;
  }

  /** The number given to the shell. */
  public int code() {
    return code;
  }

  /** What the number means, as the help says it. */
  public String meaning() {
    return meaning;
  }
}
