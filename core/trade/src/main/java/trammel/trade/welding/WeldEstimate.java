package trammel.trade.welding;

import java.util.List;

/**
 * What a weld list takes.
 *
 * @param practice how it is welded
 * @param lines each line of the list
 */
public record WeldEstimate(WeldPractice practice, List<SeamEstimate> lines) {

  public WeldEstimate {
    lines = List.copyOf(lines);
  }

  /** Length of all beads, mm. */
  public double lengthMm() {
    double lengthMm = 0;
    for (SeamEstimate line : lines) {
      lengthMm += line.seam().totalLengthMm();
    }
    return lengthMm;
  }

  /** Weld metal laid, kg. */
  public double depositKg() {
    double depositKg = 0;
    for (SeamEstimate line : lines) {
      depositKg += line.depositKg();
    }
    return depositKg;
  }

  /** Filler bought, kg. */
  public double fillerKg() {
    double fillerKg = 0;
    for (SeamEstimate line : lines) {
      fillerKg += line.fillerKg();
    }
    return fillerKg;
  }

  /** Shielding gas, L. */
  public double gasLitres() {
    double gasLitres = 0;
    for (SeamEstimate line : lines) {
      gasLitres += line.gasLitres();
    }
    return gasLitres;
  }

  /** Time the arc burns, h. */
  public double arcHours() {
    double arcHours = 0;
    for (SeamEstimate line : lines) {
      arcHours += line.arcHours();
    }
    return arcHours;
  }

  /** Time at the torch, h. */
  public double clockHours() {
    double clockHours = 0;
    for (SeamEstimate line : lines) {
      clockHours += line.clockHours();
    }
    return clockHours;
  }

  /** Time at the torch in one place, h. */
  public double clockHours(WeldPlace place) {
    double clockHours = 0;
    for (SeamEstimate line : lines) {
      if (line.seam().place() == place) {
        clockHours += line.clockHours();
      }
    }
    return clockHours;
  }
}
