package trammel.reading.tree;

/**
 * A text.
 *
 * @param location where it stands
 * @param text the text
 */
public record TextNode(Location location, String text) implements DocumentNode {
  /** True if it is one line, so that it can stand within a line that is printed. */
  public boolean isOneLine() {
    return PlainText.troubleOfLine(text).isEmpty();
  }

  @Override
  public String given() {
    return "'" + text + "'";
  }
}
