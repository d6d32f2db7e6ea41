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
import trammel.assembly.Prism;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.trade.plates.Hole;
import trammel.trade.plates.Outline;
import trammel.trade.plates.RoundHole;
import trammel.trade.plates.Straight;

/**
 * Where a plate or tube sits on the axle tube: how far from the tube's middle, and how it is turned
 * about the tube.
 *
 * @param part id of the placed part
 * @param rightMm its edge nearer to the right, left of the tube's middle (mm), minus right of it
 * @param leftMm its edge nearer to the left (mm)
 * @param mark what of the part its turn is read to
 * @param turnRad of the line from the tube's middle to that mark, square to it where it is an edge:
 *     from straight up towards the front, as it is set at ride; minus towards the rear
 * @param outMm from the tube's middle to that mark (mm)
 */
public record AxleFoot(
    String part, double rightMm, double leftMm, Mark mark, double turnRad, double outMm) {
  private static final double CHORD_MM = 0.2;

  /** A plate lies in the side view if its normal is as near to the tube's axis (cosine). */
  private static final double ACROSS_THE_TUBE = 0.9;

  /** A bolt that goes through a plate more slanted than this does not say where its hole is. */
  private static final double THROUGH = 0.1;

  /** What a straightedge or an angle finder is laid to on a part that is set on the tube. */
  public enum Mark {
    /** Middle of the hole, half way through the plate. */
    HOLE("hole"),
    /** Its longest straight edge, which is above its middle. */
    UPPER_EDGE("upper edge"),
    /** The same below. */
    LOWER_EDGE("lower edge"),
    /** The same, upright and ahead. */
    FRONT_EDGE("front edge"),
    /** The same, upright and behind. */
    REAR_EDGE("rear edge"),
    /** Its own middle: that of a tube, or of what stands along the axle tube. */
    MIDDLE("middle");

    private final String words;

    Mark(String words) {
      this.words = words;
    }

    /** How it is called. */
    public String words() {
      return words;
    }

    /** Whether it is an edge, to which the line from the tube's middle is square. */
    public boolean isEdge() {
      return this != HOLE && this != MIDDLE;
    }
  }

  /** Which way from the tube's middle a mark is, and how far (mm). */
  private record Seen(Mark mark, double turnRad, double outMm) {
    static Seen at(Mark mark, Point3 point, Point3 tubeMiddle) {
      double ahead = point.xMm() - tubeMiddle.xMm();
      double up = point.zMm() - tubeMiddle.zMm();
      return new Seen(mark, Math.atan2(ahead, up), Math.hypot(ahead, up));
    }
  }

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
    PlacedPart part = assembly.part(id).orElseThrow();
    Seen seen =
        hole(assembly, part)
            .map(point -> Seen.at(Mark.HOLE, point, tubeMiddle))
            .or(() -> longestEdge(part, tubeMiddle))
            .orElseGet(() -> Seen.at(Mark.MIDDLE, part.centre(), tubeMiddle));
    return new AxleFoot(
        id,
        path.stream().mapToDouble(Point3::yMm).min().orElseThrow(),
        path.stream().mapToDouble(Point3::yMm).max().orElseThrow(),
        seen.mark,
        seen.turnRad,
        seen.outMm);
  }

  /**
   * Middle of the hole of the one bolt that goes through a part, or of the one round hole of a
   * plate without a bolt, half way through it; empty if there is none, or several.
   */
  private static Optional<Point3> hole(Assembly assembly, PlacedPart part) {
    List<PlacedPart> bolts =
        assembly.mates().stream()
            .filter(mate -> mate.kind() == Mate.Kind.BOLTED && mate.onto().equals(part.id()))
            .map(mate -> assembly.part(mate.part()).orElseThrow())
            .filter(bolt -> bolt.kind() == PartKind.BOLT)
            .toList();
    if (bolts.isEmpty()) {
      return onlyHole(part);
    }
    return bolts.size() == 1 ? Optional.of(through(bolts.get(0), part)) : Optional.empty();
  }

  /** Where a bolt's axis is half way through a part: a leaning bolt is higher in one plate. */
  private static Point3 through(PlacedPart bolt, PlacedPart part) {
    Point3 start = bolt.place().origin();
    Vector3 axis = bolt.place().z();
    Vector3 toMiddle = start.to(part.centre());
    Vector3 normal = part.place().z();
    double slant = axis.dot(normal);
    double alongMm = Math.abs(slant) > THROUGH ? toMiddle.dot(normal) / slant : toMiddle.dot(axis);
    return start.plus(axis.scaled(alongMm));
  }

  private static Optional<Point3> onlyHole(PlacedPart part) {
    if (part.solid() instanceof Prism plate && part.kind() == PartKind.PLATE) {
      List<Hole> holes = plate.section().holes();
      if (holes.size() == 1 && holes.get(0) instanceof RoundHole round) {
        return Optional.of(
            part.place().point(round.centre().xMm(), round.centre().yMm(), plate.lengthMm() / 2));
      }
    }
    return Optional.empty();
  }

  /** Foot of the line from the tube's middle square to the longest straight edge of a plate. */
  private static Optional<Seen> longestEdge(PlacedPart part, Point3 tubeMiddle) {
    if (part.kind() != PartKind.PLATE
        || !(part.solid() instanceof Prism plate)
        || Math.abs(part.place().z().y()) < ACROSS_THE_TUBE) {
      return Optional.empty();
    }
    return longest(plate.section()).map(edge -> square(part, edge, tubeMiddle));
  }

  private static Optional<Straight> longest(Outline outline) {
    return outline.outer().edges().stream()
        .filter(Straight.class::isInstance)
        .map(Straight.class::cast)
        .max(Comparator.comparingDouble(Straight::lengthMm));
  }

  /** As seen from the tube's end. An edge that runs through the tube's middle is 0 out of it. */
  private static Seen square(PlacedPart part, Straight edge, Point3 tubeMiddle) {
    Point3 from = part.place().apply(edge.from());
    Point3 to = part.place().apply(edge.to());
    double runMm = Math.hypot(to.xMm() - from.xMm(), to.zMm() - from.zMm());
    double normalX = -(to.zMm() - from.zMm()) / runMm;
    double normalZ = (to.xMm() - from.xMm()) / runMm;
    Point3 middle = part.centre();
    double off = (from.xMm() - middle.xMm()) * normalX + (from.zMm() - middle.zMm()) * normalZ;
    double out =
        (from.xMm() - tubeMiddle.xMm()) * normalX + (from.zMm() - tubeMiddle.zMm()) * normalZ;
    double side = Math.signum(off);
    boolean flat = Math.abs(normalZ) >= Math.abs(normalX);
    Mark mark =
        flat
            ? side * normalZ > 0 ? Mark.UPPER_EDGE : Mark.LOWER_EDGE
            : side * normalX > 0 ? Mark.FRONT_EDGE : Mark.REAR_EDGE;
    double outwards = out < 0 ? -1 : 1;
    return new Seen(mark, Math.atan2(outwards * normalX, outwards * normalZ), Math.abs(out));
  }
}
