package trammel.planning.extension;

import java.util.List;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;

/**
 * Springs and shocks that belong together.
 *
 * @param springs the springs, at least one
 * @param shocks the shocks
 * @param isClear false where no place was found that is clear of the brackets beside their mounts,
 *     so that another mounting of the bars may leave a better one
 */
public record SpringSet(List<SpringUnit> springs, List<ShockUnit> shocks, boolean isClear) {
  /** Clear of what is beside them. */
  public SpringSet(List<SpringUnit> springs, List<ShockUnit> shocks) {
    this(springs, shocks, true);
  }

  public SpringSet {
    springs = List.copyOf(springs);
    shocks = List.copyOf(shocks);
  }
}
