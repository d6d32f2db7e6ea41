package trammel.planning.figures;

import trammel.reading.fields.Field;

/** Fields whose ranges are said in the units of the shop. */
final class Shop {
  private static final double INCH_MM = 25.4;
  private static final double POUND_N = 4.4482216152605;
  private static final double POUND_KG = 0.45359237;
  private static final double PSI_MPA = POUND_N / (INCH_MM * INCH_MM);

  private Shop() {}

  /** A length between two lengths in inches. */
  static Field<Double> inches(String key, String help, double min, double max) {
    return Field.lengthMm(key, help, min * INCH_MM, max * INCH_MM);
  }

  /** An angle between two angles in degrees. */
  static Field<Double> degrees(String key, String help, double min, double max) {
    return Field.angleRad(key, help, Math.toRadians(min), Math.toRadians(max));
  }

  /** A force between two forces in pounds. */
  static Field<Double> poundsForce(String key, String help, double min, double max) {
    return Field.forceN(key, help, min * POUND_N, max * POUND_N);
  }

  /** A weight between two weights in pounds. */
  static Field<Double> pounds(String key, String help, double min, double max) {
    return Field.massKg(key, help, min * POUND_KG, max * POUND_KG);
  }

  /** A rate between two rates in pounds an inch. */
  static Field<Double> poundsPerInch(String key, String help, double min, double max) {
    return Field.rateNPerMm(key, help, min * POUND_N / INCH_MM, max * POUND_N / INCH_MM);
  }

  /** A pressure or stress between two in psi. */
  static Field<Double> psi(String key, String help, double min, double max) {
    return Field.pressureMPa(key, help, min * PSI_MPA, max * PSI_MPA);
  }

  /** A torque between two torques in pound-feet. */
  static Field<Double> poundFeet(String key, String help, double min, double max) {
    return Field.torqueNmm(key, help, min * 12 * POUND_N * INCH_MM, max * 12 * POUND_N * INCH_MM);
  }

  /** Psi in MPa. */
  static double fromPsi(double psi) {
    return psi * PSI_MPA;
  }

  /** Square inches in mm². */
  static double squareInches(double area) {
    return area * INCH_MM * INCH_MM;
  }

  /** Cubic inches in mm³. */
  static double cubicInches(double volume) {
    return volume * INCH_MM * INCH_MM * INCH_MM;
  }

  /** Inches in mm. */
  static double toMm(double inches) {
    return inches * INCH_MM;
  }

  /** Feet in mm. */
  static double feetToMm(double feet) {
    return feet * 12 * INCH_MM;
  }

  /** Inch-pounds in Nmm. */
  static double inchPoundsToNmm(double inchPounds) {
    return inchPounds * POUND_N * INCH_MM;
  }

  /** Something for a pound as for a kilogram. */
  static double perPoundToPerKg(double perPound) {
    return perPound / POUND_KG;
  }

  /** Pounds of mass in kg. */
  static double poundsToKg(double pounds) {
    return pounds * POUND_KG;
  }

  /** Cubic feet in litres. */
  static double cubicFeetToLitres(double cubicFeet) {
    return cubicFeet * 28.316846592;
  }

  /** The weight of a mass, N. */
  static double weightN(double massKg) {
    return massKg * POUND_N / POUND_KG;
  }
}
