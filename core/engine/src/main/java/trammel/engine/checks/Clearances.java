package trammel.engine.checks;

import java.util.ArrayList;
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
import trammel.engine.layout.Travel;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/** The least gaps of a layout over its travel, each group worked out when first asked for. */
final class Clearances {
  /** A gap smaller than this is looked for between the poses too (mm). */
  private static final double REFINE_BELOW_MM = 20;

  /** What a gap may be smaller between the poses than at them: a bar swings in an arc (mm). */
  private static final double BETWEEN_POSES_MM = 2;

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
    List<LeastGap> gaps = new ArrayList<>();
    addGaps(apartBy(pairs, -1, 0), gaps);
    addGaps(apartBy(pairs, 0, leastMm(gaps)), gaps);
    return refined(gaps);
  }

  /** Pairs whose rooms over the whole travel are more than one and at most another length apart. */
  private List<ClearancePair> apartBy(List<ClearancePair> pairs, double overMm, double mostMm) {
    List<ClearancePair> found = new ArrayList<>();
    for (ClearancePair pair : pairs) {
      double apartMm = room(pair.first()).apartMm(room(pair.second()));
      if (apartMm > overMm && apartMm <= mostMm) {
        found.add(pair);
      }
    }
    return found;
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

  private void addGaps(List<ClearancePair> pairs, List<LeastGap> gaps) {
    if (!pairs.isEmpty()) {
      gaps.addAll(new ClearanceSweep(pairs, 0, 1).over(analysis.envelope()));
    }
  }

  private static double leastMm(List<LeastGap> gaps) {
    double leastMm = Double.POSITIVE_INFINITY;
    for (LeastGap gap : gaps) {
      leastMm = Math.min(leastMm, gap.gap().gapMm());
    }
    return leastMm;
  }

  /** Between the poses a gap may be a little smaller; that decides where it matters. */
  private Optional<LeastGap> refined(List<LeastGap> gaps) {
    double leastMm = leastMm(gaps);
    List<ClearancePair> tightest = new ArrayList<>(1);
    for (LeastGap gap : gaps) {
      if (gap.gap().gapMm() <= leastMm + BETWEEN_POSES_MM) {
        tightest.add(gap.pair());
      }
    }
    if (leastMm > REFINE_BELOW_MM) {
      return first(gaps, leastMm);
    }
    ClearanceSweep sweep = new ClearanceSweep(tightest, Double.POSITIVE_INFINITY, 1);
    List<LeastGap> closer = sweep.over(analysis.envelope(), this::poseInTravel);
    return first(closer, leastMm(closer));
  }

  private static Optional<LeastGap> first(List<LeastGap> gaps, double gapMm) {
    for (LeastGap gap : gaps) {
      if (gap.gap().gapMm() == gapMm) {
        return Optional.of(gap);
      }
    }
    return Optional.empty();
  }

  private List<ClearancePair> pairs(ClearanceGroup group) {
    return switch (group) {
      case BETWEEN -> ClearancePair.among(bodies.moving(), between());
      case FRAME -> against(bodies.fixed());
      case MOVED_AWAY -> against(bodies.movedAway());
    };
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
        ClearancePair.of(body, other, bodies.joints()).ifPresent(pairs::add);
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
    return least.pair().first().name()
        + (least.gap().isOverlap() ? " runs into " : " to ")
        + least.pair().second().name()
        + analysis
            .poseAt(least.heaveMm(), least.rollRad())
            .map(pose -> ", " + analysis.describe(pose))
            .orElse("");
  }
}
