package trammel.planning.job;

/** Sizes in which the ranges of the job's fields are written down. */
final class ShopUnits {
  private static final double MM_IN_INCH = 25.4;
  private static final double KG_IN_POUND = 0.45359237;
  private static final double NMM_IN_POUND_FOOT = 4.4482216152605 * 304.8;

  private ShopUnits() {}

  static double inches(double inches) {
    return inches * MM_IN_INCH;
  }

  static double pounds(double pounds) {
    return pounds * KG_IN_POUND;
  }

  static double poundFeet(double poundFeet) {
    return poundFeet * NMM_IN_POUND_FOOT;
  }

  static double poundsPerInch(double poundsPerInch) {
    return poundsPerInch * 4.4482216152605 / MM_IN_INCH;
  }

  static double milesPerHour(double milesPerHour) {
    return milesPerHour * 0.44704;
  }

  static double degrees(double degrees) {
    return Math.toRadians(degrees);
  }
}
