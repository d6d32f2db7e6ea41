package trammel.app;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Reads the arguments of one command and runs it. */
final class CommandRun {
  private final CommandTable.Entry entry;
  private final Callable<ExitCode> command;
  private final CommandLine line;

  CommandRun(
      CommandTable.Entry entry,
      Callable<ExitCode> command,
      PrintWriter out,
      PrintWriter err,
      Ansi ansi) {
    this.entry = entry;
    this.command = command;
    this.line = new CommandLine(command);
    // An argument that starts with @ is a plain argument here, not a file of arguments.
    line.setExpandAtFiles(false);
    line.setOut(out);
    line.setErr(err);
    line.setColorScheme(CommandLine.Help.defaultColorScheme(ansi));
    line.setUsageHelpWidth(TopLevelHelp.WIDTH);
    CommandSpec spec = line.getCommandSpec();
    spec.name("trammel " + entry.name());
    if (spec.findOption("--help") == null) {
      spec.addOption(TopLevelHelp.helpOption());
    }
  }

  /** Runs the command; its own exceptions pass through. */
  ExitCode run(List<String> arguments) throws Exception {
    try {
      line.parseArgs(arguments.toArray(new String[0]));
      if (line.isUsageHelpRequested()) {
        printHelp();
        return ExitCode.DONE;
      }
      return command.call();
    } catch (ParameterException misuse) {
      throw CommandFailure.badInput(explain(misuse));
    }
  }

  private void printHelp() {
    CommandLine.Model.UsageMessageSpec usage = line.getCommandSpec().usageMessage();
    if (usage.description().length == 0) {
      usage.description(entry.summary());
    }
    TopLevelHelp.addExitCodes(usage);
    line.usage(line.getOut());
  }

  private String explain(ParameterException misuse) {
    StringBuilder text = new StringBuilder(misuse.getMessage());
    if (misuse instanceof UnmatchedArgumentException unmatched) {
      List<String> near = unmatched.getSuggestions();
      if (!near.isEmpty()) {
        text.append("\nDid you mean ").append(String.join(" or ", near)).append('?');
      }
    }
    text.append("\n'trammel ").append(entry.name()).append(" --help' says what it takes.");
    return text.toString();
  }
}
