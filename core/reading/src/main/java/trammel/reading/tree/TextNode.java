package trammel.reading.tree;

/**
 * A text.
 *
 * @param location where it stands
 * @param text the text
 */
public record TextNode(Location location, String text) implements DocumentNode {
  @Override
  public String given() {
    return "'" + text + "'";
  }
}
