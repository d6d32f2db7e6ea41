package trammel.planning.assembly;

import java.util.Objects;
import trammel.trade.given.Given;

/**
 * One weld: what it joins and where it runs.
 *
 * @param part id of the part that is welded on
 * @param onto id of what it is welded to
 * @param path where it runs
 */
public record SeamRun(String part, String onto, SeamPath path) {
  public SeamRun {
    Given.text(part, "Part that a weld holds", "Give its id.");
    Given.text(onto, "Part that '" + part + "' is welded to", "Give its id.");
    Objects.requireNonNull(path, "path");
  }
}
