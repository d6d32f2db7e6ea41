package trammel.app;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/** The help of Trammel as a whole, and the parts that the help of every command shares. */
final class TopLevelHelp {
  /** Columns: fixed, so that help reads the same everywhere and asks no terminal for its width. */
  static final int WIDTH = 100;

  private TopLevelHelp() {}

  /** Prints what Trammel is, its commands and its exit codes. */
  static void print(CommandTable commands, PrintWriter out, Ansi ansi) {
    CommandSpec top = CommandSpec.create().name("trammel");
    top.addOption(helpOption());
    top.addOption(
        OptionSpec.builder("-V", "--version").description("Print the version and end.").build());
    UsageMessageSpec usage = top.usageMessage();
    usage.description(
        "From measurements to a priced job for custom rear suspensions: layout, checks, parts,",
        "steel, welds, hours, order, quote, fit-up sheet and tack check.");
    usage.synopsisSubcommandLabel("COMMAND");
    usage.commandListHeading("%nCommands:%n");
    usage.footer(
        "%n'trammel COMMAND --help' says what a command takes.",
        "Strength figures are screening estimates for comparison, not certification.");
    addExitCodes(usage);
    for (CommandTable.Entry entry : commands.entries()) {
      CommandSpec listed = CommandSpec.create();
      listed.usageMessage().description(entry.summary());
      top.addSubcommand(entry.name(), new CommandLine(listed));
    }
    new CommandLine(top).setUsageHelpWidth(WIDTH).usage(out, ansi);
  }

  static OptionSpec helpOption() {
    return OptionSpec.builder("-h", "--help")
        .usageHelp(true)
        .description("Show this help and end.")
        .build();
  }

  static void addExitCodes(UsageMessageSpec usage) {
    Map<String, String> meanings = new LinkedHashMap<>();
    for (ExitCode exitCode : ExitCode.values()) {
      meanings.put(Integer.toString(exitCode.code()), exitCode.meaning());
    }
    usage.exitCodeListHeading("%nExit codes:%n");
    usage.exitCodeList(meanings);
  }
}
