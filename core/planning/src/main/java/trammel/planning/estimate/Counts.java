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
    return of(count, noun, noun + "s");
  }

  /**
   * The number and the noun in the right form.
   *
   * @param count how many
   * @param one the singular
   * @param many the plural
   */
  public static String of(int count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }
}
