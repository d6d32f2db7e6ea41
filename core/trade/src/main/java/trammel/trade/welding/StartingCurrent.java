package trammel.trade.welding;

import java.util.OptionalDouble;
import trammel.engine.quantity.Given;

/**
 * Where a MIG welder is set before the first test bead: one ampere for each 0.001 in of plate, and
 * a wire feed that goes with it (welder owner's manual OM-283007, page 27).
 */
public final class StartingCurrent {

  private static final double MM_PER_INCH = 25.4;
  private static final double[] WIRE_IN = {0.024, 0.030, 0.035};
  private static final double[] FEED_IN_PER_MIN_PER_AMP = {3.5, 2.0, 1.6};
  private static final double SAME_WIRE_IN = 0.0008;

  private StartingCurrent() {}

  /**
   * Current for a thickness, A.
   *
   * @param thicknessMm thickness, mm, above 0, up to 12.7
   * @throws IllegalArgumentException outside the range
   */
  public static double amps(double thicknessMm) {
    Given.positive("thickness", thicknessMm, 12.7, "mm", "Thicker plate is welded in passes.");
    return thicknessMm / MM_PER_INCH * 1000;
  }

  /**
   * Wire feed for a current, mm/min; empty for a wire other than 0.024, 0.030 and 0.035 in.
   *
   * @param wireMm wire diameter, mm
   * @param amps current, A
   */
  public static OptionalDouble feedMmPerMin(double wireMm, double amps) {
    for (int i = 0; i < WIRE_IN.length; i++) {
      if (Math.abs(wireMm / MM_PER_INCH - WIRE_IN[i]) <= SAME_WIRE_IN) {
        return OptionalDouble.of(amps * FEED_IN_PER_MIN_PER_AMP[i] * MM_PER_INCH);
      }
    }
    return OptionalDouble.empty();
  }
}
