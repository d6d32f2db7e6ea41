package trammel.planning.fitup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import trammel.assembly.Assembly;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;

/**
 * Plates and tubes that welds or a common bolt hold to each other before they are set on a rail or
 * on the axle as one. It has a zero of its own, from which it is put together on the bench; the
 * zero is set from the datum. Zero and turn are exactly what is printed of them, so that the
 * roundings of both do not add up.
 *
 * @param name what it is called, without its side
 * @param datum from where its zero is set
 * @param zero where its zero lies, along, up and out from the datum (mm)
 * @param turnRad how far it is turned from the datum, its front outwards
 * @param hole true if the zero is the middle of its bolt's grip
 * @param parts its plates and tubes by the bracket's own zero
 * @param bolts ids of the bolts through it
 */
public record Bracket(
    String name,
    Datum datum,
    Vector3 zero,
    double turnRad,
    boolean hole,
    List<PartSpan> parts,
    List<String> bolts) {
  /** Words at which the name of a group of plates ends. */
  private static final List<String> GROUPS =
      List.of(" bracket", " stand-off", " crossmember", " bridge", " outrigger");

  /** A plate's face is upright where its normal rises less than this. */
  private static final double UPRIGHT = 0.5;

  private static final double ANGLE_STEP_RAD = Math.toRadians(0.1);

  /** Two that differ less are mirror images (mm). */
  private static final double ALIKE_MM = 0.06;

  public Bracket {
    parts = List.copyOf(parts);
    bolts = List.copyOf(bolts);
  }

  /** The name of the group that a part belongs to, whichever side it is on. */
  public static String groupName(String name) {
    int end = name.length();
    for (String word : GROUPS) {
      int at = name.indexOf(word);
      if (at >= 0) {
        end = Math.min(end, at + word.length());
      }
    }
    return withoutSide(name.substring(0, end));
  }

  /** The name of a part without the side of the vehicle. */
  public static String withoutSide(String name) {
    return name.replaceAll("-(left|right)\\b", "").replaceAll("^(left|right) ", "");
  }

  /** What it is set from: its own zero and turn. */
  public Datum own() {
    return datum.at(zero, turnRad);
  }

  /**
   * True if another is this one's mirror image, part by part.
   *
   * @param turnedOver true for the same plates turned over, false for plates that are cut mirrored
   */
  boolean mirrors(Bracket other, boolean turnedOver) {
    if (!datum.kind().opposite(other.datum.kind())
        || !name.equals(other.name)
        || parts.size() != other.parts.size()
        || hole != other.hole) {
      return false;
    }
    for (int i = 0; i < parts.size(); i++) {
      if (!parts.get(i).mirrors(other.parts.get(i), ALIKE_MM, turnedOver)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Everything that is welded up and set as one; what closes or lines a rail is not among it.
   *
   * @param assembly the finished vehicle
   * @param chassis its rails and axle
   * @param stepMm what lengths are printed to (mm)
   */
  public static List<Bracket> of(Assembly assembly, Chassis chassis, double stepMm) {
    return new Finder(assembly, chassis, stepMm).brackets();
  }

  /** What closes or lines a rail: it is set by itself, from the rail's own datum. */
  public static List<PartSpan> closing(Assembly assembly, boolean left) {
    Datum datum = Datum.rail(assembly, left);
    double side = left ? 1 : -1;
    return assembly.parts().stream()
        .filter(part -> part.kind() == PartKind.PLATE && RailFoot.closesTheRail(part.name()))
        .filter(part -> side * part.centre().yMm() > 0)
        .map(part -> PartSpan.of(part, datum))
        .toList();
  }

  private static final class Finder {
    private final Assembly assembly;
    private final Chassis chassis;
    private final double stepMm;
    private final Map<String, PlacedPart> parts = new LinkedHashMap<>();
    private final Map<String, Set<String>> groupOf = new HashMap<>();

    Finder(Assembly assembly, Chassis chassis, double stepMm) {
      this.assembly = assembly;
      this.chassis = chassis;
      this.stepMm = stepMm;
      for (PlacedPart part : assembly.parts()) {
        boolean body = part.kind() == PartKind.TUBE && !isFrameOrAxle(part.carrier());
        if ((part.kind() == PartKind.PLATE || part.kind() == PartKind.TUBE)
            && !body
            && !RailFoot.closesTheRail(part.name())) {
          parts.put(part.id(), part);
          groupOf.put(part.id(), new HashSet<>(Set.of(part.id())));
        }
      }
      for (PlacedSeam seam : assembly.seams()) {
        join(Stream.concat(seam.run().parts().stream(), seam.run().onto().stream()));
      }
      assembly.mates().stream()
          .filter(mate -> mate.kind() == Mate.Kind.BOLTED)
          .collect(
              Collectors.groupingBy(
                  Mate::part,
                  LinkedHashMap::new,
                  Collectors.mapping(Mate::onto, Collectors.toList())))
          .values()
          .forEach(clamped -> join(clamped.stream()));
    }

    private static boolean isFrameOrAxle(String carrier) {
      return carrier.equals(Assembly.FRAME) || carrier.equals(Assembly.AXLE);
    }

    /** Parts that one weld or one bolt holds belong together. */
    private void join(Stream<String> held) {
      List<String> joined = held.filter(parts::containsKey).toList();
      for (int i = 1; i < joined.size(); i++) {
        Set<String> kept = groupOf.get(joined.get(0));
        Set<String> added = groupOf.get(joined.get(i));
        if (kept != added) {
          kept.addAll(added);
          added.forEach(id -> groupOf.put(id, kept));
        }
      }
    }

    List<Bracket> brackets() {
      List<Bracket> brackets = new ArrayList<>();
      Set<Set<String>> done = new HashSet<>();
      for (String id : parts.keySet()) {
        Set<String> group = groupOf.get(id);
        if (done.add(group)) {
          brackets.add(bracket(parts.keySet().stream().filter(group::contains).toList()));
        }
      }
      return brackets;
    }

    private Bracket bracket(List<String> ids) {
      List<PlacedPart> members = ids.stream().map(parts::get).toList();
      List<PlacedPart> bolts = bolts(ids);
      Datum datum = datum(members);
      double turnRad = turnRad(members, bolts, datum);
      boolean hole = bolts.size() == 1;
      Vector3 zero =
          hole ? rounded(datum.read(middleOfGrip(bolts.get(0)))) : corner(members, datum);
      Datum own = datum.at(zero, turnRad);
      return new Bracket(
          name(members),
          datum,
          zero,
          turnRad,
          hole,
          members.stream().map(part -> PartSpan.of(part, own)).toList(),
          bolts.stream().map(PlacedPart::id).toList());
    }

    private List<PlacedPart> bolts(List<String> ids) {
      return assembly.mates().stream()
          .filter(mate -> mate.kind() == Mate.Kind.BOLTED && ids.contains(mate.onto()))
          .map(Mate::part)
          .distinct()
          .map(id -> assembly.part(id).orElseThrow())
          .filter(part -> part.kind() == PartKind.BOLT)
          .toList();
    }

    /** The grip runs from the bolt's origin to the last plate that it clamps. */
    private Point3 middleOfGrip(PlacedPart bolt) {
      double endMm =
          assembly.mates().stream()
              .filter(mate -> mate.kind() == Mate.Kind.BOLTED && mate.part().equals(bolt.id()))
              .map(mate -> assembly.part(mate.onto()).orElseThrow())
              .flatMap(part -> part.solid().mesh().placed(part.place()).corners().stream())
              .map(bolt.place()::own)
              .filter(corner -> Math.hypot(corner.xMm(), corner.yMm()) < NEAR_A_BOLT_MM)
              .mapToDouble(Point3::zMm)
              .max()
              .orElse(0);
      return bolt.place().point(0, 0, endMm / 2);
    }

    /** Corners of a hole stand this near to its bolt's axis (mm). */
    private static final double NEAR_A_BOLT_MM = 25;

    private Datum datum(List<PlacedPart> members) {
      boolean axle = members.stream().allMatch(part -> part.carrier().equals(Assembly.AXLE));
      double leastMm = members.stream().mapToDouble(p -> p.centre().yMm()).min().orElseThrow();
      double mostMm = members.stream().mapToDouble(p -> p.centre().yMm()).max().orElseThrow();
      boolean oneSide = leastMm * mostMm > 0;
      if (axle) {
        Datum.Kind half = leastMm > 0 ? Datum.Kind.AXLE_LEFT : Datum.Kind.AXLE_RIGHT;
        return Datum.axle(oneSide ? half : Datum.Kind.AXLE, chassis.axleCentre());
      }
      boolean frame = members.stream().allMatch(part -> part.carrier().equals(Assembly.FRAME));
      if (frame && oneSide) {
        return Datum.rail(assembly, leastMm > 0);
      }
      return Datum.frame(chassis.rails());
    }

    /** How far its upright plates are turned from square; those that a bolt goes through first. */
    private double turnRad(List<PlacedPart> members, List<PlacedPart> bolts, Datum datum) {
      Set<String> bolted = new HashSet<>();
      for (Mate mate : assembly.mates()) {
        if (bolts.stream().anyMatch(bolt -> bolt.id().equals(mate.part()))) {
          bolted.add(mate.onto());
        }
      }
      if (!datum.kind().oneSided()) {
        return 0;
      }
      Optional<Vector3> normal =
          members.stream()
              .filter(part -> part.kind() == PartKind.PLATE)
              .filter(part -> Math.abs(datum.read(part.place().z()).y()) < UPRIGHT)
              .max(
                  Comparator.comparingDouble(
                      part -> (bolted.contains(part.id()) ? 1e12 : 0) + part.solid().volumeMm3()))
              .map(part -> datum.read(part.place().z()));
      if (normal.isEmpty()) {
        return 0;
      }
      double heading = Math.atan2(-normal.get().x(), normal.get().z());
      double quarter = Math.PI / 2;
      double off = heading - quarter * Math.rint(heading / quarter);
      return ANGLE_STEP_RAD * Math.rint(off / ANGLE_STEP_RAD);
    }

    /** Rear, lowest and innermost reach on a rail; elsewhere the datum itself. */
    private Vector3 corner(List<PlacedPart> members, Datum datum) {
      if (!datum.kind().rail()) {
        return new Vector3(0, 0, 0);
      }
      List<PartSpan> spans = members.stream().map(part -> PartSpan.of(part, datum)).toList();
      return rounded(
          new Vector3(
              spans.stream().mapToDouble(span -> span.from().x()).min().orElseThrow(),
              spans.stream().mapToDouble(span -> span.from().y()).min().orElseThrow(),
              spans.stream().mapToDouble(span -> span.from().z()).min().orElseThrow()));
    }

    private Vector3 rounded(Vector3 reading) {
      return new Vector3(
          stepMm * Math.rint(reading.x() / stepMm),
          stepMm * Math.rint(reading.y() / stepMm),
          stepMm * Math.rint(reading.z() / stepMm));
    }

    /** By its largest tube, else by its largest plate. */
    private static String name(List<PlacedPart> members) {
      PlacedPart largest =
          members.stream()
              .max(
                  Comparator.comparingDouble(
                      part -> (part.kind() == PartKind.TUBE ? 1e12 : 0) + part.solid().volumeMm3()))
              .orElseThrow();
      return groupName(largest.name());
    }
  }
}
