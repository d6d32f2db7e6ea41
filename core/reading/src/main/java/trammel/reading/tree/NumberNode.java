package trammel.reading.tree;

/**
 * A number without quotes.
 *
 * @param location where it stands
 * @param text the number exactly as it is written
 */
public record NumberNode(Location location, String text) implements DocumentNode {
  @Override
  public String given() {
    return text;
  }
}
