package trammel.assembly;

import java.util.List;
import java.util.Objects;
import trammel.engine.quantity.Given;
import trammel.trade.welding.WeldRun;

/**
 * One weld: what it joins and where it runs. A run may pass along several parts, such as the three
 * strips that stand a bracket off a rail.
 *
 * @param parts ids of what is welded on, one at least
 * @param onto ids of what it is welded to, one at least
 * @param path where it runs
 */
public record SeamRun(List<String> parts, List<String> onto, SeamPath path) implements WeldRun {
  public SeamRun {
    parts = List.copyOf(parts);
    onto = List.copyOf(onto);
    Given.count("parts that a weld holds", parts.size(), 1, 20, "Give their ids.");
    Given.count("parts that '" + parts + "' is welded to", onto.size(), 1, 20, "Give their ids.");
    Objects.requireNonNull(path, "path");
  }

  /** A weld of one part onto another. */
  public SeamRun(String part, String onto, SeamPath path) {
    this(List.of(part), List.of(onto), path);
  }

  @Override
  public double lengthMm() {
    return path.lengthMm();
  }
}
