package trammel.planning.job;

import java.nio.file.Path;
import java.util.Optional;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.Location;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TreeEdit;

/**
 * A job file as a tree, before its fields are read: single values can still be changed.
 *
 * @param file name of the file
 * @param root its keys
 */
public record JobDocument(String file, ObjectNode root) {
  private static final String HEADER = "job";

  /** What stands in messages for the name of the file of a value that was varied. */
  public static final String VARY = "--vary";

  /**
   * Loads a file.
   *
   * @throws trammel.reading.tree.BadInputException if it is not one well-formed document
   */
  public static JobDocument load(Path file) {
    return new JobDocument(file.toString(), DocumentReader.read(file));
  }

  /**
   * Reads a text that has the name of a file.
   *
   * @throws trammel.reading.tree.BadInputException if it is not one well-formed document
   */
  public static JobDocument of(String fileName, String text) {
    return new JobDocument(fileName, DocumentReader.read(fileName, text));
  }

  /**
   * All that is written of the work, as one text: two jobs that differ only in what they are called
   * (number, date, customer, vehicle, note) and in where things stand in their files have the same.
   */
  public String work() {
    StringBuilder text = new StringBuilder();
    for (ObjectNode.Member member : root.members()) {
      if (member.key().equals(HEADER)) {
        continue;
      }
      append(text.append(member.key()).append(':'), member.value());
    }
    return text.toString();
  }

  private static void append(StringBuilder text, DocumentNode node) {
    if (node instanceof ObjectNode object) {
      text.append('{');
      for (ObjectNode.Member member : object.members()) {
        append(text.append(member.key()).append(':'), member.value());
      }
      text.append('}');
    } else if (node instanceof ListNode list) {
      text.append('[');
      for (DocumentNode entry : list.entries()) {
        append(text, entry);
      }
      text.append(']');
    } else {
      // The length keeps two values apart from one that has the sign between them in it.
      String given = node.given();
      text.append(given.length()).append(' ').append(given).append(',');
    }
  }

  /**
   * A copy in which one field has another value. Problems with the value name {@code --vary}.
   *
   * @param path path of the field, such as {@code measured.rails.outside_at_axle} or {@code
   *     measured.obstacles[0].name}
   * @param text the value as it could stand in a file, such as {@code 36 in}
   * @throws trammel.reading.tree.BadInputException if no field can stand at the path, or the value
   *     cannot be read
   */
  public JobDocument withValue(String path, String text) {
    Location where = new Location(VARY, 0, 0, path);
    DocumentNode value = DocumentReader.readValue(where, text);
    return new JobDocument(file, new TreeEdit(where).with(value, root));
  }

  /**
   * What stands at a path; empty where nothing does.
   *
   * @param path keys joined by dots, such as {@code chosen.linkage}
   */
  public Optional<DocumentNode> node(String path) {
    DocumentNode node = root;
    for (String key : path.split("\\.")) {
      Optional<DocumentNode> inner =
          node instanceof ObjectNode group ? group.find(key) : Optional.empty();
      if (inner.isEmpty()) {
        return inner;
      }
      node = inner.get();
    }
    return Optional.of(node);
  }

  /**
   * Where a field stands; where the nearest section around it stands when it is not written.
   *
   * @param path keys joined by dots, such as {@code chosen.linkage}
   */
  public Location locationOf(String path) {
    ObjectNode object = root;
    Location nearest = root.location();
    for (String key : path.split("\\.")) {
      Optional<ObjectNode.Member> member = object.member(key);
      if (member.isEmpty()) {
        break;
      }
      nearest = member.get().keyLocation();
      if (!(member.get().value() instanceof ObjectNode inner)) {
        break;
      }
      object = inner;
    }
    return new Location(file, nearest.line(), nearest.column(), path);
  }
}
