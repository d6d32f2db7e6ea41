package trammel.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Help.Ansi;

/** One run of Trammel: finds the command, runs it, and turns whatever happens into an exit code. */
final class Invocation {
  /** Whether colours are wanted. */
  enum Colour {
    NEVER,
    /** On a terminal, unless NO_COLOR or its like is set. */
    DETECT
  }

  private static final String OWN_PACKAGES = "trammel.";

  private final CommandTable commands;
  private final PrintWriter out;
  private final PrintWriter err;
  private final Colour colour;

  Invocation(CommandTable commands, PrintWriter out, PrintWriter err, Colour colour) {
    this.commands = commands;
    this.out = out;
    this.err = err;
    this.colour = colour;
  }

  /** Runs the command that the arguments ask for; throws nothing. */
  ExitCode run(String... arguments) {
    ExitCode exitCode;
    try {
      exitCode = dispatch(Arrays.asList(arguments));
    } catch (CommandFailure failure) {
      exitCode = tell(failure.exitCode(), failure.getMessage());
    } catch (Throwable thrown) {
      exitCode = judge(thrown, Arrays.asList(arguments));
    }
    out.flush();
    err.flush();
    return exitCode;
  }

  private ExitCode dispatch(List<String> arguments) throws Exception {
    if (arguments.isEmpty()) {
      TopLevelHelp.print(commands, err, ansi());
      return ExitCode.BAD_INPUT;
    }
    String first = arguments.get(0);
    List<String> rest = arguments.subList(1, arguments.size());
    switch (first) {
      case "--version", "-V":
        out.println("trammel " + Version.text());
        return ExitCode.DONE;
      case "--help", "-h", "help":
        return help(rest);
      default:
        return runCommand(first, rest);
    }
  }

  private ExitCode help(List<String> about) throws Exception {
    if (about.isEmpty()) {
      TopLevelHelp.print(commands, out, ansi());
      return ExitCode.DONE;
    }
    return runCommand(about.get(0), List.of("--help"));
  }

  private ExitCode runCommand(String name, List<String> arguments) throws Exception {
    for (CommandTable.Entry entry : commands.entries()) {
      if (entry.name().equals(name)) {
        return new CommandRun(entry, commands.create(name), out, err, ansi()).run(arguments);
      }
    }
    throw CommandFailure.badInput(unknown(name));
  }

  private String unknown(String name) {
    if (name.startsWith("-")) {
      return "'"
          + name
          + "' comes before any command: give the command first, then its options.\n"
          + "'trammel --help' lists the commands.";
    }
    List<String> names = new ArrayList<>();
    for (CommandTable.Entry entry : commands.entries()) {
      names.add(entry.name());
    }
    Optional<String> meant = Suggestion.closest(name, names);
    return "There is no command '"
        + name
        + "'."
        + (meant.isPresent() ? " Did you mean '" + meant.get() + "'?" : "")
        + "\n'trammel --help' lists the commands.";
  }

  private ExitCode judge(Throwable thrown, List<String> arguments) {
    if (thrown instanceof IllegalArgumentException && isRefusal(thrown)) {
      return tell(ExitCode.BAD_INPUT, thrown.getMessage());
    }
    if (thrown instanceof IOException || thrown instanceof UncheckedIOException) {
      return tell(ExitCode.FAULT, "Cannot read or write a file: " + thrown.getMessage());
    }
    return fault(thrown, arguments);
  }

  /**
   * Trammel's own types refuse impossible values with a message written for the user. The same
   * exception out of a library or the JDK is a fault: its message was written for a programmer.
   */
  private static boolean isRefusal(Throwable thrown) {
    StackTraceElement[] frames = thrown.getStackTrace();
    return thrown.getMessage() != null
        && frames.length > 0
        && frames[0].getClassName().startsWith(OWN_PACKAGES);
  }

  private ExitCode fault(Throwable fault, List<String> arguments) {
    Optional<Path> report =
        new FaultReport(arguments, fault)
            .write(List.of(Path.of(System.getProperty("java.io.tmpdir")), Path.of("")));
    return tell(
        ExitCode.FAULT,
        "Trammel met a fault of its own ("
            + fault.getClass().getSimpleName()
            + "): no result of this run can be trusted.\n"
            + (report.isPresent()
                ? "The report to send to its makers, with the job file, is " + report.get()
                : "No report could be written, neither to the temporary folder nor here."));
  }

  private ExitCode tell(ExitCode exitCode, String message) {
    // What was printed so far belongs before the message when both go to one screen.
    out.flush();
    err.println(message);
    return exitCode;
  }

  private Ansi ansi() {
    return colour == Colour.DETECT ? Ansi.AUTO : Ansi.OFF;
  }
}
