package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A run of fillet weld with equal legs and what it bears. Source: AISC 360 J2.2b and Table J2.5.
 *
 * @param legMm leg, mm, 0.5 to 50
 * @param lengthMm length, mm, 1 to 100000
 * @param electrode filler metal
 */
public record FilletSeam(double legMm, double lengthMm, Electrode electrode) {
  /** Throat over leg. */
  public static final double THROAT_SHARE = Math.sqrt(0.5);

  /**
   * Checks the weld.
   *
   * @throws IllegalArgumentException if a dimension is outside its range
   */
  public FilletSeam {
    checkLeg(legMm);
    Given.within("weld length", lengthMm, 1, 100_000, "mm", "Measure without the crater.");
  }

  static void checkLeg(double legMm) {
    Given.within("weld leg", legMm, 0.5, 50, "mm", "Measure it with a fillet gauge.");
  }

  /**
   * Leg that counts: a weld shorter than four legs counts as a quarter of its length.
   *
   * @return leg, mm
   */
  public double effectiveLegMm() {
    return Math.min(legMm, lengthMm / 4.0);
  }

  /**
   * Throat that counts.
   *
   * @return throat, mm
   */
  public double throatMm() {
    return THROAT_SHARE * effectiveLegMm();
  }

  /**
   * Load allowed (allowable stress design), whatever its direction.
   *
   * @return load, N
   */
  public double allowableN() {
    return electrode.allowableThroatMPa() * throatMm() * lengthMm;
  }

  /**
   * Design load by load and resistance factors.
   *
   * @return load, N
   */
  public double designN() {
    return electrode.designThroatMPa() * throatMm() * lengthMm;
  }

  /**
   * How much more a weld bears when pulled across its length, 1 + 0.5 sin^1.5 α. Not counted on
   * anywhere in this tool: use 1 unless the joint is proved. Source: AISC 360 J2.4.
   *
   * @param angleRad angle between load and weld, rad, 0 to 90°
   * @return factor, 1 to 1.5
   * @throws IllegalArgumentException if the angle is outside its range
   */
  public static double directionFactor(double angleRad) {
    Given.angle(
        "angle between load and weld", angleRad, 0, Math.PI / 2.0, "Take the smaller angle.");
    return 1.0 + 0.5 * Math.pow(Math.sin(angleRad), 1.5);
  }

  /**
   * Stress on the throat under a load spread evenly.
   *
   * @param loadN load, N, either direction
   * @return stress, MPa, 0 or more
   * @throws IllegalArgumentException if the load is not a number
   */
  public double throatStressMPa(double loadN) {
    Given.finite("load on the weld", loadN, "N");
    return Math.abs(loadN) / (throatMm() * lengthMm);
  }
}
