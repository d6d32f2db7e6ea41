package trammel.planning.fitup;

/** The three ways in which a bracket is measured and may be off. */
enum Axis {
  /** Along the rails. */
  FORWARD("forward", "forward", "rearward"),
  /** Across the vehicle. */
  LEFT("left", "left", "right"),
  /** Square to the rails. */
  UP("up", "up", "down");

  private final String word;
  private final String positive;
  private final String negative;

  Axis(String word, String positive, String negative) {
    this.word = word;
    this.positive = positive;
    this.negative = negative;
  }

  String word() {
    return word;
  }

  /** Which way an amount goes. */
  String way(double amount) {
    return amount < 0 ? negative : positive;
  }
}
