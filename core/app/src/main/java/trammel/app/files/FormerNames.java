package trammel.app.files;

import java.util.Map;
import trammel.reading.tree.ObjectNode;
import trammel.reading.tree.TextNode;

/** Reads files that name their format as it was named before. */
public final class FormerNames {
  private static final String FORMAT = "format";

  private FormerNames() {}

  /**
   * The document with today's name of its format.
   *
   * @param names former names, each with the one of today
   */
  public static ObjectNode replaced(ObjectNode document, Map<String, String> names) {
    return document
        .find(FORMAT)
        .filter(TextNode.class::isInstance)
        .map(TextNode.class::cast)
        .filter(format -> names.containsKey(format.text()))
        .map(
            format ->
                document.with(FORMAT, new TextNode(format.location(), names.get(format.text()))))
        .orElse(document);
  }
}
