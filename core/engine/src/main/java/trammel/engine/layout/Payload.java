package trammel.engine.layout;

import trammel.engine.quantity.Given;

/**
 * What a vehicle carries beyond what it was weighed with, as its axles feel it.
 *
 * @param frontKg on the front axle (kg), negative for a load behind the rear axle
 * @param rearKg on the rear axle (kg)
 */
public record Payload(double frontKg, double rearKg) {
  /** Nothing. */
  public static final Payload NONE = new Payload(0, 0);

  public Payload {
    Given.finite("load on the front axle (kg)", frontKg);
    Given.finite("load on the rear axle (kg)", rearKg);
  }

  /**
   * A load at a station, by the lever rule.
   *
   * @param massKg the load (kg)
   * @param aheadMm how far it lies ahead of the rear axle (mm), negative behind it
   * @param wheelbaseMm wheelbase (mm), above 0
   */
  public static Payload at(double massKg, double aheadMm, double wheelbaseMm) {
    double frontKg = massKg * aheadMm / wheelbaseMm;
    return new Payload(frontKg, massKg - frontKg);
  }

  /** This load and another. */
  public Payload plus(Payload other) {
    return new Payload(frontKg + other.frontKg, rearKg + other.rearKg);
  }

  /** Whether nothing is carried. */
  public boolean isNone() {
    return frontKg == 0 && rearKg == 0;
  }
}
