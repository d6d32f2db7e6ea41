package trammel.reading.tree;

/**
 * A key without a value.
 *
 * @param location where it stands
 */
public record EmptyNode(Location location) implements DocumentNode {
  @Override
  public String given() {
    return "nothing";
  }
}
