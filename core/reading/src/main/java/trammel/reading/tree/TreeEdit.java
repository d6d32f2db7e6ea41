package trammel.reading.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts a value at a path of a tree, or takes it away, making groups on the way if need be. */
public final class TreeEdit {
  private static final int MOST_STEPS = 20;

  private final Location where;
  private final List<String> steps;

  /**
   * @param where its path, keys joined by dots and positions in brackets, such as {@code
   *     measured.obstacles[0].name}, keys with dots or brackets of their own in double quotes, and
   *     who asks for it, for messages
   * @throws BadInputException if it is no such path
   */
  public TreeEdit(Location where) {
    this.where = where;
    this.steps = steps(where);
  }

  /**
   * The tree with a value at the path; the position after the last one adds an entry to a list.
   *
   * @throws BadInputException if no field can stand there
   */
  public ObjectNode with(DocumentNode value, ObjectNode root) {
    return (ObjectNode) edited(root, 0, value);
  }

  /** What stands at the path; empty if nothing does. */
  public Optional<DocumentNode> find(ObjectNode root) {
    DocumentNode at = root;
    for (String step : steps) {
      Optional<DocumentNode> next = next(at, step);
      if (next.isEmpty()) {
        return next;
      }
      at = next.get();
    }
    return at instanceof EmptyNode ? Optional.empty() : Optional.of(at);
  }

  private static Optional<DocumentNode> next(DocumentNode node, String step) {
    if (!step.startsWith("[")) {
      return node instanceof ObjectNode object ? object.find(step) : Optional.empty();
    }
    int at = position(step);
    return node instanceof ListNode list && at < list.entries().size()
        ? Optional.of(list.entries().get(at))
        : Optional.empty();
  }

  /** The tree without what stands at the path, and without groups that hold nothing then. */
  public ObjectNode without(ObjectNode root) {
    return (ObjectNode) reduced(root, 0).orElse(ObjectNode.empty(root.location()));
  }

  private DocumentNode edited(DocumentNode node, int step, DocumentNode value) {
    if (step == steps.size()) {
      return value;
    }
    String name = steps.get(step);
    return name.startsWith("[")
        ? inList(node, name, step, value)
        : inObject(node, name, step, value);
  }

  private DocumentNode inObject(DocumentNode node, String key, int step, DocumentNode value) {
    if (!(node instanceof ObjectNode object)) {
      throw refused(where, "It holds " + node.given() + ", so there is no " + key + " in it.");
    }
    Optional<DocumentNode> inner = object.find(key);
    boolean absent = inner.isEmpty() || inner.get() instanceof EmptyNode;
    Location here = new Location(where.file(), 0, 0, pathTo(step));
    return object.with(
        key, edited(absent ? emptyFor(here, step + 1) : inner.get(), step + 1, value));
  }

  private DocumentNode emptyFor(Location here, int step) {
    boolean list = step < steps.size() && steps.get(step).startsWith("[");
    return list ? new ListNode(here, List.of()) : ObjectNode.empty(here);
  }

  private DocumentNode inList(DocumentNode node, String index, int step, DocumentNode value) {
    int at = position(index);
    if (!(node instanceof ListNode list) || at > list.entries().size()) {
      throw refused(
          where, "It holds " + node.given() + ", so there is no entry " + at + "; count from 0.");
    }
    List<DocumentNode> entries = new ArrayList<>(list.entries());
    if (at == entries.size()) {
      Location here = new Location(where.file(), 0, 0, pathTo(step));
      entries.add(edited(emptyFor(here, step + 1), step + 1, value));
    } else {
      entries.set(at, edited(entries.get(at), step + 1, value));
    }
    return new ListNode(list.location(), entries);
  }

  /** Empty if nothing is left. */
  private Optional<DocumentNode> reduced(DocumentNode node, int step) {
    if (step == steps.size()) {
      return Optional.empty();
    }
    String name = steps.get(step);
    if (name.startsWith("[") && node instanceof ListNode list) {
      return reducedList(list, position(name), step);
    }
    if (!name.startsWith("[")
        && node instanceof ObjectNode object
        && object.find(name).isPresent()) {
      return reducedObject(object, name, step);
    }
    return Optional.of(node);
  }

