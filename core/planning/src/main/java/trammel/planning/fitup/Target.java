package trammel.planning.fitup;

import trammel.engine.quantity.Given;
import trammel.reading.quantity.QuantityKind;

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
    Given.text("name of a target", id, "Give it a short name.");
    Given.text("group of target '" + id + "'", group, "Name its bracket.");
    Given.text("what target '" + id + "' is", what, "Say what is measured from where.");
    Given.within("value of target '" + id + "'", plan, -1e5, 1e5, "", "Check the layout.");
    Given.positive("tolerance of target '" + id + "'", tolerance, 1e3, "", "Give one.");
    Given.positive("instrument of target '" + id + "'", instrument, 1e3, "", "Give one.");
  }
}
