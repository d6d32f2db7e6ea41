package trammel.app;

import java.util.LinkedHashMap;
import java.util.Map;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.Command;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.ManualPage;
import trammel.app.commandline.Screen;
import trammel.app.commandline.ShellCompletion;
import trammel.app.commandline.Syntax;
import trammel.app.commandline.Version;

/** What a shell wants to know of all commands: completion, or the manual page. */
final class ShellCommand implements Command {
  private static final String PROGRAM = "trammel";

  private final CommandTable table;
  private final boolean manual;

  /**
   * @param table the commands
   * @param manual true for the manual page, false for the completion
   */
  ShellCommand(CommandTable table, boolean manual) {
    this.table = table;
    this.manual = manual;
  }

  @Override
  public Syntax syntax() {
    return Syntax.of(
        manual
            ? "Prints the manual page: trammel manual > trammel.1, then man ./trammel.1."
            : "Prints the script by which bash and zsh complete commands and options: source"
                + " <(trammel completion).");
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    Map<String, Syntax> commands = new LinkedHashMap<>();
    for (String name : table.names()) {
      commands.put(name, table.create(name).syntax());
    }
    screen
        .out()
        .print(
            manual
                ? ManualPage.text(
                    PROGRAM,
                    Version.text(),
                    "plan and price a custom rear suspension from its measurements",
                    commands)
                : ShellCompletion.script(PROGRAM, commands));
    return ExitCode.DONE;
  }
}
