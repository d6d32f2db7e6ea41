package trammel.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Command;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.HelpPage;
import trammel.app.commandline.MisuseException;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Suggestion;
import trammel.app.commandline.Syntax;
import trammel.app.commandline.Version;
import trammel.app.desk.FaultReport;
import trammel.app.desk.Setback;

/** One run of Trammel: finds the command, runs it, and turns whatever happens into an exit code. */
final class Invocation {
  private final CommandTable commands;
  private final Screen screen;

  Invocation(CommandTable commands, Screen screen) {
    this.commands = commands;
    this.screen = screen;
  }

  /** Runs the command that the arguments ask for; throws nothing. */
  ExitCode run(String... arguments) {
    ExitCode exitCode;
    try {
      exitCode = dispatch(List.of(arguments));
    } catch (CommandFailure failure) {
      exitCode = tell(failure.exitCode(), failure.getMessage());
    } catch (Throwable thrown) {
      exitCode = judge(thrown, List.of(arguments));
    }
    screen.out().flush();
    screen.err().flush();
    return exitCode;
  }

  private ExitCode dispatch(List<String> words) throws Exception {
    if (words.isEmpty()) {
      printHelp(new HelpPage(screen.err()));
      return ExitCode.BAD_INPUT;
    }
    String first = words.get(0);
    List<String> rest = words.subList(1, words.size());
    switch (first) {
      case "--version", "-V":
        screen.out().println("trammel " + Version.text());
        return ExitCode.DONE;
      case "--help", "-h", "help":
        if (rest.isEmpty()) {
          printHelp(new HelpPage(screen.out()));
          return ExitCode.DONE;
        }
        return runCommand(rest.get(0), List.of("--help"));
      default:
        return runCommand(first, rest);
    }
  }

  private ExitCode runCommand(String name, List<String> words) throws Exception {
    if (!commands.names().contains(name)) {
      throw CommandFailure.badInput(unknown(name));
    }
    Command command = commands.create(name);
    Syntax syntax = command.syntax();
    if (Syntax.asksForHelp(words)) {
      HelpPage page = new HelpPage(screen.out());
      page.command("trammel " + name, syntax);
      printExitCodes(page);
      return ExitCode.DONE;
    }
    command.prepare();
    try {
      return command.run(syntax.read(words), screen);
    } catch (MisuseException misuse) {
      throw CommandFailure.badInput(
          misuse.getMessage() + "\n'trammel " + name + " --help' says what it takes.");
    }
  }

  private String unknown(String name) {
    String answer;
    if (name.startsWith("-")) {
      answer =
          "'" + name + "' stands before any command: give the command first, then its options.";
    } else {
      Optional<String> meant = Suggestion.closest(name, commands.names());
      answer = "There is no command '" + name + "'.";
      if (meant.isPresent()) {
        answer += " Did you mean '" + meant.get() + "'?";
      }
    }
    return answer + "\n'trammel --help' lists the commands.";
  }

  private void printHelp(HelpPage page) {
    page.paragraph("Usage: trammel COMMAND ...");
    page.paragraph(
        "From measurements to a priced job for custom rear suspensions: layout, checks, parts,"
            + " steel, welds, hours, order, quote, fit-up sheet and tack check.");
    page.heading("Commands:");
    List<HelpPage.Row> rows = new ArrayList<>();
    for (CommandTable.Entry entry : commands.entries()) {
      rows.add(new HelpPage.Row(entry.name(), entry.summary()));
    }
    rows.add(new HelpPage.Row("help COMMAND", "What a command takes; the same as COMMAND --help"));
    page.table(rows);
    page.heading("Without a command:");
    page.table(
        List.of(
            new HelpPage.Row("-h, --help", "Show this help and end."),
            new HelpPage.Row("-V, --version", "Print the version and end.")));
    printExitCodes(page);
    page.heading("Strength figures are screening estimates for comparison, not certification.");
  }

  private static void printExitCodes(HelpPage page) {
    page.heading("Exit codes:");
    List<HelpPage.Row> rows = new ArrayList<>();
    for (ExitCode exitCode : ExitCode.values()) {
      rows.add(new HelpPage.Row(Integer.toString(exitCode.code()), exitCode.meaning()));
    }
    page.table(rows);
  }

  private ExitCode judge(Throwable thrown, List<String> arguments) {
    Optional<Setback> setback = Setback.of(thrown, arguments);
    if (setback.isPresent()) {
      return tell(setback.get().exitCode(), setback.get().message());
    }
    if (thrown instanceof IOException || thrown instanceof UncheckedIOException) {
      return tell(ExitCode.FAULT, "Cannot read or write a file: " + thrown.getMessage());
    }
    return fault(thrown, arguments);
  }

  private ExitCode fault(Throwable fault, List<String> arguments) {
    if (fault instanceof OutOfMemoryError) {
      return tell(
          ExitCode.FAULT,
          "Trammel ran out of memory: no result of this run can be trusted. Take fewer jobs at once,"
              + " or give Java more, such as JAVA_TOOL_OPTIONS=-Xmx2g.");
    }
    return tell(
        ExitCode.FAULT,
        "Trammel met a fault of its own ("
            + fault.getClass().getSimpleName()
            + "): no result of this run can be trusted.\n"
            + new FaultReport(arguments, fault).write());
  }

  private ExitCode tell(ExitCode exitCode, String message) {
    // What was printed so far belongs before the message when both go to one screen.
    screen.out().flush();
    screen.err().println(message);
    return exitCode;
  }
}
