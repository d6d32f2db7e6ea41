package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * Force and moment on a weld group. X and Y lie in the plane of the welds, Z stands on it; moments
 * by the right-hand rule.
 *
 * @param forceXN force along X, N
 * @param forceYN force along Y, N
 * @param forceZN force along Z, N, pulling the part off when positive
 * @param atXMm where the force acts, mm, in the coordinates of the welds
 * @param atYMm where the force acts, mm
 * @param atZMm where the force acts, mm off the plane of the welds
 * @param momentXNmm further moment about X, Nmm
 * @param momentYNmm further moment about Y, Nmm
 * @param momentZNmm further moment about Z (torsion in the plane), Nmm
 */
public record WeldLoad(
    double forceXN,
    double forceYN,
    double forceZN,
    double atXMm,
    double atYMm,
    double atZMm,
    double momentXNmm,
    double momentYNmm,
    double momentZNmm) {
  /**
   * Checks that all are numbers.
   *
   * @throws IllegalArgumentException if one is not a number or over 10¹²
   */
  public WeldLoad {
    Given.finite("force X", forceXN, "N");
    Given.finite("force Y", forceYN, "N");
    Given.finite("force Z", forceZN, "N");
    Given.finite("position X", atXMm, "mm");
    Given.finite("position Y", atYMm, "mm");
    Given.finite("position Z", atZMm, "mm");
    Given.finite("moment X", momentXNmm, "Nmm");
    Given.finite("moment Y", momentYNmm, "Nmm");
    Given.finite("moment Z", momentZNmm, "Nmm");
  }

  /**
   * A force alone.
   *
   * @param forceXN force along X, N
   * @param forceYN force along Y, N
   * @param forceZN force along Z, N
   * @param atXMm where it acts, mm
   * @param atYMm where it acts, mm
   * @param atZMm where it acts, mm off the plane of the welds
   * @return the load
   * @throws IllegalArgumentException if one is not a number
   */
  public static WeldLoad force(
      double forceXN, double forceYN, double forceZN, double atXMm, double atYMm, double atZMm) {
    return new WeldLoad(forceXN, forceYN, forceZN, atXMm, atYMm, atZMm, 0, 0, 0);
  }
}
