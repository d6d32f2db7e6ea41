package trammel.page.folder;

import java.util.LinkedHashMap;
import java.util.Map;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.FlagNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.NumberNode;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/**
 * What a file says, as maps, lists, texts and flags. Numbers are texts, so that none is written
 * otherwise than it was typed.
 */
public final class Plain {
  private Plain() {}

  /** The text under a key; empty where no text stands there. */
  public static String text(ObjectNode json, String key) {
    return json.find(key).orElse(null) instanceof TextNode text ? text.text() : "";
  }

  /** Whether yes stands under a key. */
  public static boolean flag(ObjectNode json, String key) {
    return json.find(key).orElse(null) instanceof FlagNode flag && flag.value();
  }

  /** A value; null where nothing is written. */
  public static Object of(DocumentNode node) {
    if (node instanceof ObjectNode object) {
      Map<String, Object> map = new LinkedHashMap<>();
      object.members().forEach(member -> map.put(member.key(), of(member.value())));
      return map;
    }
    if (node instanceof ListNode list) {
      return list.entries().stream().map(Plain::of).toList();
    }
    if (node instanceof TextNode text) {
      return text.text();
    }
    if (node instanceof NumberNode number) {
      return number.text();
    }
    return node instanceof FlagNode flag ? flag.value() : null;
  }
}
