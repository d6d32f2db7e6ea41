package trammel.engine.strength;

import trammel.engine.quantity.Given;

/**
 * How many times a welded detail stands a range of stress, by EN 1993-1-9: its category is the
 * range that it stands 2 million times; slope 3 down to the knee at 5 million, slope 5 to the
 * cut-off at 100 million, below which a range does nothing. The strength of the steel plays no
 * part. For ranking details by their damage, never as a promise of life.
 *
 * @param categoryMPa detail category (MPa), above 0
 */
public record FatigueCurve(double categoryMPa) {
  /** Root of a fillet that carries load, by the stress on its throat: EN 1993-1-9, from memory. */
  public static final FatigueCurve FILLET_ROOT = new FatigueCurve(36);

  private static final double REFERENCE = 2e6;
  private static final double KNEE = 5e6;
  private static final double END = 1e8;

  public FatigueCurve {
    Given.positive("detail category (MPa)", categoryMPa);
  }

  /** The same detail with its category divided by a partial factor. */
  public FatigueCurve dividedBy(double partialFactor) {
    return new FatigueCurve(categoryMPa / partialFactor);
  }

  /** Range at the knee, 5 million times (MPa). */
  public double kneeMPa() {
    return categoryMPa * Math.cbrt(REFERENCE / KNEE);
  }

  /** Range below which nothing is damaged (MPa). */
  public double cutOffMPa() {
    return kneeMPa() * Math.pow(KNEE / END, 1.0 / 5);
  }

  /** How many times a range is stood; infinite at and below the cut-off. */
  public double cycles(double rangeMPa) {
    if (rangeMPa >= kneeMPa()) {
      return REFERENCE * Math.pow(categoryMPa / rangeMPa, 3);
    }
    return rangeMPa > cutOffMPa()
        ? KNEE * Math.pow(kneeMPa() / rangeMPa, 5)
        : Double.POSITIVE_INFINITY;
  }

  /** Share of the damage of a number of ranges alike, n/N (Miner's rule). */
  public double damage(double times, double rangeMPa) {
    return times / cycles(rangeMPa);
  }
}