  private Optional<DocumentNode> reducedList(ListNode list, int at, int step) {
    if (at >= list.entries().size()) {
      return Optional.of(list);
    }
    List<DocumentNode> entries = new ArrayList<>(list.entries());
    Optional<DocumentNode> left = reduced(entries.get(at), step + 1);
    if (left.isPresent()) {
      entries.set(at, left.get());
    } else {
      entries.remove(at);
    }
    return entries.isEmpty() && step > 1
        ? Optional.empty()
        : Optional.of(new ListNode(list.location(), entries));
  }

  private Optional<DocumentNode> reducedObject(ObjectNode object, String key, int step) {
    Optional<DocumentNode> left = reduced(object.find(key).orElseThrow(), step + 1);
    if (left.isPresent()) {
      return Optional.of(object.with(key, left.get()));
    }
    List<ObjectNode.Member> members = new ArrayList<>(object.members());
    members.removeIf(member -> member.key().equals(key));
    return members.isEmpty() && step > 1
        ? Optional.empty()
        : Optional.of(new ObjectNode(object.location(), members));
  }

  private String pathTo(int lastStep) {
    String to = "";
    for (int i = 0; i <= lastStep; i++) {
      String step = steps.get(i);
      to = step.startsWith("[") ? to + step : Location.child(to, step);
    }
    return to;
  }

  /**
   * The keys and positions of a path; a position keeps its brackets.
   *
   * @throws BadInputException if it is no such path
   */
  public static List<String> steps(Location where) {
    List<String> found = new ArrayList<>();
    String rest = where.path();
    while (rest != null) {
      boolean quoted = rest.startsWith("\"");
      int end = quoted ? rest.indexOf('"', 1) + 1 : end(rest);
      String step = quoted && end > 0 ? rest.substring(1, end - 1) : rest.substring(0, end);
      if (step.isBlank() || step.startsWith("[") && (quoted || !isPosition(step))) {
        throw refusedPath(where);
      }
      found.add(step);
      rest = behind(rest, end, where);
    }
    if (found.size() > MOST_STEPS) {
      throw refusedPath(where);
    }
    return List.copyOf(found);
  }

  /** Where the first step of a path ends: at a dot, or at the bracket of the next step. */
  private static int end(String path) {
    for (int i = 0; i < path.length(); i++) {
      if (path.charAt(i) == '.' || i > 0 && path.charAt(i) == '[') {
        return i;
      }
    }
    return path.length();
  }

  /** What follows a step; null at the end. */
  private static String behind(String path, int end, Location where) {
    if (end == path.length()) {
      return null;
    }
    return switch (path.charAt(end)) {
      case '.' -> path.substring(end + 1);
      case '[' -> path.substring(end);
      default -> throw refusedPath(where);
    };
  }

  /** A key as a step of a path: in double quotes where it has dots or brackets of its own. */
  public static String step(String key) {
    return key.indexOf('.') >= 0 || key.indexOf('[') >= 0 ? '"' + key + '"' : key;
  }

  /** The number of a position in brackets. */
  static int position(String step) {
    return Integer.parseInt(step.substring(1, step.length() - 1));
  }

  private static boolean isPosition(String step) {
    boolean digits = step.length() > 2 && step.length() < 6 && step.endsWith("]");
    for (int i = 1; i < step.length() - 1; i++) {
      digits = digits && step.charAt(i) >= '0' && step.charAt(i) <= '9';
    }
    return digits;
  }

  private static BadInputException refusedPath(Location where) {
    return refused(where, "Write keys joined by dots, such as measured.rails.outside_at_axle.");
  }

  private static BadInputException refused(Location where, String remedy) {
    return DocumentReader.refused(
        where, "the field '" + where.path() + "'", "a field that a job file can hold", remedy);
  }
}
