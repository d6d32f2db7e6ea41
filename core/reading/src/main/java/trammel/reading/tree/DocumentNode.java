package trammel.reading.tree;

/** One value of a file, with where it stands. */
public sealed interface DocumentNode
    permits ObjectNode, ListNode, TextNode, NumberNode, FlagNode, EmptyNode {
  /** Where the value stands. */
  Location location();

  /** The value in the user's words, for a message. */
  String given();
}
