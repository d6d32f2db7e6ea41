package trammel.engine.springs;

import trammel.engine.quantity.Given;

/**
 * A torsion bar across the vehicle with an arm at each end, as a spring between the two sides.
 *
 * <p>The bar is twisted between its arms, and each arm is bent where it leaves the bar: 1/K = A²
 * B/(G J) + 2 C³/(3 E I). Source: Puhn, How to Make Your Car Handle, from memory, derived again;
 * torsion alone as Staniforth, Race and Rally Car Source Book, has it. Bushings, links and what
 * carries them give as well, which is left out: a bar on soft bushings is softer than this.
 *
 * @param outsideMm outside diameter of the bar (mm), above 0
 * @param insideMm inside diameter (mm), 0 for a solid bar
 * @param straightMm what is twisted, from arm to arm (mm), above 0
 * @param leverMm from the bar's axis to the arm's end, square to the axis (mm), above 0
 * @param armMm length of an arm along itself (mm), at least the lever
 * @param armSecondMomentMm4 second moment of an arm's section, bent as the link bends it (mm⁴)
 * @param shearModulusMPa of the bar's steel (MPa)
 * @param youngsModulusMPa of the arms' steel (MPa)
 */
public record AntiRollBarSize(
    double outsideMm,
    double insideMm,
    double straightMm,
    double leverMm,
    double armMm,
    double armSecondMomentMm4,
    double shearModulusMPa,
    double youngsModulusMPa) {
  /** Shear modulus of spring steel, 11.5e6 psi: from memory (MPa). */
  public static final double STEEL_SHEAR_MPA = 79_290;

  /** Young's modulus of spring steel, 30e6 psi: from memory (MPa). */
  public static final double STEEL_YOUNG_MPA = 206_843;

  public AntiRollBarSize {
    Given.positive("diameter of the anti-roll bar", outsideMm, "mm", "Measure across it.");
    Given.notNegative("bore of the anti-roll bar", insideMm, "mm", "Give 0 for a solid bar.");
    if (insideMm >= outsideMm) {
      throw Given.refusal(
          "bore of the anti-roll bar",
          Given.text(insideMm) + " mm",
          "below its diameter of " + Given.text(outsideMm) + " mm",
          "Give 0 for a solid bar.");
    }
    Given.positive("length between the arms", straightMm, "mm", "Measure from arm to arm.");
    Given.positive("lever of the arms", leverMm, "mm", "Measure square to the bar.");
    Given.positive("second moment of an arm", armSecondMomentMm4, "mm4", "It must be above 0.");
    Given.positive("shear modulus", shearModulusMPa, "MPa", "Steel has 79 290 MPa.");
    Given.positive("Young's modulus", youngsModulusMPa, "MPa", "Steel has 206 843 MPa.");
    if (!(armMm >= leverMm * (1 - 1e-9)) || Double.isInfinite(armMm)) {
      throw Given.refusal(
          "length of the anti-roll bar's arms",
          Given.text(armMm) + " mm",
          "at least their lever of " + Given.text(leverMm) + " mm",
          "Measure the arm along itself.");
    }
  }

  /** A bar bent from one piece: its arms have the section of the bar, Young's modulus of steel. */
  public static AntiRollBarSize bent(
      double outsideMm,
      double insideMm,
      double straightMm,
      double leverMm,
      double armMm,
      double shearModulusMPa) {
    return new AntiRollBarSize(
        outsideMm,
        insideMm,
        straightMm,
        leverMm,
        armMm,
        polarMm4(outsideMm, insideMm) / 2,
        shearModulusMPa,
        STEEL_YOUNG_MPA);
  }

  private static double polarMm4(double outsideMm, double insideMm) {
    return Math.PI * (Math.pow(outsideMm, 4) - Math.pow(insideMm, 4)) / 32;
  }

  /** Force at each arm's end for a difference in height between the two ends (N/mm). */
  public double rateNPerMm() {
    double bending = 2 * Math.pow(armMm, 3) / (3 * youngsModulusMPa * armSecondMomentMm4);
    return 1 / (1 / torsionOnlyNPerMm() + bending);
  }

  /** The same with arms that do not bend (N/mm). */
  public double torsionOnlyNPerMm() {
    return shearModulusMPa * polarMm4(outsideMm, insideMm) / (leverMm * leverMm * straightMm);
  }

  /**
   * Roll stiffness of a bar whose arm ends are so far apart, K b² (Nmm/rad).
   *
   * @param apartMm between the two arm ends, across the vehicle (mm)
   */
  public double rollNmmPerRad(double apartMm) {
    return rateNPerMm() * apartMm * apartMm;
  }

  /**
   * Shear stress at the bar's skin, 16 F A D/(π (D⁴ - d⁴)) (MPa).
   *
   * @param forceN force at each arm's end (N)
   */
  public double shearMPa(double forceN) {
    return forceN * leverMm * outsideMm / 2 / polarMm4(outsideMm, insideMm);
  }
}
