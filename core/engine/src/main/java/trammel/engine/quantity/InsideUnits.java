package trammel.engine.quantity;

/** Words quantities as the engine has them, angles in degrees: for whoever looks into a program. */
enum InsideUnits implements ReaderUnits {
  INSIDE;

  @Override
  public String length(double lengthMm) {
    return Given.text(lengthMm) + " mm";
  }

  @Override
  public String decimalLength(double lengthMm, int inchPlaces) {
    return length(lengthMm);
  }

  @Override
  public String longLength(double lengthMm) {
    return length(lengthMm);
  }

  @Override
  public String angle(double angleRad, int places) {
    return Given.text(Math.toDegrees(angleRad)) + " deg";
  }

  @Override
  public String mass(double massKg) {
    return Given.text(massKg) + " kg";
  }

  @Override
  public String force(double forceN) {
    return Given.text(forceN) + " N";
  }

  @Override
  public String rate(double rateNPerMm) {
    return Given.text(rateNPerMm) + " N/mm";
  }

  @Override
  public String torque(double torqueNmm) {
    return Given.text(torqueNmm) + " Nmm";
  }

  @Override
  public String pressure(double pressureMPa) {
    return Given.text(pressureMPa) + " MPa";
  }

  @Override
  public String percent(double ratio) {
    return Given.text(100 * ratio) + " %";
  }
}
