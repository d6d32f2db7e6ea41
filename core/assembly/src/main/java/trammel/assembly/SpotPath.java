package trammel.assembly;

import java.util.List;
import trammel.engine.geometry.Point3;

/**
 * A weld in one spot: a plug or a slot.
 *
 * @param middle its middle (mm)
 */
public record SpotPath(Point3 middle) implements SeamPath {
  @Override
  public double lengthMm() {
    return 0;
  }

  @Override
  public List<Point3> points(double chordMm) {
    return List.of(middle);
  }
}
