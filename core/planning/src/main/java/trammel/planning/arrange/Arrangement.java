package trammel.planning.arrange;

import java.util.List;
import java.util.Optional;

/**
 * What a search found.
 *
 * @param layouts the layouts, the best first, each of another kind; where none passes, the nearest
 * @param conflict why none passes every check; empty where one does
 * @param tried layouts tried
 * @param cutShort whether the search ended before its effort was spent: the time was up, or it was
 *     stopped
 * @param remarks what the user should know, such as a plugin that failed
 */
public record Arrangement(
    List<ArrangedLayout> layouts,
    Optional<Conflict> conflict,
    int tried,
    boolean cutShort,
    List<String> remarks) {
  public Arrangement {
    layouts = List.copyOf(layouts);
    remarks = List.copyOf(remarks);
  }

  /** Whether at least one layout passes every check. */
  public boolean passes() {
    return layouts.stream().anyMatch(ArrangedLayout::passes);
  }
}
