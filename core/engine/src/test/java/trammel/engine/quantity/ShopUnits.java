package trammel.engine.quantity;

/** Shop units to engine units and back, by the exact factors of the 1959 yard and pound. */
public final class ShopUnits {
  public static final double MM_PER_IN = 25.4;
  public static final double N_PER_LB = 4.4482216152605;
  public static final double KG_PER_LB = 0.45359237;

  private ShopUnits() {}

  public static double mm(double inches) {
    return inches * MM_PER_IN;
  }

  public static double inches(double mm) {
    return mm / MM_PER_IN;
  }

  public static double mm2(double squareInches) {
    return squareInches * MM_PER_IN * MM_PER_IN;
  }

  public static double squareInches(double mm2) {
    return mm2 / (MM_PER_IN * MM_PER_IN);
  }

  public static double mm3(double cubicInches) {
    return cubicInches * MM_PER_IN * MM_PER_IN * MM_PER_IN;
  }

  public static double cubicInches(double mm3) {
    return mm3 / (MM_PER_IN * MM_PER_IN * MM_PER_IN);
  }

  public static double fourthPowerInches(double mm4) {
    return cubicInches(mm4) / MM_PER_IN;
  }

  public static double newtons(double pounds) {
    return pounds * N_PER_LB;
  }

  public static double pounds(double newtons) {
    return newtons / N_PER_LB;
  }

  public static double kg(double poundsOfMass) {
    return poundsOfMass * KG_PER_LB;
  }

  public static double poundsOfMass(double kg) {
    return kg / KG_PER_LB;
  }

  public static double mPa(double psi) {
    return psi * N_PER_LB / (MM_PER_IN * MM_PER_IN);
  }

  public static double psi(double mPa) {
    return mPa / N_PER_LB * MM_PER_IN * MM_PER_IN;
  }

  public static double nPerMm(double poundsPerInch) {
    return poundsPerInch * N_PER_LB / MM_PER_IN;
  }

  public static double poundsPerInch(double nPerMm) {
    return nPerMm / N_PER_LB * MM_PER_IN;
  }

  public static double nmm(double inchPounds) {
    return inchPounds * N_PER_LB * MM_PER_IN;
  }

  public static double inchPounds(double nmm) {
    return nmm / (N_PER_LB * MM_PER_IN);
  }

  public static double rad(double degrees) {
    return Math.toRadians(degrees);
  }

  public static double degrees(double rad) {
    return Math.toDegrees(rad);
  }
}
