package trammel.engine.checks;

import java.util.List;

/**
 * A change that the engine has tried on the layout.
 *
 * @param adjustment what to change
 * @param amount by how much, in the adjustment's measure and a whole number of its steps
 * @param upsets titles of checks that this change would make worse; empty when there are none
 * @param bringsStop whether one of those would then say stop
 */
public record Change(
    Adjustment adjustment, double amount, List<String> upsets, boolean bringsStop) {

  public Change {
    upsets = List.copyOf(upsets);
    if (bringsStop && upsets.isEmpty()) {
      throw new IllegalArgumentException(
          "A change that brings a stop upsets the check that says so; none is named.");
    }
  }
}
