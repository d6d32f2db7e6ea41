package trammel.plugins.wattslinkage;

import java.util.List;
import java.util.Optional;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.mechanism.FurtherBody;

/**
 * The rocker as it is laid out.
 *
 * @param pivot its pivot at ride (mm)
 * @param links its two links, the upper one first; their axle ends are on the rocker
 */
record Rocker(Point3 pivot, List<Bar> links) {
  /** Name of the body. */
  static final String NAME = "rocker";

  static final String UPPER_LINK = "watt-link-upper";
  static final String LOWER_LINK = "watt-link-lower";

  Rocker {
    links = List.copyOf(links);
  }

  /** The rocker of a layout; empty where it has none. */
  static Optional<Rocker> of(Layout layout) {
    Optional<FurtherBody> body =
        layout.guide().bodies().stream().filter(one -> one.name().equals(NAME)).findFirst();
    List<Bar> links =
        layout.bars().stream().filter(bar -> bar.axleEnd().body().equals(NAME)).toList();
    return body.isEmpty() || links.size() != 2
        ? Optional.empty()
        : Optional.of(new Rocker(body.get().pivot().point(), links));
  }

  /** From the pivot to the joint of a link at ride (mm). */
  Vector3 arm(Bar link) {
    return pivot.to(link.axle());
  }

  /** The way a link pulls on the rocker at ride, a unit vector. */
  static Vector3 pull(Bar link) {
    return link.axle().to(link.frame()).normalized();
  }
}
