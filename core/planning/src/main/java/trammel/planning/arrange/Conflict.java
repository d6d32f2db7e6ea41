package trammel.planning.arrange;

import java.util.List;
import trammel.engine.quantity.Phrase;

/**
 * Why no layout passes every check: what remains on the best one, and what would have to be
 * otherwise, each tried.
 *
 * @param remaining the checks that remain on the layout that comes nearest, in words
 * @param ways smallest sets of wishes and measurements that, changed as said, let a layout pass;
 *     each set was tried together, and no part of it is enough
 */
public record Conflict(List<Phrase> remaining, List<Way> ways) {
  public Conflict {
    remaining = List.copyOf(remaining);
    ways = List.copyOf(ways);
  }

  /**
   * A set of wishes and measurements that stand in the way together.
   *
   * @param relaxed each with the value it has and the one that lets a layout pass
   * @param passes whether every check is good then; false where only every STOP is gone
   */
  public record Way(List<LayoutChange> relaxed, boolean passes) {
    public Way {
      relaxed = List.copyOf(relaxed);
    }
  }
}
