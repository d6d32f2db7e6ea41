package trammel.brackets.bar;

import java.util.function.DoublePredicate;

/**
 * The height of a bar's joint over the axle that comes nearest to the usual one and works on this
 * vehicle: its bracket finds a flat on the rail and keeps off the others.
 */
public final class NearestHeight {
  /** Heights that are tried are 1/8 in apart (mm). */
  private static final double STEP_MM = 25.4 / 8;

  private static final double ROUNDING_MM = 1e-6;

  private NearestHeight() {}

  /**
   * The nearest height that works, the higher of two as near; the usual one where none does, so
   * that what is in its way is told of that.
   *
   * @param usualMm the usual height (mm)
   * @param leastMm the least to try (mm)
   * @param mostMm the most to try (mm)
   * @param works whether a height works
   */
  public static double of(double usualMm, double leastMm, double mostMm, DoublePredicate works) {
    double firstMm = Math.max(usualMm, roundedUpMm(leastMm));
    for (double offMm = 0;
        firstMm + offMm <= mostMm + ROUNDING_MM || firstMm - offMm >= leastMm - ROUNDING_MM;
        offMm += STEP_MM) {
      if (firstMm + offMm <= mostMm + ROUNDING_MM && works.test(firstMm + offMm)) {
        return firstMm + offMm;
      }
      if (offMm > 0 && firstMm - offMm >= leastMm - ROUNDING_MM && works.test(firstMm - offMm)) {
        return firstMm - offMm;
      }
    }
    return firstMm;
  }

  /** A length in steps of 1/8 in, no less than the one given (mm). */
  public static double roundedUpMm(double lengthMm) {
    return STEP_MM * Math.ceil(lengthMm / STEP_MM - ROUNDING_MM);
  }
}
