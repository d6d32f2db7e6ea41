package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A graded bolt.
 *
 * <p>Shear strength: the bolt standard states none. Two conventions are in use, and they answer
 * different questions. {@link #shearStrengthN} is the load at which the bolt is expected to break,
 * 0.6 of the tensile strength on the area that really lies in the shear plane; safety factors of
 * this tool are taken against it. {@link #allowableShearN} is the load AISC 360-10 (Table J3.2,
 * factor 2) allows in a building, 0.563 or 0.450 of the tensile strength on the nominal area; the
 * edition of 2005 used 0.50 and 0.40.
 *
 * @param thread its thread
 * @param grade its grade
 */
public record Bolt(UnifiedThread thread, BoltGrade grade) {
  /** Preload over proof load for a joint that is taken apart again. Source: Shigley, memory. */
  public static final double REUSABLE_PRELOAD_SHARE = 0.75;

  /** Torque over preload times diameter for a plain dry bolt. Source: Shigley ch. 8, memory. */
  public static final double DRY_NUT_FACTOR = 0.2;

  /** Shear over tensile strength of steel, the usual estimate. */
  private static final double SHEAR_SHARE = 0.6;

  /** Where the shear plane cuts the bolt. */
  public enum ShearPlane {
    /** The plain shank lies in the plane. */
    SHANK,
    /** The thread lies in the plane. */
    THREAD
  }

  /**
   * Checks the bolt.
   *
   * @throws IllegalArgumentException if the grade does not cover the diameter
   */
  public Bolt {
    grade.proofMPa(thread.majorDiameterMm());
  }

  /**
   * Load the bolt must bear without setting.
   *
   * @return load, N
   */
  public double proofLoadN() {
    return thread.loadAtN(grade.proofMPa(thread.majorDiameterMm()));
  }

  /**
   * Tensile load at which the bolt breaks.
   *
   * @return load, N
   */
  public double tensileLoadN() {
    return thread.loadAtN(tensileMPa());
  }

  private double tensileMPa() {
    return grade.tensileMPa(thread.majorDiameterMm());
  }

  /**
   * Area of the plain shank.
   *
   * @return area, mm²
   */
  public double shankAreaMm2() {
    return Math.PI / 4.0 * thread.majorDiameterMm() * thread.majorDiameterMm();
  }

  private double areaMm2(ShearPlane plane) {
    return plane == ShearPlane.SHANK ? shankAreaMm2() : thread.stressAreaMm2();
  }

  /**
   * Load at which the bolt is expected to shear, 0.6 Su on the area in the plane.
   *
   * @param planes number of planes: 1 in a single lap, 2 in a clevis
   * @param plane what lies in the planes
   * @return load, N
   * @throws IllegalArgumentException if the number of planes is not 1 to 10
   */
  public double shearStrengthN(int planes, ShearPlane plane) {
    checkPlanes(planes);
    return planes * SHEAR_SHARE * tensileMPa() * areaMm2(plane);
  }

  /**
   * Load AISC 360-10 allows (Table J3.2, allowable stress design, factor 2).
   *
   * @param planes number of planes: 1 in a single lap, 2 in a clevis
   * @param plane what lies in the planes
   * @return load, N
   * @throws IllegalArgumentException if the number of planes is not 1 to 10
   */
  public double allowableShearN(int planes, ShearPlane plane) {
    checkPlanes(planes);
    double share = plane == ShearPlane.SHANK ? 0.563 : 0.450;
    return planes * share * tensileMPa() * shankAreaMm2() / 2.0;
  }

  /**
   * Shear stress in the plane.
   *
   * @param loadN load across the bolt, N, either direction
   * @param planes number of planes
   * @param plane what lies in the planes
   * @return stress, MPa, 0 or more
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double shearStressMPa(double loadN, int planes, ShearPlane plane) {
    Given.finite("load across the bolt", loadN, "N");
    checkPlanes(planes);
    return Math.abs(loadN) / (planes * areaMm2(plane));
  }

  private static void checkPlanes(int planes) {
    Given.within("number of shear planes", planes, 1, 10, "", "A clevis has 2.");
  }

  /**
   * Preload at a share of the proof load.
   *
   * @param share share of the proof load, over 0 to 1; {@link #REUSABLE_PRELOAD_SHARE} is usual
   * @return preload, N
   * @throws IllegalArgumentException if the share is outside its range
   */
  public double preloadN(double share) {
    Given.within("share of the proof load", share, 0.01, 1, "", "0.75 is usual.");
    return share * proofLoadN();
  }

  /**
   * Tightening torque, K D F.
   *
   * @param share share of the proof load, over 0 to 1
   * @param nutFactor torque over preload times diameter, 0.05 to 0.5; dry {@link #DRY_NUT_FACTOR},
   *     oiled about 0.15
   * @return torque, Nmm
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double tighteningTorqueNmm(double share, double nutFactor) {
    Given.within("nut factor", nutFactor, 0.05, 0.5, "", "0.2 dry, about 0.15 oiled.");
    return nutFactor * thread.majorDiameterMm() * preloadN(share);
  }
}
