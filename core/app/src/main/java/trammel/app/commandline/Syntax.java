package trammel.app.commandline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a command does and takes. Only the last argument may be there in varying number.
 *
 * @param purpose what the command does, in a sentence or two
 */
public record Syntax(String purpose, List<Argument> arguments, List<Option> options) {
  public Syntax {
    arguments = List.copyOf(arguments);
    options = List.copyOf(options);
    for (int i = 0; i < arguments.size() - 1; i++) {
      if (arguments.get(i).least() != arguments.get(i).most()) {
        throw new IllegalArgumentException(
            arguments.get(i).label() + " may vary in number, so no argument can follow it.");
      }
    }
    for (int i = 0; i < options.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (options.get(i).name().equals(options.get(j).name())) {
          throw new IllegalArgumentException(options.get(i).name() + " is declared twice.");
        }
      }
    }
  }

  /** A command that takes nothing yet. */
  public static Syntax of(String purpose) {
    return new Syntax(purpose, List.of(), List.of());
  }

  /** This, and an argument that must be there. */
  public Syntax argument(String label, String help) {
    return arguments(label, 1, 1, help);
  }

  /** This, and an argument that may be left out. */
  public Syntax optionalArgument(String label, String help) {
    return arguments(label, 0, 1, help);
  }

  /** This, and an argument that may be there from {@code least} to {@code most} times. */
  public Syntax arguments(String label, int least, int most, String help) {
    List<Argument> more = new ArrayList<>(arguments);
    more.add(new Argument(label, least, most, help));
    return new Syntax(purpose, more, options);
  }

  /** This, and an option without a value. */
  public Syntax flag(String name, String help) {
    return with(new Option(name, "", false, help));
  }

  /** This, and an option with a value, such as {@code --out DIR}. */
  public Syntax option(String name, String value, String help) {
    return with(new Option(name, value, false, help));
  }

  /** This, and an option with a value that may be given again and again. */
  public Syntax repeatableOption(String name, String value, String help) {
    return with(new Option(name, value, true, help));
  }

  private Syntax with(Option option) {
    List<Option> more = new ArrayList<>(options);
    more.add(option);
    return new Syntax(purpose, arguments, more);
  }

  /** The option of this name, if there is one. */
  Optional<Option> findOption(String name) {
    for (Option option : options) {
      if (option.name().equals(name)) {
        return Optional.of(option);
      }
    }
    return Optional.empty();
  }

  /**
   * Reads the words after the command's name.
   *
   * <p>{@code --name value} and {@code --name=value} are the same; after {@code --} every word is
   * an argument; a word that is a negative number is never an option.
   *
   * @throws MisuseException if they are not what the command takes
   */
  public Arguments read(List<String> words) {
    return new WordReader(this, words).read();
  }

  /** Whether help is asked for: {@code --help} or {@code -h} before any {@code --}. */
  public static boolean asksForHelp(List<String> words) {
    for (String word : words) {
      if (word.equals("--")) {
        return false;
      }
      if (word.equals("--help") || word.equals("-h")) {
        return true;
      }
    }
    return false;
  }
}
