package trammel.page.folder;

import java.util.Optional;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.SameValue;
import trammel.reading.tree.TreeEdit;

/**
 * A change of one field.
 *
 * @param path the field
 * @param from what its user saw there; empty for nothing
 * @param to what is to stand there; empty to take it out
 */
public record Edit(String path, Optional<DocumentNode> from, Optional<DocumentNode> to) {

  /** An edit as a request has it: {@code path}, {@code from} and {@code to}. */
  static Edit of(ObjectNode json) {
    Optional<DocumentNode> path = json.find("path");
    if (path.isEmpty() || !(path.get() instanceof trammel.reading.tree.TextNode text)) {
      throw new Refused(400, "An edit needs a path, such as measured.rails.depth.");
    }
    return new Edit(text.text(), given(json, "from"), given(json, "to"));
  }

  private static Optional<DocumentNode> given(ObjectNode json, String key) {
    return json.find(key).filter(node -> !(node instanceof EmptyNode));
  }

  /** The change that takes this one back. */
  public Edit reversed() {
    return new Edit(path, to, from);
  }

  /** Whether the field still is what its user saw. */
  public boolean isCurrent(ObjectNode root) {
    return same(now(root), from);
  }

  /** What stands at the field. */
  public Optional<DocumentNode> now(ObjectNode root) {
    return edit().find(root);
  }

  /** Whether two values, or nothing and nothing, are the same. */
  public static boolean same(Optional<DocumentNode> one, Optional<DocumentNode> other) {
    return one.isPresent() == other.isPresent()
        && (one.isEmpty() || SameValue.of(one.get(), other.get()));
  }

  /**
   * The tree with this change in it.
   *
   * @throws BadInputException if no field can stand at the path
   */
  public ObjectNode in(ObjectNode root) {
    return to.isPresent() ? edit().with(to.get(), root) : edit().without(root);
  }

  private TreeEdit edit() {
    return new TreeEdit(new Location("change", 0, 0, path));
  }
}
