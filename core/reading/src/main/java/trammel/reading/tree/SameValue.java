package trammel.reading.tree;

import java.util.List;

/** Tells whether two values say the same, wherever they stand and however they are written. */
public final class SameValue {
  private SameValue() {}

  /** True if both say the same; a number says the same as a text of the same signs. */
  public static boolean of(DocumentNode one, DocumentNode other) {
    if (one instanceof ObjectNode group) {
      return other instanceof ObjectNode second && sameMembers(said(group), said(second));
    }
    if (one instanceof ListNode list) {
      return other instanceof ListNode second && sameEntries(list.entries(), second.entries());
    }
    return !(other instanceof ObjectNode || other instanceof ListNode)
        && scalar(one).equals(scalar(other));
  }

  private static List<ObjectNode.Member> said(ObjectNode group) {
    return group.members().stream().filter(member -> !saysNothing(member.value())).toList();
  }

  private static boolean saysNothing(DocumentNode node) {
    return node instanceof EmptyNode || node instanceof ObjectNode group && said(group).isEmpty();
  }

  private static boolean sameMembers(List<ObjectNode.Member> one, List<ObjectNode.Member> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (!one.get(i).key().equals(other.get(i).key())
          || !of(one.get(i).value(), other.get(i).value())) {
        return false;
      }
    }
    return true;
  }

  private static boolean sameEntries(List<DocumentNode> one, List<DocumentNode> other) {
    if (one.size() != other.size()) {
      return false;
    }
    for (int i = 0; i < one.size(); i++) {
      if (!of(one.get(i), other.get(i))) {
        return false;
      }
    }
    return true;
  }

  /** A number and a text of the same signs are read alike; a flag and the word for it are not. */
  private static String scalar(DocumentNode node) {
    if (node instanceof TextNode text) {
      return "written " + text.text();
    }
    if (node instanceof NumberNode number) {
      return "written " + number.text();
    }
    return node instanceof FlagNode flag ? "flag " + flag.value() : "nothing";
  }
}
