package trammel.trade.steel;

/** Weights of steel. */
public final class Steel {

  /**
   * Mass of rolled carbon steel, kg/mm³ (7850 kg/m³, 0.2836 lb/in³). Weld metal goes by the trade's
   * 0.283 lb/in³ instead.
   */
  public static final double KG_PER_MM3 = 7.85e-6;

  private Steel() {}
}
