package trammel.brackets.work;

import trammel.engine.quantity.Given;

/**
 * A mount on the side of one rail, which what it carries twists. Feet of bars say so themselves;
 * this is for springs and for what else is carried beside a rail.
 *
 * @param name what is welded to the rail
 * @param unit name of the spring, or of what else pushes it
 * @param left true on the left rail
 */
public record RailMount(String name, String unit, boolean left) {
  public RailMount {
    Given.text("name of a mount on a rail", name, "Say what the lists call it.");
    Given.text("what pushes '" + name + "'", unit, "Name the spring, shock or bar.");
  }
}
