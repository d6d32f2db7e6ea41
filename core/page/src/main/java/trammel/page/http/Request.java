package trammel.page.http;

import java.util.Map;
import java.util.Optional;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.ObjectNode;

/**
 * One request that has passed the gate.
 *
 * @param parts the variable parts of its path, by their names
 * @param query what stands behind the question mark, by name
 * @param body the text that came along; empty if none did
 * @param device which device sent it: whose changes are taken back together
 * @param who the name that was given on that device; empty if none was
 */
public record Request(
    Map<String, String> parts, Map<String, String> query, String body, String device, String who) {
  public Request {
    parts = Map.copyOf(parts);
    query = Map.copyOf(query);
  }

  /** A variable part of the path. */
  public String part(String name) {
    return parts.get(name);
  }

  /** What the query has under a name. */
  public Optional<String> asked(String name) {
    return Optional.ofNullable(query.get(name));
  }

  /**
   * The body as a JSON object.
   *
   * @throws trammel.reading.tree.BadInputException if it is none
   */
  public ObjectNode json() {
    return DocumentReader.read("request.json", body);
  }
}
