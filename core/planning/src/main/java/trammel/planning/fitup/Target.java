package trammel.planning.fitup;

import trammel.reading.quantity.QuantityKind;
import trammel.trade.given.Given;

/**
 * One thing to set and to measure again after tacking.
 *
 * @param id short name under which its reading is entered, such as {@code lower-left.frame.forward}
 * @param group the bracket or the axle that it belongs to, in words
 * @param what what is measured, from which datum, in words
 * @param kind a length or an angle
 * @param plan the value to set (mm or rad)
 * @param tolerance how far off it may be (mm or rad), above 0
 * @param instrument how well it is read (mm or rad), either way, above 0
 */
public record Target(
    String id,
    String group,
    String what,
    QuantityKind kind,
    double plan,
    double tolerance,
    double instrument) {
  public Target {
    Given.text(id, "Name of a target", "Give it a short name.");
    Given.text(group, "Group of target '" + id + "'", "Name its bracket.");
    Given.text(what, "What target '" + id + "' is", "Say what is measured from where.");
    Given.between(plan, -1e5, 1e5, "Value of target '" + id + "'", "Check the layout.");
    Given.positive(tolerance, 1e3, "Tolerance of target '" + id + "'", "Give one.");
    Given.positive(instrument, 1e3, "Instrument of target '" + id + "'", "Give one.");
  }
}
