package trammel.app.travel;

import java.util.Optional;
import trammel.engine.layout.SpringAtRide;
import trammel.engine.springs.AirCharge;
import trammel.engine.springs.TrappedAir;

/**
 * A spring at one pose of the axle.
 *
 * @param name its name
 * @param lengthMm distance between its seats (mm)
 * @param inTable whether the load-height table of an air spring reaches that length; its nearer end
 *     is taken where it does not
 * @param loadN what it pushes with in motion (N)
 * @param rateNPerMm its rate there in motion (N/mm)
 * @param air pressures and load of the air shut in; empty for a coil
 */
public record SpringState(
    String name,
    double lengthMm,
    boolean inTable,
    double loadN,
    double rateNPerMm,
    Optional<Air> air) {

  /**
   * The air of an air spring, filled at ride and shut in.
   *
   * @param gaugeMPa pressure in motion (MPa above the atmosphere)
   * @param restGaugeMPa pressure once the temperature is even again (MPa above the atmosphere)
   * @param restLoadN what it pushes with then (N)
   */
  public record Air(double gaugeMPa, double restGaugeMPa, double restLoadN) {}

  static SpringState of(SpringAtRide spring, double lengthMm) {
    Optional<Air> air = spring.charge().map(charge -> air(charge, lengthMm));
    return new SpringState(
        spring.unit().name(),
        lengthMm,
        spring.isInTable(lengthMm),
        spring.forceN(lengthMm),
        spring.rateNPerMm(lengthMm),
        air);
  }

  private static Air air(AirCharge charge, double lengthMm) {
    double heightMm = SpringAtRide.inTable(charge.size(), lengthMm);
    return new Air(
        charge.gaugeMPa(heightMm, TrappedAir.FAST),
        charge.gaugeMPa(heightMm, TrappedAir.SLOW),
        charge.loadN(heightMm, TrappedAir.SLOW));
  }
}
