package trammel.app.commandline;

import java.util.Map;

/** The manual page, from the same declarations as {@code --help}. Format: man(7). */
public final class ManualPage {
  private final StringBuilder out = new StringBuilder();

  private ManualPage() {}

  /**
   * The page.
   *
   * @param program name of the program
   * @param version its version
   * @param purpose what it does, in a line
   * @param commands what each command takes, by its name
   */
  public static String text(
      String program, String version, String purpose, Map<String, Syntax> commands) {
    ManualPage page = new ManualPage();
    page.head(program, version, purpose);
    for (Map.Entry<String, Syntax> command : commands.entrySet()) {
      page.command(program, command.getKey(), command.getValue());
    }
    page.exitCodes();
    return page.out.toString();
  }

  private void head(String program, String version, String purpose) {
    out.append(".TH ").append(program.toUpperCase(java.util.Locale.ROOT));
    out.append(" 1 \"\" \"").append(escaped(program + " " + version)).append("\"\n");
    out.append(".SH NAME\n").append(escaped(program)).append(" \\- ");
    line(purpose);
    out.append(".SH SYNOPSIS\n.B ").append(escaped(program));
    out.append("\n.I COMMAND\n[options] arguments\n.SH COMMANDS\n");
  }

  private void command(String program, String name, Syntax syntax) {
    out.append(".SS ").append(escaped(program + " " + name));
    for (Argument argument : syntax.arguments()) {
      String word = argument.most() > 1 ? argument.label() + "..." : argument.label();
      out.append(' ').append(escaped(argument.least() == 0 ? "[" + word + "]" : word));
    }
    out.append('\n');
    line(syntax.purpose());
    for (Argument argument : syntax.arguments()) {
      entry(argument.label(), argument.help());
    }
    for (Option option : syntax.options()) {
      entry(option.isFlag() ? option.name() : option.name() + " " + option.value(), option.help());
    }
  }

  private void exitCodes() {
    out.append(".SH EXIT STATUS\n");
    for (ExitCode code : ExitCode.values()) {
      entry(Integer.toString(code.code()), code.meaning());
    }
  }

  private void entry(String name, String text) {
    out.append(".TP\n.B ").append(escaped(name)).append('\n');
    line(text);
  }

  /** A line of text must not start with a dot or a quote, which would make it a request. */
  private void line(String text) {
    String safe = escaped(text);
    boolean request = safe.startsWith(".") || safe.startsWith("'");
    out.append(request ? "\\&" : "").append(safe).append('\n');
  }

  private static String escaped(String text) {
    return text.replace("\\", "\\e").replace("-", "\\-").replace('\n', ' ');
  }
}
