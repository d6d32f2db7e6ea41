package trammel.trade.welding;

/** Weight of weld metal. */
public final class WeldMetal {

  private static final double KG_PER_POUND = 0.45359237;
  private static final double MM3_PER_CUBIC_INCH = 25.4 * 25.4 * 25.4;

  /**
   * Mass of steel weld metal, kg/mm³: the 0.283 lb/in³ of the trade's deposit tables (ESAB, Filler
   * Metal Data Handbook, section 8).
   */
  public static final double KG_PER_MM3 = 0.283 * KG_PER_POUND / MM3_PER_CUBIC_INCH;

  private WeldMetal() {}

  /** Mass of a bead per length, kg/m, from its cross-section, mm². */
  public static double kgPerMetre(double areaMm2) {
    return areaMm2 * 1000 * KG_PER_MM3;
  }
}
