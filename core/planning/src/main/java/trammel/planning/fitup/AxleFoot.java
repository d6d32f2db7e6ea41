package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;

/**
 * Where a plate or tube sits on the axle tube: how far from the tube's middle, and how it is turned
 * about the tube.
 *
 * @param part id of the placed part
 * @param rightMm its edge nearer to the right, left of the tube's middle (mm), minus right of it
 * @param leftMm its edge nearer to the left (mm)
 * @param hole true if the turn is that of its bolt hole, false if of its own middle
 * @param turnRad from straight up towards the front, as it is set at ride; minus towards the rear
 * @param outMm from the tube's middle to that hole or middle (mm)
 */
public record AxleFoot(
    String part, double rightMm, double leftMm, boolean hole, double turnRad, double outMm) {
  private static final double CHORD_MM = 0.2;

  /** Everything that is welded to the axle tube or its housing, from left to right. */
  public static List<AxleFoot> of(Assembly assembly, Point3 tubeMiddle) {
    Set<String> tube = Set.of(VehicleParts.AXLE_TUBE, VehicleParts.HOUSING);
    Map<String, List<Point3>> points = new LinkedHashMap<>();
    for (PlacedSeam seam : assembly.seams()) {
      if (seam.run().onto().stream().anyMatch(tube::contains)) {
        for (String part : seam.run().parts()) {
          points
              .computeIfAbsent(part, unknown -> new ArrayList<>())
              .addAll(seam.run().path().points(CHORD_MM));
        }
      }
    }
    List<AxleFoot> feet = new ArrayList<>();
    points.forEach((part, path) -> feet.add(foot(assembly, part, path, tubeMiddle)));
    feet.sort(Comparator.comparingDouble(AxleFoot::leftMm).reversed());
    return feet;
  }

  private static AxleFoot foot(Assembly assembly, String id, List<Point3> path, Point3 tubeMiddle) {
    Optional<Point3> hole = hole(assembly, id);
    Point3 at = hole.orElseGet(() -> assembly.part(id).orElseThrow().centre());
    double forward = at.xMm() - tubeMiddle.xMm();
    double up = at.zMm() - tubeMiddle.zMm();
    return new AxleFoot(
        id,
        path.stream().mapToDouble(Point3::yMm).min().orElseThrow(),
        path.stream().mapToDouble(Point3::yMm).max().orElseThrow(),
        hole.isPresent(),
        Math.atan2(forward, up),
        Math.hypot(forward, up));
  }

  /** Middle of the one bolt that goes through a part; empty if none does, or several. */
  private static Optional<Point3> hole(Assembly assembly, String id) {
    List<PlacedPart> bolts =
        assembly.mates().stream()
            .filter(mate -> mate.kind() == Mate.Kind.BOLTED && mate.onto().equals(id))
            .map(mate -> assembly.part(mate.part()).orElseThrow())
            .filter(part -> part.kind() == PartKind.BOLT)
            .toList();
    return bolts.size() == 1 ? Optional.of(bolts.get(0).place().origin()) : Optional.empty();
  }
}
