package trammel.planning.estimate;

/** A number with its noun: {@code 1 hole}, {@code 2 holes}. */
public final class Counts {
  private Counts() {}

  /**
   * The number and the noun in the right form.
   *
   * @param count how many
   * @param noun the singular, whose plural takes an s
   */
  public static String of(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }
}
