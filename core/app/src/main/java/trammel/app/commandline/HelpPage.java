package trammel.app.commandline;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

/** Help as text of a fixed width, so that it reads the same on every screen and in every test. */
public final class HelpPage {
  /** Columns of a line. */
  public static final int WIDTH = 100;

  private static final int INDENT = 2;
  private static final int GAP = 2;

  /** Names longer than this have their text on the next line. */
  private static final int WIDEST_NAME = 26;

  private final PrintWriter out;

  public HelpPage(PrintWriter out) {
    this.out = out;
  }

  /** One line of a table: a name and what it means. */
  public record Row(String name, String text) {}

  /** Prints how a command is called and what it takes. */
  public void command(String name, Syntax syntax) {
    StringBuilder usage = new StringBuilder("Usage: ").append(name);
    for (Option option : syntax.options()) {
      usage.append(" [").append(full(option)).append(option.repeatable() ? "]..." : "]");
    }
    for (Argument argument : syntax.arguments()) {
      String repeated = argument.most() > 1 ? argument.label() + "..." : argument.label();
      usage.append(' ').append(argument.least() == 0 ? "[" + repeated + "]" : repeated);
    }
    wrapped(usage.toString(), 0, "Usage: ".length());
    wrapped(syntax.purpose(), 0, 0);
    out.println();
    table(rows(syntax));
  }

  private static List<Row> rows(Syntax syntax) {
    List<Row> rows = new ArrayList<>();
    for (Argument argument : syntax.arguments()) {
      rows.add(new Row(argument.label(), argument.help()));
    }
    for (Option option : syntax.options()) {
      rows.add(new Row(full(option), option.help()));
    }
    rows.add(new Row("-h, --help", "Show this help and end."));
    return rows;
  }

  private static String full(Option option) {
    return option.isFlag() ? option.name() : option.name() + " " + option.value();
  }

  /** Prints a heading after a blank line. */
  public void heading(String text) {
    out.println();
    out.println(text);
  }

  /** Prints a paragraph. */
  public void paragraph(String text) {
    wrapped(text, 0, 0);
  }

  /** Prints names in one column and their texts in another. */
  public void table(List<Row> rows) {
    int widest = 0;
    for (Row row : rows) {
      if (row.name().length() <= WIDEST_NAME) {
        widest = Math.max(widest, row.name().length());
      }
    }
    int column = INDENT + widest + GAP;
    for (Row row : rows) {
      String start = " ".repeat(INDENT) + row.name();
      if (start.length() + GAP > column) {
        out.println(start);
        start = "";
      }
      wrapped(start + " ".repeat(column - start.length()) + row.text(), column, column);
    }
  }

  /** Breaks at blanks after column {@code from}; further lines start in column {@code indent}. */
  private void wrapped(String text, int from, int indent) {
    String rest = text;
    int breakable = from;
    while (rest.length() > WIDTH) {
      int blank = rest.lastIndexOf(' ', WIDTH);
      if (blank <= breakable) {
        break;
      }
      out.println(rest.substring(0, blank));
      rest = " ".repeat(indent) + rest.substring(blank + 1);
      breakable = indent;
    }
    out.println(rest);
  }
}
