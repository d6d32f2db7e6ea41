package trammel.page.folder;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.SameValue;

/** The edits that make one document say what another says, field by field. */
final class Differing {
  private Differing() {}

  /**
   * The edits from one to the other.
   *
   * @param apart keys at the top that are left as they are
   */
  static List<Edit> between(ObjectNode from, ObjectNode to, Set<String> apart) {
    List<Edit> edits = new ArrayList<>();
    for (String key : keys(from, to)) {
      if (!apart.contains(key)) {
        add(edits, key, value(from, key), value(to, key));
      }
    }
    return edits;
  }

  private static Set<String> keys(ObjectNode one, ObjectNode other) {
    Set<String> keys = new LinkedHashSet<>();
    one.members().forEach(member -> keys.add(member.key()));
    other.members().forEach(member -> keys.add(member.key()));
    return keys;
  }

  private static Optional<DocumentNode> value(ObjectNode in, String key) {
    return in.find(key).filter(node -> !(node instanceof EmptyNode));
  }

  private static void add(
      List<Edit> edits, String path, Optional<DocumentNode> from, Optional<DocumentNode> to) {
    if (from.isPresent()
        && to.isPresent()
        && from.get() instanceof ObjectNode one
        && to.get() instanceof ObjectNode other) {
      for (String key : keys(one, other)) {
        add(edits, Location.child(path, key), value(one, key), value(other, key));
      }
    } else if (from.isPresent() != to.isPresent()
        || from.isPresent() && !SameValue.of(from.get(), to.get())) {
      edits.add(new Edit(path, from, to));
    }
  }
}
