package trammel.engine.quantity;

/** Words quantities, number and unit, in the units of whoever reads them. Values must be finite. */
public interface ReaderUnits {
  /** A length. */
  String length(double lengthMm);

  /** A length as a decimal, for what a fraction would hide: so many places of an inch. */
  String decimalLength(double lengthMm, int inchPlaces);

  /** A length of line or cable, which is bought by the foot where feet are used. */
  String longLength(double lengthMm);

  /** An angle in degrees with so many decimals. */
  String angle(double angleRad, int places);

  /** A weight or mass. */
  String mass(double massKg);

  /** A force. */
  String force(double forceN);

  /** A spring or wheel rate. */
  String rate(double rateNPerMm);

  /** A torque. */
  String torque(double torqueNmm);

  /** A pressure. */
  String pressure(double pressureMPa);

  /** A ratio as a percentage. */
  String percent(double ratio);
}
