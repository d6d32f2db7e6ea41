package trammel.engine.uncertainty;

import java.util.List;

/**
 * How sure the checks of a layout are.
 *
 * @param samples how many vehicles were tried
 * @param seed the seed that gives the same samples again
 * @param impossible how many of them no layout could be made on; they count as stop in every check
 * @param checks each check that has a value, the likeliest to stop first
 */
public record UncertaintyResult(int samples, long seed, int impossible, List<CheckChance> checks) {
  public UncertaintyResult {
    checks = List.copyOf(checks);
  }
}
