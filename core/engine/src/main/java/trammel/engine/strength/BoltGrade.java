package trammel.engine.strength;

import trammel.engine.quantity.Given;

/** Strength of graded inch bolts. Source: SAE J429 property table. */
public enum BoltGrade {
  /** Medium carbon, quenched and tempered; weaker over 1 in. */
  GRADE_5(new double[] {85, 92, 120}, new double[] {74, 81, 105}),
  /** Alloy, quenched and tempered; the same to 1½ in. */
  GRADE_8(new double[] {120, 130, 150}, new double[] {120, 130, 150});

  private static final double KSI_TO_MPA = 6.894757293168361;
  private static final double ONE_INCH_MM = 25.4;
  private static final double LARGEST_MM = 38.1;
  private static final double SMALLEST_MM = 6.35;

  private final double[] toOneInchKsi;
  private final double[] overOneInchKsi;

  BoltGrade(double[] toOneInchKsi, double[] overOneInchKsi) {
    this.toOneInchKsi = toOneInchKsi;
    this.overOneInchKsi = overOneInchKsi;
  }

  /**
   * Stress a bolt of this grade must bear without setting.
   *
   * @param diameterMm nominal diameter, mm, ¼ in (6.35) to 1½ in (38.1)
   * @return proof strength, MPa
   * @throws IllegalArgumentException if the diameter is outside the table
   */
  public double proofMPa(double diameterMm) {
    return valueMPa(diameterMm, 0);
  }

  /**
   * Yield strength.
   *
   * @param diameterMm nominal diameter, mm, ¼ in (6.35) to 1½ in (38.1)
   * @return yield strength, MPa
   * @throws IllegalArgumentException if the diameter is outside the table
   */
  public double yieldMPa(double diameterMm) {
    return valueMPa(diameterMm, 1);
  }

  /**
   * Tensile strength.
   *
   * @param diameterMm nominal diameter, mm, ¼ in (6.35) to 1½ in (38.1)
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
        SMALLEST_MM,
        LARGEST_MM,
        "mm",
        "The grade is defined from 1/4 to 1-1/2 in.");
    double[] row = diameterMm <= ONE_INCH_MM ? toOneInchKsi : overOneInchKsi;
    return row[column] * KSI_TO_MPA;
  }
}
