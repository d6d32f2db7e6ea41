package trammel.planning.extension;

import java.util.List;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;

/**
 * Springs and shocks that belong together.
 *
 * @param springs the springs, at least one
 * @param shocks the shocks
 */
public record SpringSet(List<SpringUnit> springs, List<ShockUnit> shocks) {
  public SpringSet {
    springs = List.copyOf(springs);
    shocks = List.copyOf(shocks);
  }
}
