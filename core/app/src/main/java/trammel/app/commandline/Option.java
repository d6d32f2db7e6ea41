package trammel.app.commandline;

/**
 * Something that may be given by name, in any order.
 *
 * @param name with its dashes, such as {@code --out}
 * @param value what follows the name, such as {@code DIR}; blank if nothing does
 * @param repeatable whether it may be given more than once
 * @param help what it does
 */
public record Option(String name, String value, boolean repeatable, String help) {
  public Option {
    if (!name.startsWith("--") || name.length() < 3) {
      throw new IllegalArgumentException(
          "The name of an option (" + name + ") must start with two dashes.");
    }
  }

  /** Whether it stands alone, without a value. */
  public boolean isFlag() {
    return value.isEmpty();
  }
}
