package trammel.app.motionfile;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.FlagNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/** Turns the tree of a document into maps and lists, its numbers digit by digit as written. */
final class PlainTree {
  private PlainTree() {}

  /** The value of a node; null for a key without a value. */
  static Object of(DocumentNode node) {
    if (node instanceof ObjectNode group) {
      Map<String, Object> map = new LinkedHashMap<>();
      for (ObjectNode.Member member : group.members()) {
        map.put(member.key(), of(member.value()));
      }
      return map;
    }
    if (node instanceof ListNode list) {
      List<Object> values = new ArrayList<>(list.entries().size());
      for (DocumentNode entry : list.entries()) {
        values.add(of(entry));
      }
      return values;
    }
    if (node instanceof NumberNode number) {
      return number(number.text());
    }
    if (node instanceof FlagNode flag) {
      return flag.value();
    }
    return node instanceof TextNode text ? text.text() : null;
  }

  /** YAML knows numbers that JSON does not, such as 0x1F; they are passed on as texts. */
  private static Object number(String text) {
    try {
      return new BigDecimal(text);
    } catch (NumberFormatException notDecimal) {
      return text;
    }
  }
}
