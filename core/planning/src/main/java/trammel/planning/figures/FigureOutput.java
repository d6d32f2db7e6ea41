package trammel.planning.figures;

/**
 * One result of a figure.
 *
 * @param key name of the result for machines
 * @param title name of the result for people
 * @param unit its unit
 */
public record FigureOutput(String key, String title, FigureUnit unit) {
  /** Refuses blanks. */
  public FigureOutput {
    if (key.isBlank() || title.isBlank()) {
      throw new IllegalArgumentException(
          "A result needs a key (" + key + ") and a title (" + title + "); give both.");
    }
  }
}
