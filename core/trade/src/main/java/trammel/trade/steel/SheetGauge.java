package trammel.trade.steel;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sheet steel by gauge number (Manufacturers' Standard Gage). Tube walls are sold by the decimal or
 * by another gauge: a .120 wall is not 11 gauge sheet.
 */
public enum SheetGauge {
  GAUGE_3(3, 0.2391, Double.NaN),
  GAUGE_4(4, 0.2242, Double.NaN),
  GAUGE_5(5, 0.2092, Double.NaN),
  GAUGE_6(6, 0.1943, Double.NaN),
  GAUGE_7(7, 0.1793, Double.NaN),
  GAUGE_8(8, 0.1644, 0.1681),
  GAUGE_9(9, 0.1495, 0.1532),
  GAUGE_10(10, 0.1345, 0.1382),
  GAUGE_11(11, 0.1196, 0.1233),
  GAUGE_12(12, 0.1046, 0.1084),
  GAUGE_13(13, 0.0897, 0.0934),
  GAUGE_14(14, 0.0747, 0.0785),
  GAUGE_15(15, 0.0673, 0.0710),
  GAUGE_16(16, 0.0598, 0.0635),
  GAUGE_17(17, 0.0538, 0.0575),
  GAUGE_18(18, 0.0478, 0.0516),
  GAUGE_19(19, 0.0418, 0.0456),
  GAUGE_20(20, 0.0359, 0.0396),
  GAUGE_22(22, 0.0299, 0.0336),
  GAUGE_24(24, 0.0239, 0.0276),
  GAUGE_26(26, 0.0179, 0.0217);

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
   * @return the gauge; empty when it is not one of 3 to 20, 22, 24 and 26
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
