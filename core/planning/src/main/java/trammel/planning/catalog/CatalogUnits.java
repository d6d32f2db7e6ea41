package trammel.planning.catalog;

import trammel.reading.quantity.UnitSystem;

/** Sizes in which ranges of catalog fields are written down, and units without a name in files. */
final class CatalogUnits {
  private static final double MM_IN_INCH = 25.4;
  private static final double KG_IN_POUND = 0.45359237;
  private static final double N_IN_POUND = 4.4482216152605;
  private static final double MPA_IN_PSI = N_IN_POUND / (MM_IN_INCH * MM_IN_INCH);
  private static final double MM_IN_CM = 10;
  private static final double LITRES_IN_CUBIC_FOOT = 28.316846592;

  private CatalogUnits() {}

  static double inches(double inches) {
    return inches * MM_IN_INCH;
  }

  static double pounds(double pounds) {
    return pounds * KG_IN_POUND;
  }

  static double poundsForce(double pounds) {
    return pounds * N_IN_POUND;
  }

  static double poundsPerInch(double poundsPerInch) {
    return poundsPerInch * N_IN_POUND / MM_IN_INCH;
  }

  static double psi(double psi) {
    return psi * MPA_IN_PSI;
  }

  /** An area written in square inches or square centimetres, mm². */
  static double areaMm2(double written, UnitSystem units) {
    double sideMm = units == UnitSystem.US ? MM_IN_INCH : MM_IN_CM;
    return written * sideMm * sideMm;
  }

  /** A volume written in cubic inches or cubic centimetres, mm³. */
  static double volumeMm3(double written, UnitSystem units) {
    double sideMm = units == UnitSystem.US ? MM_IN_INCH : MM_IN_CM;
    return written * sideMm * sideMm * sideMm;
  }

  /** A gas flow written in cubic feet an hour or litres a minute, L/min. */
  static double litresPerMin(double written, UnitSystem units) {
    return units == UnitSystem.US ? written * LITRES_IN_CUBIC_FOOT / 60 : written;
  }
}
