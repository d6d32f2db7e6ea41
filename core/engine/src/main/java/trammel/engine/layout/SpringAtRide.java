package trammel.engine.layout;

import java.util.Objects;
import java.util.Optional;
import trammel.engine.quantity.Given;
import trammel.engine.springs.AirCharge;
import trammel.engine.springs.AirSpringSize;
import trammel.engine.springs.RatedAirSpring;
import trammel.engine.springs.TrappedAir;

/**
 * A spring that carries its load at ride: what it pushes with at any length. A spring pushes or
 * hangs slack, it never pulls. A coil follows its rate; the air in an air spring is shut in.
 * Outside the table of an air spring its ends are taken, and {@link #isInTable} says so.
 *
 * @param unit the spring
 * @param loadN what it carries at ride (N), 0 or more
 */
public record SpringAtRide(SpringUnit unit, double loadN) {
  public SpringAtRide {
    Objects.requireNonNull(unit, "unit");
    Given.notNegative("load on " + unit.name() + " (N)", loadN);
  }

  /**
   * The air in it; empty for a coil, an air spring without a table, and one that stands outside its
   * table at ride.
   */
  public Optional<AirCharge> charge() {
    if (unit.air().isEmpty() || !isInTable(unit.lengthMm())) {
      return Optional.empty();
    }
    RatedAirSpring air = unit.air().get();
    double heightMm = unit.lengthMm();
    return Optional.of(
        new AirCharge(air.size(), heightMm, air.size().gaugeForLoadMPa(heightMm, loadN)));
  }

  /** Whether the table of its air spring reaches a length (mm); true for a coil. */
  public boolean isInTable(double lengthMm) {
    return unit.air().isEmpty()
        || lengthMm >= unit.air().get().size().leastHeightMm()
            && lengthMm <= unit.air().get().size().mostHeightMm();
  }

  /**
   * What it pushes with in motion.
   *
   * @param lengthMm distance between its seats (mm), above 0
   * @return force (N), 0 or more
   */
  public double forceN(double lengthMm) {
    Optional<AirCharge> charge = charge();
    double force =
        charge.isPresent()
            ? charge.get().loadN(inTable(charge.get().size(), lengthMm), TrappedAir.FAST)
            : loadN + unit.rateNPerMm() * (unit.lengthMm() - lengthMm);
    return Math.max(0, force);
  }

  /**
   * Its rate in motion at a length.
   *
   * @param lengthMm distance between its seats (mm), above 0
   * @return rate (N/mm); 0 where it is slack
   */
  public double rateNPerMm(double lengthMm) {
    if (forceN(lengthMm) <= 0 && lengthMm > unit.lengthMm()) {
      return 0;
    }
    Optional<AirCharge> charge = charge();
    return charge.isPresent()
        ? charge.get().rateNPerMm(inTable(charge.get().size(), lengthMm))
        : unit.rateNPerMm();
  }

  /** The height of a table nearest to a length (mm). */
  public static double inTable(AirSpringSize size, double lengthMm) {
    return Math.max(size.leastHeightMm(), Math.min(size.mostHeightMm(), lengthMm));
  }
}
