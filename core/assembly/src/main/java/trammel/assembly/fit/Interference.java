package trammel.assembly.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import trammel.assembly.Assembly;
import trammel.assembly.Compound;
import trammel.assembly.Mate;
import trammel.assembly.PartKind;
import trammel.assembly.Place;
import trammel.assembly.PlacedPart;
import trammel.assembly.PlacedSeam;
import trammel.assembly.Pose;
import trammel.assembly.Solid;

/**
 * Parts of a finished vehicle that stand in the same place and therefore cannot be built so, or
 * strike each other where the axle goes. What a bolt clamps, what is pressed or screwed together
 * and what belongs to the vehicle may.
 *
 * <p>Blocks round the parts are compared first; where they overlap, the edges of each part are
 * followed through the other: of two bodies with plane faces that overlap, an edge of one passes
 * through the other. The bore of a tube counts as solid.
 */
public final class Interference {
  /**
   * What an edge may lie inside another part, 2.5 mm: a weld fills 1/16 in, and 1/32 more where a
   * leaning plate saddles a level tube or a square one meets a rail that tapers.
   */
  public static final double ROOT_MM = 2.5;

  /**
   * What two parts that are welded to each other may overlap, 3/16 in: what is ground off in
   * fitting one to the other, common practice, no source.
   */
  public static final double FITTED_MM = 3 * 25.4 / 16;

  private final Map<Solid, Filled> forms = new IdentityHashMap<>();
  private final Map<Solid, Filled> hollowForms = new IdentityHashMap<>();

  private final Assembly assembly;
  private final Map<String, Set<String>> held;
  private final Map<String, Set<String>> welded;

  private Interference(Assembly assembly) {
    this.assembly = assembly;
    held = held(assembly);
    welded = welded(assembly);
  }

  /** Rounding of blocks in vehicle axes is far below this (mm). */
  private static final double ROUNDING_MM = 1e-6;

  private static final int AXES = 3;

  /** One part, its simple solids where they stand, and the upright block round them all. */
  private static final class Body {
    private final PlacedPart part;
    private final List<Standing> members;
    private final double[] low = new double[AXES];
    private final double[] high = new double[AXES];

    Body(PlacedPart part, List<Standing> members) {
      this.part = part;
      this.members = members;
      for (int axis = 0; axis < AXES; axis++) {
        low[axis] = Double.POSITIVE_INFINITY;
        high[axis] = Double.NEGATIVE_INFINITY;
        for (Standing member : members) {
          low[axis] = Math.min(low[axis], member.lowMm(axis));
          high[axis] = Math.max(high[axis], member.highMm(axis));
        }
      }
    }

    double rearMm() {
      return low[0];
    }

    double frontMm() {
      return high[0];
    }

    /**
     * Whether a move of less than counts, across the vehicle or in height, would take the blocks
     * out of each other: then it would take any two of their members.
     */
    boolean isBeside(Body other) {
      for (int axis = 1; axis < AXES; axis++) {
        double outMm = Math.min(high[axis] - other.low[axis], other.high[axis] - low[axis]);
        if (outMm < ROOT_MM - ROUNDING_MM) {
          return true;
        }
      }
      return false;
    }
  }

  /** Every pair of parts that overlaps at ride, the deepest first. */
  public static List<Overlap> of(Assembly assembly) {
    return of(assembly, List.of());
  }

  /**
   * Every pair of parts that overlaps: those at ride, then those at a pose, the deepest of each
   * first. At a pose only what has moved against each other is looked at, and only what keeps its
   * form: bodies that the pose does not place, and bought parts that stand on the frame or the
   * axle, such as bump stops, are left out.
   *
   * @param poses each with all bodies that are to be looked at, but for the frame
   */
  public static List<Overlap> of(Assembly assembly, List<Pose> poses) {
    return new Interference(assembly).found(poses);
  }

  private List<Overlap> found(List<Pose> poses) {
    Map<Set<String>, Overlap> deepest = new LinkedHashMap<>();
    List<Body> atRide = new ArrayList<>();
    for (PlacedPart part : assembly.parts()) {
      if (isLookedAt(part)) {
        atRide.add(body(part, Pose.RIDE));
      }
    }
    addOverlaps(deepest, atRide, Overlap.AT_RIDE);
    for (int i = 0; i < poses.size(); i++) {
      addOverlaps(deepest, moved(atRide, poses.get(i)), i);
    }
    List<Overlap> overlaps = new ArrayList<>(deepest.values());
    overlaps.sort(
        Comparator.comparing((Overlap overlap) -> overlap.pose() != Overlap.AT_RIDE)
            .thenComparing(Comparator.comparingDouble(Overlap::depthMm).reversed()));
    return overlaps;
  }

  private List<Body> moved(List<Body> atRide, Pose pose) {
    List<Body> moved = new ArrayList<>(atRide.size());
    for (Body body : atRide) {
      PlacedPart part = body.part;
      boolean onFrame = part.carrier().equals(Assembly.FRAME);
      boolean ofABar = !onFrame && !part.carrier().equals(Assembly.AXLE);
      boolean placed = onFrame || pose.moved().containsKey(part.carrier());
      if (placed && (ofABar || part.kind() != PartKind.BOUGHT)) {
        moved.add(onFrame ? body : body(part, pose));
      }
    }
    return moved;
  }

