package trammel.brackets.work;

import java.util.Objects;
import java.util.Set;
import trammel.engine.quantity.Given;
import trammel.engine.strength.RailTie;

/**
 * A crossmember from rail to rail, welded to both, which by its bending holds them against twist.
 *
 * @param name the crossmember, as the lists have it
 * @param tie how stiff it is, and where it stands
 * @param tubeModulusMm3 upright section modulus of its tube (mm³), above 0
 * @param legModulusMm3 section modulus of a leg against leaning across the vehicle (mm³), above 0;
 *     that of the tube where it has no legs
 * @param yieldMPa what its steel yields at (MPa), above 0
 * @param carried names of the springs, shocks or bars that it carries
 */
public record CrossmemberHold(
    String name,
    RailTie tie,
    double tubeModulusMm3,
    double legModulusMm3,
    double yieldMPa,
    Set<String> carried) {
  public CrossmemberHold {
    Given.text("name of a crossmember", name, "Say what the lists call it.");
    Objects.requireNonNull(tie, "tie");
    Given.positive("section modulus of " + name + " (mm3)", tubeModulusMm3);
    Given.positive("section modulus of a leg of " + name + " (mm3)", legModulusMm3);
    Given.positive("yield of " + name + " (MPa)", yieldMPa);
    carried = Set.copyOf(carried);
  }
}
