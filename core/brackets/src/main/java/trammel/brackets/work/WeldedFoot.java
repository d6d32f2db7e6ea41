package trammel.brackets.work;

import java.util.List;
import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.End;
import trammel.engine.quantity.Given;
import trammel.engine.strength.WeldGroup;

/**
 * Where a bracket is welded on, with the bars whose force passes through those welds. Welds that do
 * not lie in one plane are given as they look along the normal, which leaves out how they stay each
 * other across it.
 *
 * @param name what is welded to what
 * @param bars the bars whose joints the bracket holds, one at least
 * @param end which of their ends
 * @param welds the welds in the plane of the two directions below
 * @param origin where the welds' coordinates start, at ride (mm)
 * @param along direction of the welds' X axis, a unit vector
 * @param up direction of the welds' Y axis, a unit vector square to the first
 * @param legMm leg of the fillets (mm), above 0
 */
public record WeldedFoot(
    String name,
    List<String> bars,
    End end,
    WeldGroup welds,
    Point3 origin,
    Vector3 along,
    Vector3 up,
    double legMm) {
  private static final double SQUARE = 1e-6;

  public WeldedFoot {
    Given.text("name of a welded foot", name, "Say what is welded to what.");
    bars = List.copyOf(bars);
    Given.count("bars of " + name, bars.size(), 1, 20, "Name the bars it holds.");
    Objects.requireNonNull(end, "end");
    Objects.requireNonNull(welds, "welds");
    Objects.requireNonNull(origin, "origin");
    Given.positive("leg of the welds of " + name + " in mm", legMm, 50, "", "Choose a fillet.");
    if (Math.abs(along.norm() - 1) > SQUARE
        || Math.abs(up.norm() - 1) > SQUARE
        || Math.abs(along.dot(up)) > SQUARE) {
      throw new IllegalArgumentException(
          "directions of "
              + name
              + " were given as "
              + along
              + " and "
              + up
              + "; they must be unit vectors square to each other. Normalise them.");
    }
  }
}
