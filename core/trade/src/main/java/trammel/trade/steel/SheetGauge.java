package trammel.trade.steel;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sheet steel by gauge number (Manufacturers' Standard Gage). Tube walls are sold by the decimal or
 * by another gauge: a .120 wall is not 11 gauge sheet.
 */
public enum SheetGauge {
  GAUGE_7(7, 0.1793, Double.NaN),
  GAUGE_10(10, 0.1345, 0.1382),
  GAUGE_11(11, 0.1196, 0.1233),
  GAUGE_14(14, 0.0747, 0.0785),
  GAUGE_16(16, 0.0598, 0.0635);

  private static final double MM_PER_INCH = 25.4;

  /** 41.82 lb/ft² per inch of thickness, the weight by which gauge sheet is sold, in kg/mm³. */
  private static final double SHEET_KG_PER_MM3 = 41.82 * 0.45359237 / (304.8 * 304.8) / MM_PER_INCH;

  private final int number;
  private final double bareInches;
  private final double galvanisedInches;

  SheetGauge(int number, double bareInches, double galvanisedInches) {
    this.number = number;
    this.bareInches = bareInches;
    this.galvanisedInches = galvanisedInches;
  }

  /**
   * The gauge of that number, when the table has it.
   *
   * @param number gauge number, for example 11
   * @return the gauge; empty when it is not one of 7, 10, 11, 14 and 16
   */
  public static Optional<SheetGauge> numbered(int number) {
    for (SheetGauge gauge : values()) {
      if (gauge.number == number) {
        return Optional.of(gauge);
      }
    }
    return Optional.empty();
  }

  /** Gauge number. */
  public int number() {
    return number;
  }

  /** Thickness of uncoated sheet, mm. */
  public double thicknessMm() {
    return bareInches * MM_PER_INCH;
  }

  /** Thickness of galvanised sheet, mm; empty when the table has none. */
  public OptionalDouble galvanisedMm() {
    return Double.isNaN(galvanisedInches)
        ? OptionalDouble.empty()
        : OptionalDouble.of(galvanisedInches * MM_PER_INCH);
  }

  /** Mass per area of uncoated sheet, kg/mm². */
  public double kgPerMm2() {
    return thicknessMm() * SHEET_KG_PER_MM3;
  }
}
