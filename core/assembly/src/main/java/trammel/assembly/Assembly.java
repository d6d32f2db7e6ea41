package trammel.assembly;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import trammel.engine.geometry.Point3;

/**
 * The finished vehicle as it stands: every part with its place, every weld, and what holds what.
 * Places are absolute, at ride; the carrier says which body moves a part.
 *
 * @param bodies what moves as one: the frame first, the axle, each bar, any more
 * @param parts every part
 * @param seams every weld
 * @param mates what holds what
 */
public record Assembly(
    List<String> bodies, List<PlacedPart> parts, List<PlacedSeam> seams, List<Mate> mates) {
  /** The body that stands still. */
  public static final String FRAME = "frame";

  /** The rigid axle with its wheels. */
  public static final String AXLE = "axle";

  /**
   * @throws IllegalArgumentException if an id is there twice, or something names a part or body
   *     that is not there
   */
  public Assembly {
    bodies = List.copyOf(bodies);
    parts = List.copyOf(parts);
    seams = List.copyOf(seams);
    mates = List.copyOf(mates);
    Set<String> carriers = new HashSet<>(bodies);
    Set<String> ids = new HashSet<>();
    for (PlacedPart part : parts) {
      require(carriers, part.carrier(), part.id() + " hangs on");
      if (!ids.add(part.id())) {
        throw new IllegalArgumentException(
            "Two parts have the id '" + part.id() + "'; each must have its own. Name one apart.");
      }
    }
    Set<String> seamIds = new HashSet<>();
    for (PlacedSeam seam : seams) {
      for (String part : seam.run().parts()) {
        require(ids, part, "the weld '" + seam.id() + "' holds");
      }
      for (String onto : seam.run().onto()) {
        require(ids, onto, "the weld '" + seam.id() + "' is run onto");
      }
      if (!seamIds.add(seam.id())) {
        throw new IllegalArgumentException(
            "Two welds have the id '" + seam.id() + "'; each must have its own. Name one apart.");
      }
    }
    for (Mate mate : mates) {
      require(ids, mate.part(), "a mate names");
      require(ids, mate.onto(), "a mate of '" + mate.part() + "' names");
    }
  }

  private static void require(Set<String> known, String name, String what) {
    if (!known.contains(name)) {
      throw new IllegalArgumentException(
          what + " '" + name + "', which is not there. Give the id of a part that is.");
    }
  }

  /** A part at some pose: where it stands there. */
  public record Placed(PlacedPart part, Place place) {}

  /** Every part where a pose puts it. */
  public Stream<Placed> walk(Pose pose) {
    return parts.stream()
        .map(part -> new Placed(part, pose.of(part.carrier()).after(part.place())));
  }

  /** A part by its id. */
  public Optional<PlacedPart> part(String id) {
    return parts.stream().filter(part -> part.id().equals(id)).findFirst();
  }

  /** Mass of what the job adds (kg). */
  public double addedKg() {
    return parts.stream().filter(part -> part.kind().added()).mapToDouble(PlacedPart::massKg).sum();
  }

  /** Centre of gravity of what the job adds, at ride (mm); empty where it adds nothing. */
  public Optional<Point3> addedCentre() {
    double massKg = addedKg();
    if (!(massKg > 0)) {
      return Optional.empty();
    }
    double x = 0;
    double y = 0;
    double z = 0;
    for (PlacedPart part : parts) {
      if (part.kind().added()) {
        Point3 centre = part.centre();
        x += part.massKg() * centre.xMm();
        y += part.massKg() * centre.yMm();
        z += part.massKg() * centre.zMm();
      }
    }
    return Optional.of(new Point3(x / massKg, y / massKg, z / massKg));
  }

  /** Length of all welds (mm). */
  public double weldMm() {
    return seams.stream().mapToDouble(seam -> seam.run().path().lengthMm()).sum();
  }

  /** Parts in groups that hold together through welds and mates; one group is a sound job. */
  public List<Set<String>> groups() {
    Map<String, Set<String>> groupOf = new HashMap<>();
    parts.forEach(part -> groupOf.put(part.id(), new HashSet<>(Set.of(part.id()))));
    for (PlacedSeam seam : seams) {
      for (String part : seam.run().parts()) {
        seam.run().onto().forEach(onto -> join(groupOf, part, onto));
      }
    }
    mates.forEach(mate -> join(groupOf, mate.part(), mate.onto()));
    return groupOf.values().stream().distinct().toList();
  }

  private static void join(Map<String, Set<String>> groupOf, String one, String other) {
    Set<String> kept = groupOf.get(one);
    Set<String> added = groupOf.get(other);
    if (kept != added) {
      kept.addAll(added);
      added.forEach(id -> groupOf.put(id, kept));
    }
  }
}
