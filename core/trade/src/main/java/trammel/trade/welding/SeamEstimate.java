package trammel.trade.welding;

/**
 * What one line of the weld list takes.
 *
 * @param seam the line
 * @param depositKg weld metal laid, kg
 * @param fillerKg filler bought, kg
 * @param gasLitres shielding gas, L
 * @param arcHours time the arc burns, h
 * @param clockHours time at the torch with fit, chipping and moving, h
 */
public record SeamEstimate(
    WeldSeam seam,
    double depositKg,
    double fillerKg,
    double gasLitres,
    double arcHours,
    double clockHours) {

  /** Mean travel of the arc, mm/min; 0 for plugs and slots, which have no length. */
  public double travelMmPerMin() {
    return seam.totalLengthMm() / (arcHours * 60);
  }
}
