package trammel.reading.tree;

/**
 * True or false.
 *
 * @param location where it stands
 * @param value the value
 */
public record FlagNode(Location location, boolean value) implements DocumentNode {
  @Override
  public String given() {
    return Boolean.toString(value);
  }
}
