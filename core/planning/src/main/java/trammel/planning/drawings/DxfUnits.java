package trammel.planning.drawings;

/** What the numbers of a DXF file mean; the file says so itself ({@code $INSUNITS}). */
public enum DxfUnits {
  /** Millimetres. */
  MILLIMETRES("mm", "millimetres", 4, 1, 1.0),
  /** Inches. */
  INCHES("inch", "inches", 1, 0, 1 / 25.4);

  private final String word;
  private final String words;
  private final int insertUnits;
  private final int measurement;
  private final double perMm;

  DxfUnits(String word, String words, int insertUnits, int measurement, double perMm) {
    this.word = word;
    this.words = words;
    this.insertUnits = insertUnits;
    this.measurement = measurement;
    this.perMm = perMm;
  }

  /** The word in a file's name. */
  public String word() {
    return word;
  }

  /** The word on a drawing. */
  String words() {
    return words;
  }

  /** Value of {@code $INSUNITS} (DXF Reference, header variables: 1 inches, 4 millimetres). */
  int insertUnits() {
    return insertUnits;
  }

  /** Value of {@code $MEASUREMENT}: 0 for inch patterns, 1 for metric ones. */
  int measurement() {
    return measurement;
  }

  /** A length in these units. */
  double of(double lengthMm) {
    return lengthMm * perMm;
  }
}
