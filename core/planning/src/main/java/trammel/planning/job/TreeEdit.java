package trammel.planning.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.EmptyNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.Problem;

/** Puts a value at a path of a tree, making the groups on the way if they are not there. */
final class TreeEdit {
  private static final int MOST_STEPS = 20;

  private final String path;
  private final DocumentNode value;
  private final List<String> steps;

  TreeEdit(String path, DocumentNode value) {
    this.path = path;
    this.value = value;
    this.steps = steps(path);
  }

  ObjectNode in(ObjectNode root) {
    return (ObjectNode) edited(root, 0);
  }

  private DocumentNode edited(DocumentNode node, int step) {
    if (step == steps.size()) {
      return value;
    }
    String name = steps.get(step);
    return name.startsWith("[") ? inList(node, name, step) : inObject(node, name, step);
  }

  private DocumentNode inObject(DocumentNode node, String key, int step) {
    if (!(node instanceof ObjectNode object)) {
      throw refused("It holds " + node.given() + ", so there is no " + key + " in it.");
    }
    Optional<DocumentNode> inner = object.find(key);
    boolean absent = inner.isEmpty() || inner.get() instanceof EmptyNode;
    Location where = new Location(value.location().file(), 0, 0, pathTo(step));
    return object.with(key, edited(absent ? ObjectNode.empty(where) : inner.get(), step + 1));
  }

  private DocumentNode inList(DocumentNode node, String index, int step) {
    int at = Integer.parseInt(index.substring(1, index.length() - 1));
    if (!(node instanceof ListNode list) || at >= list.entries().size()) {
      throw refused(
          "It holds " + node.given() + ", so there is no entry " + at + "; count from 0.");
    }
    List<DocumentNode> entries = new ArrayList<>(list.entries());
    entries.set(at, edited(entries.get(at), step + 1));
    return new ListNode(list.location(), entries);
  }

  private String pathTo(int lastStep) {
    String to = "";
    for (int i = 0; i <= lastStep; i++) {
      String step = steps.get(i);
      to = step.startsWith("[") ? to + step : Location.child(to, step);
    }
    return to;
  }

  /** The keys and positions of a path; a position keeps its brackets. */
  private List<String> steps(String words) {
    String[] found = words.replace("[", ".[").split("\\.", -1);
    for (String step : found) {
      if (step.isBlank() || step.startsWith("[") && !isPosition(step)) {
        throw refusedPath();
      }
    }
    if (found.length > MOST_STEPS) {
      throw refusedPath();
    }
    return List.of(found);
  }

  private static boolean isPosition(String step) {
    boolean digits = step.length() > 2 && step.length() < 6 && step.endsWith("]");
    for (int i = 1; i < step.length() - 1; i++) {
      digits = digits && step.charAt(i) >= '0' && step.charAt(i) <= '9';
    }
    return digits;
  }

  private BadInputException refusedPath() {
    return refused("Write keys joined by dots, such as measured.rails.outside_at_axle.");
  }

  private BadInputException refused(String remedy) {
    return new BadInputException(
        List.of(
            Problem.error(
                value.location(),
                "the field '" + path + "'",
                "a field that a job file can hold",
                remedy)));
  }
}
