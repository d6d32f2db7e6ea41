package trammel.planning.catalog;

import java.util.Optional;

/**
 * What a shop promises its customers beside the price.
 *
 * @param startDays working days from the deposit until the work can begin, 0 or more
 * @param warranty what it answers for and how long, in its own words
 * @param changeRule how changes to the work are ordered, in its own words
 */
public record Promises(
    Optional<Integer> startDays, Optional<String> warranty, Optional<String> changeRule) {
  /** A shop that says nothing of them. */
  public static final Promises NONE =
      new Promises(Optional.empty(), Optional.empty(), Optional.empty());
}
