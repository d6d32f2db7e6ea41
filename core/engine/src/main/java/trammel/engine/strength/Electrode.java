package trammel.engine.strength;

/** Filler metal by its tensile strength. Source: AWS A5.1 and A5.18 classification. */
public enum Electrode {
  /** 60 ksi. */
  E60(60),
  /** 70 ksi, the usual wire and rod. */
  E70(70),
  /** 80 ksi. */
  E80(80);

  private final double tensileMPa;

  Electrode(double tensileKsi) {
    this.tensileMPa = tensileKsi * 6.894757293168361;
  }

  /**
   * Tensile strength of the deposit.
   *
   * @return strength, MPa
   */
  public double tensileMPa() {
    return tensileMPa;
  }

  /**
   * Stress allowed on the throat of a fillet, 0.30 of the tensile strength. Source: AISC 360 Table
   * J2.5, 0.60 with factor 2.00; AWS D1.1.
   *
   * @return stress, MPa
   */
  public double allowableThroatMPa() {
    return 0.30 * tensileMPa;
  }

  /**
   * Design stress on the throat by load and resistance factors, 0.75 of 0.60 of the tensile
   * strength. Source: AISC 360 Table J2.5.
   *
   * @return stress, MPa
   */
  public double designThroatMPa() {
    return 0.75 * 0.60 * tensileMPa;
  }
}
