package trammel.reading.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Keys with values, in the order of the file; every key stands once.
 *
 * @param location where it starts
 * @param members the keys with their values
 */
public record ObjectNode(Location location, List<Member> members) implements DocumentNode {
  /**
   * A key and its value.
   *
   * @param key the key
   * @param keyLocation where the key stands; its path is that of the value
   * @param value the value
   */
  public record Member(String key, Location keyLocation, DocumentNode value) {}

  /** Refuses a repeated key. */
  public ObjectNode {
    members = List.copyOf(members);
    for (int i = 1; i < members.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (members.get(i).key().equals(members.get(j).key())) {
          throw new IllegalArgumentException(
              "The key (" + members.get(i).key() + ") stands twice; each key may stand once.");
        }
      }
    }
  }

  /** An object without keys, for a part that was left out. */
  public static ObjectNode empty(Location location) {
    return new ObjectNode(location, List.of());
  }

  /** The member with a key. */
  public Optional<Member> member(String key) {
    for (Member member : members) {
      if (member.key().equals(key)) {
        return Optional.of(member);
      }
    }
    return Optional.empty();
  }

  /** The value of a key. */
  public Optional<DocumentNode> find(String key) {
    Optional<Member> member = member(key);
    return member.isPresent() ? Optional.of(member.get().value()) : Optional.empty();
  }

  /** The value of a key, if it is an object itself. */
  public Optional<ObjectNode> findObject(String key) {
    Optional<DocumentNode> value = find(key);
    return value.isPresent() && value.get() instanceof ObjectNode object
        ? Optional.of(object)
        : Optional.empty();
  }

  /** A copy in which a key has this value, in its old place or added at the end. */
  public ObjectNode with(String key, DocumentNode value) {
    List<Member> changed = new ArrayList<>(members.size() + 1);
    Member fresh = new Member(key, value.location(), value);
    boolean found = false;
    for (Member member : members) {
      boolean same = member.key().equals(key);
      changed.add(same ? fresh : member);
      found = found || same;
    }
    if (!found) {
      changed.add(fresh);
    }
    return new ObjectNode(location, changed);
  }

  /** A copy without a key; the same where it has no such key. */
  public ObjectNode without(String key) {
    List<Member> left = new ArrayList<>(members);
    left.removeIf(member -> member.key().equals(key));
    return new ObjectNode(location, left);
  }

  @Override
  public String given() {
    return members.isEmpty() ? "nothing" : "a group of " + members.size() + " keys";
  }
}
