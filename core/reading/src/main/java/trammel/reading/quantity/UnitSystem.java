package trammel.reading.quantity;

/** The units that a bare number takes and in which results are printed. */
public enum UnitSystem {
  /** Inches with fractions, degrees, pounds, pounds per inch, pound-feet, psi, miles per hour. */
  US("us"),
  /** Millimetres, degrees, kilograms, newtons, newtons per millimetre, newton-metres, kPa, km/h. */
  METRIC("metric");

  private final String word;

  UnitSystem(String word) {
    this.word = word;
  }

  /** The word for this system in files and on the command line: {@code us} or {@code metric}. */
  public String word() {
    return word;
  }

  /**
   * The system that a word names.
   *
   * @throws IllegalArgumentException if the word is neither {@code us} nor {@code metric}
   */
  public static UnitSystem ofWord(String word) {
    for (UnitSystem system : values()) {
      if (system.word.equals(word)) {
        return system;
      }
    }
    throw new IllegalArgumentException(
        "The unit system (" + word + ") is not known. Allowed: us or metric. Write units: us");
  }
}
