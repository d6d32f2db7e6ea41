package trammel.app.commandline;

/** One command of Trammel. It has a constructor without arguments that does no work. */
public interface Command {
  /** What it does and takes; help and {@code --help} come from here. */
  Syntax syntax();

  /**
   * Starts in the background what it needs whatever its words say; called before they are read, and
   * not when only help is asked for.
   */
  default void prepare() {}

  /**
   * Does it.
   *
   * @param arguments what was given, already checked against the syntax
   * @param screen where the result and the remarks go
   * @throws CommandFailure if the user has to change something, or a file cannot be written
   * @throws IllegalArgumentException out of Trammel's own types: bad input, with its message
   */
  ExitCode run(Arguments arguments, Screen screen) throws Exception;
}