  private void addOverlaps(Map<Set<String>, Overlap> deepest, List<Body> bodies, int pose) {
    boolean travel = pose != Overlap.AT_RIDE;
    bodies.sort(Comparator.comparingDouble(Body::rearMm));
    for (int i = 0; i < bodies.size(); i++) {
      Body one = bodies.get(i);
      double frontMm = one.frontMm() - ROOT_MM;
      Set<String> holds = held.getOrDefault(one.part.id(), Set.of());
      Set<String> fitted = welded.getOrDefault(one.part.id(), Set.of());
      for (int j = i + 1; j < bodies.size() && bodies.get(j).rearMm() < frontMm; j++) {
        Body other = bodies.get(j);
        if (one.isBeside(other)) {
          continue;
        }
        boolean still = travel && one.part.carrier().equals(other.part.carrier());
        if (still || standsTogether(one.part, other.part) || holds.contains(other.part.id())) {
          continue;
        }
        double allowedMm = fitted.contains(other.part.id()) ? FITTED_MM : ROOT_MM;
        double depthMm = depthMm(one, other, allowedMm);
        if (depthMm > allowedMm) {
          Overlap found = new Overlap(one.part.id(), other.part.id(), depthMm, pose);
          deepest.merge(Set.of(found.one(), found.other()), found, Interference::deeper);
        }
      }
    }
  }

  /** What is there at ride is told as that, however deep it gets later. */
  private static Overlap deeper(Overlap known, Overlap next) {
    return known.pose() == Overlap.AT_RIDE || known.depthMm() >= next.depthMm() ? known : next;
  }

  /**
   * Tools come off again; what stands in the way on the frame is moved, or judged as in the way.
   */
  private static boolean isLookedAt(PlacedPart part) {
    boolean obstacle =
        part.kind() == PartKind.VEHICLE
            && part.carrier().equals(Assembly.FRAME)
            && !part.id().endsWith(" rail");
    return part.kind() != PartKind.TOOL && !obstacle;
  }

  /** Parts of the vehicle as it came, and what one bar, spring or shock is made up of. */
  private static boolean standsTogether(PlacedPart one, PlacedPart other) {
    boolean ofTheVehicle = one.kind() == PartKind.VEHICLE && other.kind() == PartKind.VEHICLE;
    boolean carried = !one.carrier().equals(Assembly.FRAME) && !one.carrier().equals(Assembly.AXLE);
    return ofTheVehicle
        || carried && one.carrier().equals(other.carrier())
        || trimmed(one, other)
        || trimmed(other, one);
  }

  /** Plates of a notch and plates that close a rail are trimmed to what is welded on there. */
  private static boolean trimmed(PlacedPart plate, PlacedPart other) {
    boolean onTheRail = plate.id().startsWith("notch ") || plate.id().contains("boxing");
    return onTheRail && other.carrier().equals(Assembly.FRAME) && other.kind() != PartKind.BOLT;
  }

  private Body body(PlacedPart part, Pose pose) {
    boolean hollow = part.kind() != PartKind.TUBE && part.kind() != PartKind.VEHICLE;
    List<Standing> members = new ArrayList<>();
    add(members, part.solid(), pose.of(part.carrier()).after(part.place()), hollow);
    return new Body(part, members);
  }

  private void add(List<Standing> members, Solid solid, Place place, boolean hollow) {
    if (solid instanceof Compound compound) {
      for (Compound.Member member : compound.members()) {
        add(members, member.solid(), place.after(member.place()), hollow);
      }
    } else {
      Map<Solid, Filled> known = hollow ? hollowForms : forms;
      Filled form = known.computeIfAbsent(solid, one -> Filled.of(one, hollow));
      members.add(new Standing(form, place));
    }
  }

  private static double depthMm(Body one, Body other, double allowedMm) {
    double deepest = 0;
    for (Standing a : one.members) {
      for (Standing b : other.members) {
        if (a.isNear(b, allowedMm)) {
          deepest = Math.max(deepest, Math.max(a.depthInMm(b), b.depthInMm(a)));
        }
      }
    }
    return deepest;
  }

  /** What each part is held to by a mate, and what one bolt clamps together. */
  private static Map<String, Set<String>> held(Assembly assembly) {
    Map<String, Set<String>> held = new HashMap<>();
    Map<String, List<String>> clamped = new HashMap<>();
    for (Mate mate : assembly.mates()) {
      hold(held, mate.part(), mate.onto());
      if (mate.kind() == Mate.Kind.BOLTED) {
        clamped.computeIfAbsent(mate.part(), bolt -> new ArrayList<>()).add(mate.onto());
      }
    }
    for (List<String> stack : clamped.values()) {
      for (String one : stack) {
        stack.forEach(other -> hold(held, one, other));
      }
    }
    return held;
  }

  private static Map<String, Set<String>> welded(Assembly assembly) {
    Map<String, Set<String>> welded = new HashMap<>();
    for (PlacedSeam seam : assembly.seams()) {
      for (String part : seam.run().parts()) {
        seam.run().onto().forEach(onto -> hold(welded, part, onto));
      }
    }
    return welded;
  }

  private static void hold(Map<String, Set<String>> held, String one, String other) {
    held.computeIfAbsent(one, id -> new HashSet<>()).add(other);
    held.computeIfAbsent(other, id -> new HashSet<>()).add(one);
  }
}
