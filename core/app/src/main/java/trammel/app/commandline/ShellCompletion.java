package trammel.app.commandline;

import java.util.Map;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The script by which a shell completes commands and options, as picocli writes it. */
public final class ShellCompletion {
  private ShellCompletion() {}

  /**
   * The script, for bash and for zsh with bash completion.
   *
   * @param program name of the program
   * @param commands what each command takes, by its name
   */
  public static String script(String program, Map<String, Syntax> commands) {
    CommandSpec root = CommandSpec.create().name(program);
    for (Map.Entry<String, Syntax> command : commands.entrySet()) {
      root.addSubcommand(
          command.getKey(), WordReader.spec(command.getValue()).name(command.getKey()));
    }
    return AutoComplete.bash(program, new CommandLine(root));
  }
}
