package trammel.engine.checks;

/**
 * A change that the engine has tried on the layout.
 *
 * @param adjustment what to change
 * @param amount by how much, in the adjustment's measure and a whole number of its steps
 * @param upsets titles of checks that this change would make worse, separated by commas; empty when
 *     there are none
 */
public record Change(Adjustment adjustment, double amount, String upsets) {}
