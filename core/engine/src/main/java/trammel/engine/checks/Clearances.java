package trammel.engine.checks;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.ClearancePair;
import trammel.engine.clearance.ClearanceSweep;
import trammel.engine.clearance.Joint;
import trammel.engine.clearance.LeastGap;
import trammel.engine.clearance.TightestPair;
import trammel.engine.layout.Travel;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/** The least gaps of a layout over its travel, each group worked out when first asked for. */
final class Clearances {
  /** A gap smaller than this is looked for between the poses too (mm). */
  private static final double REFINE_BELOW_MM = 20;

  private static final double DONE = Double.POSITIVE_INFINITY;

  /** How far a wheel may pass the end of its travel by rounding (mm). */
  private static final double ROUNDING_MM = 1e-6;

  private final LayoutAnalysis analysis;
  private final ClearanceBodies bodies;
  private final List<Placement> placements = new ArrayList<>();
  private final Map<String, SweptRoom> rooms = new HashMap<>();
  private final Map<ClearanceGroup, Optional<LeastGap>> found = new EnumMap<>(ClearanceGroup.class);

  Clearances(LayoutAnalysis analysis) {
    this.analysis = analysis;
    bodies = new ClearanceBodies(analysis.layout());
  }

  /** The tightest place of a group; empty where there is nothing to look at. */
  Optional<LeastGap> tightest(ClearanceGroup group) {
    Optional<LeastGap> known = found.get(group);
    if (known == null) {
      known = find(group);
      found.put(group, known);
    }
    return known;
  }

  private Optional<LeastGap> find(ClearanceGroup group) {
    List<ClearancePair> pairs = pairs(group);
    if (pairs.isEmpty() || analysis.envelope().isEmpty()) {
      return Optional.empty();
    }
    TightestPair tightest = new TightestPair(analysis.envelope());
    double[] apartMm = apartMm(pairs);
    for (int next = closest(apartMm); next >= 0; next = closest(apartMm)) {
      // Rooms that overlap say nothing of how far the bodies in them do.
      if (apartMm[next] > Math.max(0, tightest.leastMm())) {
        break;
      }
      tightest.add(pairs.get(next));
      apartMm[next] = DONE;
    }
    Optional<LeastGap> found = tightest.found();
    return found.isEmpty() || group == ClearanceGroup.MOVED_AWAY
        ? found
        : Optional.of(refined(found.get()));
  }

  /** Every pair of a group that touches, each at its worst; empty where none does. */
  List<LeastGap> touching(ClearanceGroup group) {
    Optional<LeastGap> worst = tightest(group);
    if (worst.isEmpty() || worst.get().gap().gapMm() > 0) {
      return List.of();
    }
    List<ClearancePair> pairs = pairs(group);
    double[] apartMm = apartMm(pairs);
    List<LeastGap> touching = new ArrayList<>();
    for (int i = 0; i < apartMm.length; i++) {
      if (apartMm[i] <= 0) {
        TightestPair alone = new TightestPair(analysis.envelope());
        alone.add(pairs.get(i));
        alone.found().filter(found -> found.gap().gapMm() <= 0).ifPresent(touching::add);
      }
    }
    touching.sort(Comparator.comparingDouble(found -> found.gap().gapMm()));
    return touching;
  }

  /** How far apart the two bodies of each pair are kept by the room that each takes. */
  private double[] apartMm(List<ClearancePair> pairs) {
    double[] apartMm = new double[pairs.size()];
    for (int i = 0; i < apartMm.length; i++) {
      apartMm[i] = room(pairs.get(i).first()).apartMm(room(pairs.get(i).second()));
    }
    return apartMm;
  }

  /** Index of the pair least apart that is not done; -1 if all are. */
  private static int closest(double[] apartMm) {
    int closest = -1;
    for (int i = 0; i < apartMm.length; i++) {
      if (apartMm[i] < DONE && (closest < 0 || apartMm[i] < apartMm[closest])) {
        closest = i;
      }
    }
    return closest;
  }

