package trammel.app.commandline;

/**
 * Something that is given by its place among the words after the command.
 *
 * @param label what it is called, such as {@code JOB}
 * @param least how many there must be
 * @param most how many there may be
 * @param help what it is
 */
public record Argument(String label, int least, int most, String help) {
  public Argument {
    if (least < 0 || most < 1 || most < least) {
      throw new IllegalArgumentException(
          "The number of " + label + " (" + least + " to " + most + ") must be a range above 0.");
    }
  }
}
