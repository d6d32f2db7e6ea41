package trammel.app;

import java.io.BufferedReader;
import java.io.FileDescriptor;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;

/** Starts Trammel from a command line. */
public final class Main {
  /** Set to {@code on} by the launcher, which knows whether the output is a terminal. */
  private static final String COLOUR_PROPERTY = "trammel.colour";

  private static final String WATCHED_PROPERTY = "trammel.watched";

  /** Set to {@code on} where somebody at a terminal can be asked. */
  private static final String ANSWERS_PROPERTY = "trammel.answers";

  private Main() {}

  /** Runs one command and ends the process with its exit code. */
  public static void main(String... args) {
    // Texts are English and numbers have decimal points, whatever the machine is set to.
    Locale.setDefault(Locale.ROOT);
    StandardStream output = new StandardStream(FileDescriptor.out);
    PrintWriter out = output.writer();
    PrintWriter err = new StandardStream(FileDescriptor.err).writer();
    ThisProcess process = ThisProcess.started(err, args);
    boolean colour = "on".equals(System.getProperty(COLOUR_PROPERTY));
    boolean watched = "on".equals(System.getProperty(WATCHED_PROPERTY));
    ExitCode exitCode =
        new Invocation(new TrammelCommands(), new Screen(out, err, colour, watched, answers()))
            .run(args);
    if (!output.failure().isEmpty()) {
      err.println("Cannot write the whole output: " + output.failure() + ".");
      err.flush();
      exitCode = ExitCode.FAULT;
    }
    process.end(exitCode);
  }

  private static Optional<BufferedReader> answers() {
    return "on".equals(System.getProperty(ANSWERS_PROPERTY))
        ? Optional.of(new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)))
        : Optional.empty();
  }

  /**
   * Runs one command, without colours.
   *
   * @param out takes what the command has to say
   * @param err takes what went wrong
   * @return the exit code, see {@link ExitCode}
   */
  public static int run(PrintWriter out, PrintWriter err, String... args) {
    return new Invocation(new TrammelCommands(), new Screen(out, err, false, false))
        .run(args)
        .code();
  }
}
