package trammel.app.drawings;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;

/** Some parts of the finished vehicle by themselves, looked at along axes of their own. */
final class PartScene {
  private PartScene() {}

  /**
   * A scene of some parts.
   *
   * @param view its x is the way ahead in it, y to the left and z up
   */
  static VehicleScene of(Assembly assembly, Collection<String> ids, Place view) {
    Set<String> shown = new HashSet<>(ids);
    Place into = inverse(view);
    List<PlacedPart> parts =
        assembly.parts().stream()
            .filter(part -> shown.contains(part.id()))
            .map(part -> moved(part, into.after(part.place())))
            .toList();
    return new VehicleScene(new Assembly(assembly.bodies(), parts, List.of(), List.of()));
  }

  /** What takes points of the vehicle into a place's own axes. */
  static Place inverse(Place place) {
    Vector3 x = new Vector3(place.x().x(), place.y().x(), place.z().x());
    Vector3 y = new Vector3(place.x().y(), place.y().y(), place.z().y());
    return Place.of(place.own(new Point3(0, 0, 0)), x, y);
  }

  private static PlacedPart moved(PlacedPart part, Place place) {
    return new PlacedPart(
        part.id(),
        part.name(),
        part.kind(),
        part.carrier(),
        place,
        part.solid(),
        part.massKg(),
        part.why());
  }
}
