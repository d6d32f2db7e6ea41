package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * A straight or bent bar under end load: Johnson's parabola for short bars, Euler for long ones.
 * Source: Shigley, Mechanical Engineering Design, ch. 4, from memory; Wentzell, Machine Design, ch.
 * 3.
 *
 * @param areaMm2 area of the section, mm², over 0
 * @param radiusOfGyrationMm radius of gyration about the axis it bends around, mm, over 0
 * @param toFaceMm distance from that axis to the outer face, mm, over 0
 * @param lengthMm length between pivots, mm, over 0
 * @param endFactor effective length over length: 1 for two pivots, 0.65 for two welded ends, 0.3 to
 *     2.5
 * @param yieldMPa yield strength, MPa, 50 to 3000
 * @param youngsModulusMPa Young's modulus, MPa, 10000 to 500000
 */
public record Column(
    double areaMm2,
    double radiusOfGyrationMm,
    double toFaceMm,
    double lengthMm,
    double endFactor,
    double yieldMPa,
    double youngsModulusMPa) {
  /** Which formula decides. */
  public enum Mode {
    /** Short: the material gives way before the bar can bow. */
    JOHNSON,
    /** Long: the bar bows while the material is still sound. */
    EULER
  }

  /**
   * Checks the column.
   *
   * @throws IllegalArgumentException if a value is outside its range
   */
  public Column {
    Given.within("column area", areaMm2, 0.01, 1e6, "mm²", "Check the section.");
    Given.within("radius of gyration", radiusOfGyrationMm, 0.01, 1000, "mm", "Check the section.");
    Given.within("distance to the face", toFaceMm, 0.01, 1000, "mm", "Check the section.");
    Given.within("column length", lengthMm, 0.1, 20_000, "mm", "Measure from pivot to pivot.");
    Given.within(
        "end factor", endFactor, 0.3, 2.5, "", "Use 1 for a bar with a pivot at each end.");
    Given.within("yield strength", yieldMPa, 50, 3000, "MPa", "Read it from the certificate.");
    Given.within(
        "Young's modulus", youngsModulusMPa, 10_000, 500_000, "MPa", "Steel has about 200000.");
  }

  /**
   * A steel bar with a pivot at each end, bending about its weaker axis.
   *
   * @param section its section; the distance to the face is taken upward or downward, whichever is
   *     larger
   * @param lengthMm length between pivots, mm, over 0
   * @param grade its steel
   * @return the column
   * @throws IllegalArgumentException if a value is outside its range
   */
  public static Column pivoted(Section section, double lengthMm, SteelGrade grade) {
    return new Column(
        section.areaMm2(),
        section.leastRadiusOfGyrationMm(),
        Math.max(section.toTopMm(), section.toBottomMm()),
        lengthMm,
        1.0,
        grade.yieldMPa(),
        SteelGrade.YOUNGS_MODULUS_MPA);
  }

  /**
   * Slenderness, effective length over radius of gyration.
   *
   * @return slenderness ratio
   */
  public double slenderness() {
    return endFactor * lengthMm / radiusOfGyrationMm;
  }

  /**
   * Slenderness at which the two formulas meet, √(2π²E/Sy).
   *
   * @return slenderness ratio
   */
  public double transitionSlenderness() {
    return Math.PI * Math.sqrt(2.0 * youngsModulusMPa / yieldMPa);
  }

  /**
   * Which formula decides.
   *
   * @return Euler when slenderness is over the transition, else Johnson
   */
  public Mode mode() {
    return slenderness() > transitionSlenderness() ? Mode.EULER : Mode.JOHNSON;
  }

  /**
   * Euler's load, π²EA/(KL/r)², whatever the length.
   *
   * @return load, N
   */
  public double eulerLoadN() {
    double slenderness = slenderness();
    return Math.PI * Math.PI * youngsModulusMPa * areaMm2 / (slenderness * slenderness);
  }

  /**
   * Load at which the straight, centrally loaded bar buckles.
   *
   * @return load, N
   */
  public double criticalLoadN() {
    if (mode() == Mode.EULER) {
      return eulerLoadN();
    }
    double ratio = slenderness() / transitionSlenderness();
    return yieldLoadN() * (1.0 - 0.5 * ratio * ratio);
  }

  private double yieldLoadN() {
    return areaMm2 * yieldMPa;
  }

  /**
   * Largest stress when the load passes beside the axis at both ends (secant formula), P/A [1 +
   * (ec/r²) sec((KL/2r) √(P/EA))]. Source: Shigley ch. 4, from memory.
   *
   * @param loadN pressing load, N, 0 or more and under Euler's load
   * @param eccentricityMm distance of the load from the axis, mm, 0 to 10000
   * @return compressive stress, MPa
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double secantStressMPa(double loadN, double eccentricityMm) {
    checkBelowEuler(loadN);
    checkOffset(eccentricityMm);
    double halfAngle = Math.PI / 2.0 * Math.sqrt(loadN / eulerLoadN());
    return loadN / areaMm2 * (1.0 + offsetRatio(eccentricityMm) / Math.cos(halfAngle));
  }

  /**
   * Load beside the axis at which the outer face yields, by the secant formula.
   *
   * @param eccentricityMm distance of the load from the axis, mm, 0 to 10000
   * @return load, N; with no eccentricity the straight bar's {@link #criticalLoadN}
   * @throws IllegalArgumentException if the eccentricity is outside its range
   */
  public double secantYieldLoadN(double eccentricityMm) {
    checkOffset(eccentricityMm);
    double low = 0;
    double high = Math.min(yieldLoadN(), eulerLoadN() * BELOW_EULER);
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = 0.5 * (low + high);
      if (secantStressMPa(middle, eccentricityMm) > yieldMPa) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return Math.min(low, criticalLoadN());
  }

  /**
   * Largest stress in a bent bar, the middle of which stands off the line between its pivots: P/A +
   * P e c/(I (1 − P/Pe)). The bow grows under pressing load by 1/(1 − P/Pe). Source: initial
   * curvature of a column (Perry), Timoshenko, Theory of Elastic Stability, from memory.
   *
   * @param loadN pressing load, N, 0 or more and under Euler's load
   * @param offsetMm largest distance of the bar's axis from the line between its pivots, mm, 0 to
   *     10000
   * @return compressive stress, MPa
   * @throws IllegalArgumentException if an input is outside its range
   */
  public double bentBarStressMPa(double loadN, double offsetMm) {
    checkBelowEuler(loadN);
    checkOffset(offsetMm);
    double growth = 1.0 / (1.0 - loadN / eulerLoadN());
    return loadN / areaMm2 * (1.0 + offsetRatio(offsetMm) * growth);
  }

  /**
   * Pressing load at which a bent bar yields: the smaller root of the quadratic behind {@link
   * #bentBarStressMPa} (Perry and Robertson), and never over {@link #criticalLoadN}.
   *
   * @param offsetMm largest distance of the bar's axis from the line between its pivots, mm, 0 to
   *     10000
   * @return load, N
   * @throws IllegalArgumentException if the offset is outside its range
   */
  public double bentBarYieldLoadN(double offsetMm) {
    checkOffset(offsetMm);
    double euler = eulerLoadN();
    double yield = yieldLoadN();
    double half = 0.5 * (yield + euler * (1.0 + offsetRatio(offsetMm)));
    // The product over the larger root: no cancellation when the two loads are far apart.
    double root = Math.sqrt(Math.max(0.0, half * half - yield * euler));
    return Math.min(yield * euler / (half + root), criticalLoadN());
  }

  /**
   * Pulling load at which a bent bar yields, without counting on the pull to straighten it: A Sy/(1
   * + ec/r²).
   *
   * @param offsetMm largest distance of the bar's axis from the line between its pivots, mm, 0 to
   *     10000
   * @return load, N
   * @throws IllegalArgumentException if the offset is outside its range
   */
  public double bentBarTensionYieldN(double offsetMm) {
    checkOffset(offsetMm);
    return yieldLoadN() / (1.0 + offsetRatio(offsetMm));
  }

  private double offsetRatio(double offsetMm) {
    return offsetMm * toFaceMm / (radiusOfGyrationMm * radiusOfGyrationMm);
  }

  private static void checkOffset(double offsetMm) {
    Given.within(
        "offset of the load", offsetMm, 0, 10_000, "mm", "Measure from a line between the pivots.");
  }

  private void checkBelowEuler(double loadN) {
    Given.within(
        "pressing load",
        loadN,
        0,
        eulerLoadN() * BELOW_EULER,
        "N",
        "At Euler's load the bar folds up: use a shorter or thicker bar.");
  }

  /** Closest approach to Euler's load at which a stress is still worked out. */
  private static final double BELOW_EULER = 1.0 - 1e-9;

  /** Halvings that bring a load to the last digit of a double. */
  private static final int HALVINGS = 60;
}