  /** Between the poses a gap may be a little smaller; that is looked at where it matters. */
  private LeastGap refined(LeastGap found) {
    if (Math.abs(found.gap().gapMm()) > REFINE_BELOW_MM) {
      return found;
    }
    List<ClearancePair> pair = List.of(found.pair());
    return new ClearanceSweep(pair, Double.POSITIVE_INFINITY, 1)
        .over(analysis.envelope(), (heaveMm, rollRad) -> poseInTravel(heaveMm, rollRad))
        .get(0);
  }

  private SweptRoom room(Body body) {
    SweptRoom room = rooms.get(body.name());
    if (room == null) {
      if (placements.isEmpty()) {
        for (AxlePose pose : analysis.envelope()) {
          placements.add(pose.placement());
        }
      }
      room = new SweptRoom(body, placements);
      rooms.put(body.name(), room);
    }
    return room;
  }

  private List<ClearancePair> pairs(ClearanceGroup group) {
    return switch (group) {
      case BETWEEN -> ClearancePair.among(bodies.moving(), between());
      case FRAME -> against(bodies.fixed());
      case HOUSING -> housing();
      case TYRE -> tyres();
      case FUEL -> against(bodies.fuel());
      case MOVED_AWAY -> against(bodies.movedAway());
    };
  }

  private List<ClearancePair> housing() {
    if (bodies.housing().isEmpty()) {
      return List.of();
    }
    Body housing = bodies.housing().get();
    List<ClearancePair> pairs = new ArrayList<>();
    for (Body moving : bodies.moving()) {
      if (moving.carrier().isBetween()) {
        add(pairs, moving, housing);
      }
    }
    for (Body fixed : bodies.fixed()) {
      add(pairs, housing, fixed);
    }
    return pairs;
  }

  /** Each tyre against all that is not on the axle with it. */
  private List<ClearancePair> tyres() {
    List<Body> others = new ArrayList<>(bodies.fixed());
    others.addAll(bodies.fuel());
    others.addAll(bodies.movedAway());
    for (Body moving : bodies.moving()) {
      if (moving.carrier().isBetween()) {
        others.add(moving);
      }
    }
    List<ClearancePair> pairs = new ArrayList<>();
    for (Body tyre : bodies.tyres()) {
      for (Body other : others) {
        add(pairs, tyre, other);
      }
    }
    return pairs;
  }

  private void add(List<ClearancePair> pairs, Body first, Body second) {
    Optional<ClearancePair> pair = ClearancePair.of(first, second, bodies.joints());
    if (pair.isPresent()) {
      pairs.add(pair.get());
    }
  }

  private List<Joint> between() {
    List<Joint> joints = new ArrayList<>();
    for (Joint joint : bodies.joints()) {
      if (isMoving(joint.joinedTo())) {
        joints.add(joint);
      }
    }
    return joints;
  }

  private boolean isMoving(String name) {
    for (Body body : bodies.moving()) {
      if (body.name().equals(name)) {
        return true;
      }
    }
    return false;
  }

  private List<ClearancePair> against(List<Body> standing) {
    List<ClearancePair> pairs = new ArrayList<>(bodies.moving().size() * standing.size());
    for (Body body : bodies.moving()) {
      for (Body other : standing) {
        add(pairs, body, other);
      }
    }
    return pairs;
  }

  /** Between the poses of the envelope, with both wheels within their travel. */
  private Optional<AxlePose> poseInTravel(double heaveMm, double rollRad) {
    Travel travel = analysis.layout().chassis().travel();
    double halfMm = Math.abs(analysis.layout().chassis().axle().trackMm() / 2 * Math.sin(rollRad));
    boolean inTravel =
        heaveMm + halfMm <= travel.bumpMm() + ROUNDING_MM
            && heaveMm - halfMm >= -travel.droopMm() - ROUNDING_MM;
    return inTravel ? analysis.poseAt(heaveMm, rollRad) : Optional.empty();
  }

  /** Which two parts, and when. */
  String where(LeastGap least) {
    Optional<AxlePose> pose = analysis.poseAt(least.heaveMm(), least.rollRad());
    return least.pair().first().name()
        + (least.gap().isOverlap() ? " runs into " : " to ")
        + least.pair().second().name()
        + (pose.isPresent() ? ", " + analysis.describe(pose.get()) : "");
  }
}
