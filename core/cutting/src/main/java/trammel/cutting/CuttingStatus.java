package trammel.cutting;

/** How much is known about a cutting plan. */
public enum CuttingStatus {
  /** No cheaper plan exists: the price equals a proven lower bound. */
  PROVEN_OPTIMAL("proven-optimal"),
  /** The best plan found in the time given; the true optimum lies between the bound and it. */
  BOUNDED("bounded");

  private final String word;

  CuttingStatus(String word) {
    this.word = word;
  }

  /** The word used in files and on paper. */
  public String word() {
    return word;
  }
}
