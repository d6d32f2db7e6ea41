package trammel.reading.tree;

import java.util.List;

/**
 * A list.
 *
 * @param location where it starts
 * @param entries its entries in order
 */
public record ListNode(Location location, List<DocumentNode> entries) implements DocumentNode {
  /** Keeps its own copy of the entries. */
  public ListNode {
    entries = List.copyOf(entries);
  }

  @Override
  public String given() {
    return "a list of " + entries.size();
  }
}
