package trammel.trade.welding;

import trammel.trade.given.Given;

/**
 * A stick electrode whose last part is thrown away.
 *
 * @param lengthMm length of a new stick, mm
 * @param stubMm what is thrown away, mm, less than the stick
 * @param laboratoryEfficiency deposition efficiency without a stub, above 0 to 1
 */
public record StickElectrode(double lengthMm, double stubMm, double laboratoryEfficiency) {

  public StickElectrode {
    Given.positive(lengthMm, 1000, "Length of a stick electrode in mm", "14 in is 356 mm.");
    Given.between(
        stubMm,
        0,
        Math.nextDown(lengthMm),
        "Stub of a stick electrode in mm",
        "Common is 50 mm; it is shorter than the stick.");
    Given.positive(
        laboratoryEfficiency, 1, "Efficiency of a stick electrode", "Give a fraction: 0.65.");
  }

  /** Efficiency with the stub thrown away: laboratory figure × (length − stub) / length. */
  public double depositionEfficiency() {
    return laboratoryEfficiency * (lengthMm - stubMm) / lengthMm;
  }
}
