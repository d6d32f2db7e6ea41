package trammel.app.drawings;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringUnit;

/** The points of a layout that the floor sets: both ends of every bar, spring and shock. */
final class PickUps {
  private PickUps() {}

  static List<Point3> of(Layout layout) {
    List<Point3> points = new ArrayList<>();
    for (Bar bar : layout.bars()) {
      points.add(bar.frame());
      points.add(bar.axle());
    }
    for (SpringUnit spring : layout.springs()) {
      points.add(spring.frame());
      points.add(spring.axle());
    }
    for (ShockUnit shock : layout.shocks()) {
      points.add(shock.frame());
      points.add(shock.axle());
    }
    return points;
  }
}
