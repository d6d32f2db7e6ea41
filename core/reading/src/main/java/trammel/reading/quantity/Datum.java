package trammel.reading.quantity;

/** What an angle was read against. */
public enum Datum {
  /** Gravity, as the angle finder reads it. */
  LEVEL("level"),
  /** The straight run of the frame rail. */
  FRAME("frame");

  private final String word;

  Datum(String word) {
    this.word = word;
  }

  /** The word after {@code from} in a job file. */
  public String word() {
    return word;
  }
}
