package trammel.reading.quantity;

/** A quantity that cannot be understood in one way only: what was given, what is allowed. */
public final class QuantityFormatException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final String given;
  private final String allowed;
  private final String remedy;

  /**
   * @param given the words that were given
   * @param allowed what would be understood
   * @param remedy what to write instead, with an example
   */
  public QuantityFormatException(String given, String allowed, String remedy) {
    super("Given " + given + "; allowed " + allowed + ". " + remedy);
    this.given = given;
    this.allowed = allowed;
    this.remedy = remedy;
  }

  /** The words that were given. */
  public String given() {
    return given;
  }

  /** What would have been understood. */
  public String allowed() {
    return allowed;
  }

  /** What to write instead, with an example. */
  public String remedy() {
    return remedy;
  }
}
