package trammel.app.drawings;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.assembly.view.Body;
import trammel.assembly.view.HiddenLines;
import trammel.assembly.view.SeenLine;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;

/**
 * The finished vehicle as the views show it: wheels, tyres and what stands in the way are drawn as
 * if one saw through them, tools of the fit-up not at all.
 */
public final class VehicleScene {
  private final Assembly assembly;
  private final Map<Viewpoint, List<SeenLine>> lines = new EnumMap<>(Viewpoint.class);
  private final Map<String, PlacedPart> parts = new HashMap<>();
  private final Map<String, Point3> centres = new HashMap<>();
  private final Set<String> seenThrough = new HashSet<>();

  /** Made when it is first looked at. */
  private List<Body> bodies = List.of();

  /**
   * @param assembly the finished vehicle at ride
   */
  public VehicleScene(Assembly assembly) {
    this.assembly = assembly;
    for (PlacedPart part : assembly.parts()) {
      parts.put(part.id(), part);
      if (part.kind() == PartKind.VEHICLE && !isFrameOrAxle(part.id())) {
        seenThrough.add(part.id());
      }
    }
  }

  private static boolean isFrameOrAxle(String id) {
    return Set.of(
            VehicleParts.rail(true),
            VehicleParts.rail(false),
            VehicleParts.AXLE_TUBE,
            VehicleParts.HOUSING,
            VehicleParts.SHAFT)
        .contains(id);
  }

  /** The finished vehicle. */
  public Assembly assembly() {
    return assembly;
  }

  /** The part of an edge. */
  PlacedPart part(String id) {
    return parts.get(id);
  }

  /** The middle of a part, worked out once. */
  synchronized Point3 centre(PlacedPart part) {
    return centres.computeIfAbsent(part.id(), id -> part.centre());
  }

  /** True for what stands in the picture only to show where it is. */
  boolean isSeenThrough(String id) {
    return seenThrough.contains(id);
  }

  /** The edges of everything from one side, worked out once. */
  synchronized List<SeenLine> lines(Viewpoint viewpoint) {
    return lines.computeIfAbsent(viewpoint, from -> HiddenLines.of(bodies(), from.eye()));
  }

  /** What is looked at, whichever side it is looked at from. */
  private List<Body> bodies() {
    if (bodies.isEmpty()) {
      bodies =
          assembly.parts().stream()
              .filter(part -> part.kind() != PartKind.TOOL)
              .map(
                  part ->
                      new Body(
                          part.id(),
                          part.solid().mesh().placed(part.place()),
                          !isSeenThrough(part.id())))
              .toList();
    }
    return bodies;
  }
}
