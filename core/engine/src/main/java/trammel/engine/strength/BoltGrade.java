package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * Strength of graded bolts: inch bolts by the property table of SAE J429, metric bolts by table 3
 * of ISO 898-1:2013 (from memory).
 */
public enum BoltGrade {
  /** Medium carbon, quenched and tempered; weaker over 1 in. */
  GRADE_5("grade 5", ksi(85, 92, 120), 25.4, ksi(74, 81, 105)),
  /** Alloy, quenched and tempered; the same to 1½ in. */
  GRADE_8("grade 8", ksi(120, 130, 150), 25.4, ksi(120, 130, 150)),
  /** Property class 8.8, quenched and tempered; stronger over 16 mm. */
  CLASS_8_8("class 8.8", new double[] {580, 640, 800}, 16, new double[] {600, 660, 830}),
  /** Property class 10.9, quenched and tempered. */
  CLASS_10_9("class 10.9", new double[] {830, 940, 1040}, 16, new double[] {830, 940, 1040});

  private static final double LARGEST_MM = 38.1;
  private static final double SMALLEST_INCH_MM = 6.35;
  private static final double SMALLEST_METRIC_MM = 6;

  private final String title;
  private final double[] smallMPa;
  private final double smallToMm;
  private final double[] largeMPa;

  BoltGrade(String title, double[] smallMPa, double smallToMm, double[] largeMPa) {
    this.title = title;
    this.smallMPa = smallMPa;
    this.smallToMm = smallToMm;
    this.largeMPa = largeMPa;
  }

  private static double[] ksi(double proof, double yield, double tensile) {
    double toMPa = 6.894757293168361;
    return new double[] {proof * toMPa, yield * toMPa, tensile * toMPa};
  }

  private boolean isMetric() {
    return this == CLASS_8_8 || this == CLASS_10_9;
  }

  /** How it is called: {@code grade 8}, {@code class 10.9}. */
  public String title() {
    return title;
  }

  /**
   * Stress a bolt of this grade must bear without setting.
   *
   * @param diameterMm nominal diameter, mm, 6 to 38.1
   * @return proof strength, MPa
   * @throws IllegalArgumentException if the diameter is outside the table
   */
  public double proofMPa(double diameterMm) {
    return valueMPa(diameterMm, 0);
  }

  /**
   * Yield strength.
   *
   * @param diameterMm nominal diameter, mm, 6 to 38.1
   * @return yield strength, MPa
   * @throws IllegalArgumentException if the diameter is outside the table
   */
  public double yieldMPa(double diameterMm) {
    return valueMPa(diameterMm, 1);
  }

  /**
   * Tensile strength.
   *
   * @param diameterMm nominal diameter, mm, 6 to 38.1
   * @return tensile strength, MPa
   * @throws IllegalArgumentException if the diameter is outside the table
   */
  public double tensileMPa(double diameterMm) {
    return valueMPa(diameterMm, 2);
  }

  private double valueMPa(double diameterMm, int column) {
    Given.within(
        "bolt diameter",
        diameterMm,
        isMetric() ? SMALLEST_METRIC_MM : SMALLEST_INCH_MM,
        LARGEST_MM,
        "mm",
        isMetric()
            ? "The class is taken from M6 on."
            : "The grade is defined from 1/4 to 1-1/2 in.");
    return (diameterMm <= smallToMm ? smallMPa : largeMPa)[column];
  }
}
