package trammel.trade.welding;

import trammel.engine.quantity.Given;

/**
 * A covered electrode, as for shielded metal arc welding, whose last part is thrown away.
 *
 * @param lengthMm length of a new electrode, mm
 * @param stubMm what is thrown away, mm, less than the electrode
 * @param laboratoryEfficiency deposition efficiency without a stub, above 0 to 1
 */
public record StickElectrode(double lengthMm, double stubMm, double laboratoryEfficiency) {

  public StickElectrode {
    Given.positive("length of a covered electrode", lengthMm, 1000, "mm", "14 in is 356 mm.");
    Given.within(
        "stub of a covered electrode",
        stubMm,
        0,
        Math.nextDown(lengthMm),
        "mm",
        "Common is 50 mm; it is shorter than the electrode.");
    Given.positive(
        "efficiency of a covered electrode", laboratoryEfficiency, 1, "", "Give a fraction: 0.65.");
  }

  /** Efficiency with the stub thrown away: laboratory figure × (length − stub) / length. */
  public double depositionEfficiency() {
    return laboratoryEfficiency * (lengthMm - stubMm) / lengthMm;
  }
}
