package trammel.app.commandline;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a command was given. Asking for anything that its {@link Syntax} does not declare is a
 * mistake of the command and refused.
 */
public final class Arguments {
  private final Syntax syntax;
  private final Map<String, List<String>> arguments;
  private final Map<String, List<String>> options;

  Arguments(Syntax syntax, Map<String, List<String>> arguments, Map<String, List<String>> options) {
    this.syntax = syntax;
    this.arguments = copyOf(arguments);
    this.options = copyOf(options);
  }

  private static Map<String, List<String>> copyOf(Map<String, List<String>> values) {
    Map<String, List<String>> copy = new HashMap<>();
    for (Map.Entry<String, List<String>> entry : values.entrySet()) {
      copy.put(entry.getKey(), List.copyOf(entry.getValue()));
    }
    return copy;
  }

  /** The argument that must be there exactly once. */
  public String argument(String label) {
    return arguments(label).get(0);
  }

  /** The argument that may be left out. */
  public Optional<String> optionalArgument(String label) {
    List<String> given = arguments(label);
    return given.isEmpty() ? Optional.empty() : Optional.of(given.get(0));
  }

  /** All words given for an argument, in order. */
  public List<String> arguments(String label) {
    List<String> given = arguments.get(label);
    if (given == null) {
      throw new IllegalStateException("The command declares no argument " + label + ".");
    }
    return given;
  }

  /** Whether an option is given, with or without a value. */
  public boolean has(String name) {
    return !values(name).isEmpty();
  }

  /** The value of an option, if it is given. */
  public Optional<String> value(String name) {
    List<String> given = values(name);
    return given.isEmpty() ? Optional.empty() : Optional.of(given.get(0));
  }

  /**
   * The whole number that an option is given, if it is.
   *
   * @throws CommandFailure if it is no whole number from least to most
   */
  public Optional<Long> number(String name, long least, long most) {
    Optional<String> word = value(name);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    try {
      long number = Long.parseLong(word.get());
      if (number >= least && number <= most) {
        return Optional.of(number);
      }
    } catch (NumberFormatException noNumber) {
      // Said below, with what is allowed.
    }
    throw CommandFailure.badInput(
        name
            + " was given '"
            + word.get()
            + "'; give a whole number from "
            + least
            + " to "
            + most
            + ".");
  }

  /** The values of an option that may be given more than once, in order. */
  public List<String> values(String name) {
    if (syntax.findOption(name).isEmpty()) {
      throw new IllegalStateException("The command declares no option " + name + ".");
    }
    List<String> given = options.get(name);
    return given == null ? List.of() : given;
  }
}
