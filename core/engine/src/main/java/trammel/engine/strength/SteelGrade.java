package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * Strength of a steel, as the least its standard promises.
 *
 * @param name what it is called, never blank
 * @param yieldMPa least yield strength, MPa, 50 to 3000
 * @param tensileMPa least tensile strength, MPa, not under the yield, up to 3500
 * @param source where the two numbers come from, never blank
 */
public record SteelGrade(String name, double yieldMPa, double tensileMPa, String source) {
  /** Young's modulus of steel, 29e6 psi in MPa. Source: AISC 360. */
  public static final double YOUNGS_MODULUS_MPA = 199_948.0;

  /**
   * Checks the grade.
   *
   * @throws IllegalArgumentException if a text is blank or a strength is outside its range
   */
  public SteelGrade {
    if (name.isBlank() || source.isBlank()) {
      throw Given.refusal(
          "name or source of a steel", "blank", "filled in", "Say what it is and who says so.");
    }
    Given.within("yield strength of " + name, yieldMPa, 50, 3000, "MPa", "Read the certificate.");
    Given.within(
        "tensile strength of " + name,
        tensileMPa,
        yieldMPa,
        3500,
        "MPa",
        "It is never under the yield strength: read the certificate.");
  }
}
