package trammel.planning.catalog;

import java.util.Map;
import java.util.Optional;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;

/**
 * An entry of a catalog as it is written.
 *
 * @param key its name
 * @param node what is written of it
 * @param units what its bare numbers mean
 * @param folder which of the folders read it comes from, counted from 0; the last that changes it
 * @param usual what its file says for every entry
 */
record CatalogEntry(String key, ObjectNode node, UnitSystem units, int folder, Usual usual) {
  /**
   * What a file says at its top for every entry that says nothing else.
   *
   * @param supplier who delivers
   * @param leadDays working days to delivery
   */
  record Usual(Optional<String> supplier, Optional<Integer> leadDays) {}

  Location location() {
    return node.location();
  }

  /**
   * This entry with the keys that a later folder writes put in place of its own.
   *
   * @param rivals keys, each with the one that it takes the place of
   */
  CatalogEntry changedBy(CatalogEntry later, Map<String, String> rivals) {
    return new CatalogEntry(key, changed(node, later.node, rivals), units, later.folder, usual);
  }

  private static ObjectNode changed(
      ObjectNode before, ObjectNode later, Map<String, String> rivals) {
    ObjectNode result = before;
    for (ObjectNode.Member member : later.members()) {
      String rival = rivals.get(member.key());
      if (rival != null && later.find(rival).isEmpty()) {
        result = result.without(rival);
      }
      Optional<ObjectNode> old = before.findObject(member.key());
      if (old.isPresent() && member.value() instanceof ObjectNode inner) {
        result = result.with(member.key(), changed(old.get(), inner, rivals));
      } else {
        result = result.with(member.key(), member.value());
      }
    }
    return result;
  }
}
