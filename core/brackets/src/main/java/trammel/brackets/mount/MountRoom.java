package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import trammel.brackets.bar.JointSeat;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Bounded;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Gap;
import trammel.engine.clearance.Shape;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.AxleGuide;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.Rails;
import trammel.engine.motion.Placement;
import trammel.trade.plates.TubeBracket;

/**
 * What stands round the axle, and how close a spring or shock comes to it over the travel: the
 * vehicle with its bars, or what stands beside on it.
 */
public final class MountRoom {
  /** Radius of a driveshaft that is not measured, 1 3/4 in. */
  private static final double USUAL_SHAFT_RADIUS_MM = 1.75 * 25.4;

  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** How far ahead of and behind the axle the rails are looked at (mm). */
  private static final double RAIL_REACH_MM = 24 * 25.4;

  /** Room along the tube for a bracket outside its joint's barrel, 1/2 in: common practice. */
  private static final double BESIDE_BARREL_MM = 12.7;

  /** Room beside the housing for the feet of a bridge over it, 2 in: common practice. */
  private static final double BRIDGE_FOOT_MM = 2 * 25.4;

  /** From the middle of a bracket to a mount beside it: its plate leans, and is welded. */
  private static final double BESIDE_PLATES_MM = 2 * MountPractice.WELD_ROOM_MM;

  /**
   * Something in the way, with where it is at each corner of the travel.
   *
   * @param mounted true for what stands beside and is fixed to one body
   */
  private record Blocker(Body body, List<Bounded> places, double airMm, boolean mounted) {}

  private final Chassis chassis;
  private final List<Bar> bars;
  private final AxleTravel travel;
  private final List<Blocker> blockers = new ArrayList<>();
  private final List<Bounded> onTheRails = new ArrayList<>();
  private final List<List<Bounded>> onTheAxle = new ArrayList<>();

  public MountRoom(Chassis chassis, AxleGuide guide, AxleTravel travel) {
    this.chassis = chassis;
    bars = guide.bars();
    this.travel = travel;
    addTube();
    for (Bar bar : bars) {
      Capsule capsule = new Capsule(bar.frame(), bar.axle(), bar.tube().outsideDiameterMm() / 2);
      add(bar.name(), capsule, bar.carrier(), MountPractice.MOVING_AIR_MM);
      frameBracket(bar).map(Bounded::new).ifPresent(onTheRails::add);
      axleBracket(bar)
          .map(box -> places(new Body(bar.name(), box, Carrier.AXLE)))
          .ifPresent(onTheAxle::add);
    }
    guide.solids().forEach(solid -> block(solid, MountPractice.MOVING_AIR_MM));
    addRails();
    addTyres();
    addShaft();
    for (Obstacle obstacle : chassis.obstacles()) {
      // Tank, exhaust and floor are moved or relieved where they are in the way; the rest stays.
      if (obstacle.kind() == ObstacleKind.OTHER) {
        add(obstacle.name(), obstacle.shape(), Carrier.FRAME, MountPractice.MOVING_AIR_MM);
      }
    }
  }

  private MountRoom(MountRoom whole) {
    chassis = whole.chassis;
    bars = whole.bars;
    travel = whole.travel;
    blockers.addAll(whole.blockers);
    onTheRails.addAll(whole.onTheRails);
    onTheAxle.addAll(whole.onTheAxle);
  }

  private MountRoom(MountRoom vehicle, List<Body> others) {
    chassis = vehicle.chassis;
    bars = vehicle.bars;
    travel = vehicle.travel;
    onTheRails.addAll(vehicle.onTheRails);
    for (Body other : others) {
      boolean mounted = !other.carrier().isBetween();
      blockers.add(new Blocker(other, places(other), MountPractice.MOVING_AIR_MM, mounted));
    }
  }

  /** The same room, whose order of asking goes its own way from here. */
  MountRoom copy() {
    return new MountRoom(this);
  }

  /** The room round other springs or shocks and parts of their mounts on this vehicle alone. */
  MountRoom beside(List<Body> others) {
    return new MountRoom(this, others);
  }

  /**
   * About the room that a bar's frame bracket takes between its joint and the rail's inner face;
   * empty where the bar ends outside the rails. Half its base is the nose about the bolt and what a
   * load spreads by 30 degrees on its way to the rail: common practice, no source.
   */
  private Optional<Box> frameBracket(Bar bar) {
    Rails rails = chassis.rails();
    Point3 joint = bar.frame();
    double faceMm = rails.innerFaceMm(joint.xMm());
    if (bar.bracket().isEmpty() || Math.abs(joint.yMm()) > faceMm) {
      return Optional.empty();
    }
    JointSeat seat = new JointSeat(bar.frameJoint(), bar.bracket().get().thicknessMm());
    double topMm = rails.topMm(joint.xMm());
    double lowMm = rails.undersideMm(joint.xMm());
    double offRailMm = Math.max(0, Math.max(lowMm - joint.zMm(), joint.zMm() - topMm));
    double halfMm =
        bar.isAcross()
            ? seat.stackMm() / 2
            : seat.noseMm() + (seat.airMm() + offRailMm) * Math.tan(Math.toRadians(30));
    double inwardMm = Math.abs(joint.yMm()) - Math.max(seat.stackMm() / 2, seat.noseMm());
    double side = joint.yMm() < 0 ? -1 : 1;
    return Optional.of(
        Box.between(
            joint.xMm() - halfMm,
            joint.xMm() + halfMm,
            Math.min(side * inwardMm, side * faceMm),
            Math.max(side * inwardMm, side * faceMm),
            Math.min(lowMm, joint.zMm() - seat.noseMm()),
            Math.max(topMm, joint.zMm() + seat.noseMm())));
  }

  /**
   * About the room that a bar's bracket takes on the axle tube, from the tube's centre to the nose
   * about its bolt; empty where the bar ends over the centre housing, on a bridge.
   */
  private Optional<Box> axleBracket(Bar bar) {
    Point3 joint = bar.axle();
    if (bar.bracket().isEmpty() || Math.abs(joint.yMm()) < chassis.axle().innerLimitMm()) {
      return Optional.empty();
    }
    JointSeat seat = new JointSeat(bar.axleJoint(), bar.bracket().get().thicknessMm());
    Point3 foot = new Point3(chassis.axleCentre().xMm(), joint.yMm(), chassis.axleCentre().zMm());
    Vector3 out = foot.to(joint).normalized();
    double halfMm = (foot.to(joint).norm() + seat.noseMm()) / 2;
    double acrossMm = bar.isAcross() ? seat.noseMm() : seat.stackMm() / 2;
    double besideMm = bar.isAcross() ? seat.stackMm() / 2 : seat.noseMm();
    Vector3 across = new Vector3(0, 1, 0);
    return Optional.of(
        new Box(
            foot.plus(out.scaled(halfMm)),
            halfMm,
            acrossMm,
            besideMm,
            out,
            across,
            out.cross(across)));
  }

  /**
   * Whether a spring or shock on the left and its bracket on the axle, and their twins, are clear
   * of the mounts of others on the axle and of the bars' frame brackets.
   */
  public boolean isClearOfBrackets(Cylinder left, Capsule bracket) {
    Pair bodies = pair(left);
    Pair brackets = pair(bracket);
    for (Blocker mount : blockers) {
      if (mount.mounted() && isTight(mount.places(), brackets, BESIDE_PLATES_MM)) {
        return false;
      }
    }
    for (Bounded onRail : onTheRails) {
      List<Bounded> still = Collections.nCopies(travel.corners().size(), onRail);
      if (isTight(still, bodies, MountPractice.WELD_ROOM_MM)
          || isTight(still, brackets, MountPractice.WELD_ROOM_MM)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether a shock's bracket on the left axle tube, and its twin, are clear of those of the bars.
   */
  boolean isClearOfAxleBrackets(Capsule bracket) {
    Pair both = pair(bracket);
    return onTheAxle.stream().noneMatch(one -> isTight(one, both, BESIDE_PLATES_MM));
  }

  /**
   * Whether the plates of a bracket on the left axle tube, and their twins, are clear of all bars
   * and the shaft over the travel.
   */
  boolean isClearOfBars(Capsule plates) {
    Pair both = pair(plates);
    for (Blocker blocker : blockers) {
      if (blocker.body().carrier().isBetween() && isTight(blocker.places(), both, 0)) {
        return false;
      }
    }
    return true;
  }

  /**
   * What a crossmember stands on: pieces of its tube, or plates where a bar would cut into those.
   *
   * @param onTubes the room that it takes on pieces of its tube
   */
  public Legs legs(List<Box> onTubes) {
    for (Blocker blocker : blockers) {
      if (blocker.body().carrier().isBetween()
          && onTubes.stream().anyMatch(part -> meets(new Bounded(part), blocker.places(), 0))) {
        return Legs.PLATE;
      }
    }
    return Legs.TUBE;
  }

  /**
   * Whether what is welded in from rail to rail is clear of the bars' frame brackets, and over the
   * travel of all that moves.
   */
  public boolean isFreeOnFrame(List<Box> carrier) {
    for (Box box : carrier) {
      Bounded part = new Bounded(box);
      for (Bounded bracket : onTheRails) {
        if (part.isCloser(bracket, MountPractice.WELD_ROOM_MM)) {
          return false;
        }
      }
      for (Blocker blocker : blockers) {
        boolean aRail = blocker.body().carrier().isStill() && !blocker.mounted();
        if (!aRail && meets(part, blocker.places(), MountPractice.WELD_ROOM_MM)) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean meets(Bounded still, List<Bounded> moving, double airMm) {
    for (Bounded place : moving) {
      if (still.isCloser(place, airMm)) {
        return true;
      }
    }
    return false;
  }

  private void add(String name, Shape shape, Carrier carrier, double airMm) {
    block(new Body(name, shape, carrier), airMm);
  }

  private void block(Body body, double airMm) {
    blockers.add(new Blocker(body, places(body), airMm, false));
  }

  private List<Bounded> places(Body body) {
    List<Bounded> places = new ArrayList<>(travel.corners().size());
    for (Placement corner : travel.corners()) {
      places.add(new Bounded(body.at(corner)));
    }
    return places;
  }

  /**
   * Something on the left and its twin at the corners of the travel, each placed when it is first
   * asked for: most of what is in the way is met at the first corner.
   */
  private final class Pair {
    private final Body left;
    private final Body right;
    private final Bounded[] leftPlaces = new Bounded[travel.corners().size()];
    private final Bounded[] rightPlaces = new Bounded[travel.corners().size()];

    Pair(Shape left, Shape right, Carrier carrier) {
      this.left = new Body("left", left, carrier);
      this.right = new Body("right", right, carrier);
    }

    Bounded left(int corner) {
      return place(left, leftPlaces, corner);
    }

    Bounded right(int corner) {
      return place(right, rightPlaces, corner);
    }

    private Bounded place(Body body, Bounded[] places, int corner) {
      if (places[corner] == null) {
        places[corner] = new Bounded(body.at(travel.corners().get(corner)));
      }
      return places[corner];
    }
  }

  /** Of a spring or shock between frame and axle. */
  private Pair pair(Cylinder left) {
    return new Pair(left, left.mirrored(), Carrier.LINK);
  }

  /** Of a bracket on the axle. */
  private Pair pair(Capsule left) {
    return new Pair(left, left.mirrored(), Carrier.AXLE);
  }

  private void addTube() {
    AxleHousing axle = chassis.axle();
    double halfMm = axle.flangeToFlangeMm() / 2;
    Point3 centre = chassis.axleCentre();
    Capsule tube =
        new Capsule(
            new Point3(0, halfMm, centre.zMm()),
            new Point3(0, -halfMm, centre.zMm()),
            axle.tubeRadiusMm());
    add("axle tube", tube, Carrier.AXLE, MountPractice.TUBE_AIR_MM);
    add("axle's centre housing", chassis.housingShape(), Carrier.AXLE, MountPractice.MOVING_AIR_MM);
  }

  private void addRails() {
    Rails rails = chassis.rails();
    double frontMm = rails.frontMountsForwardMm();
    double halfMm = rails.flangeMm() / 2;
    Point3 atAxle =
        new Point3(0, rails.outerFaceMm(0) - halfMm, rails.undersideMm(0) + rails.depthMm() / 2);
    Point3 atFront =
        new Point3(
            frontMm,
            rails.outerFaceMm(frontMm) - halfMm,
            rails.undersideMm(frontMm) + rails.depthMm() / 2);
    addRail("left rail", atAxle, atAxle.to(atFront).normalized());
    addRail("right rail", atAxle.mirrored(), atAxle.to(atFront).normalized().mirrored());
  }

  /** A block along the rail, at its own slope and taper. */
  private void addRail(String name, Point3 middle, Vector3 along) {
    Vector3 upright = UP.minus(along.scaled(along.dot(UP))).normalized();
    Rails rails = chassis.rails();
    Box block =
        new Box(
            middle,
            RAIL_REACH_MM,
            rails.flangeMm() / 2,
            rails.depthMm() / 2,
            along,
            upright.cross(along),
            upright);
    add(name, block, Carrier.FRAME, MountPractice.MOVING_AIR_MM);
  }

  private void addTyres() {
    add("left tyre", chassis.tyreShape(true), Carrier.AXLE, MountPractice.TYRE_AIR_MM);
    add("right tyre", chassis.tyreShape(false), Carrier.AXLE, MountPractice.TYRE_AIR_MM);
  }

  private void addShaft() {
    Driveline driveline = chassis.driveline();
    double radiusMm =
        driveline.shaftDiameterMm().isPresent()
            ? driveline.shaftDiameterMm().getAsDouble() / 2
            : USUAL_SHAFT_RADIUS_MM;
    Capsule shaft = new Capsule(driveline.transmissionJoint(), driveline.pinionJoint(), radiusMm);
    add("driveshaft", shaft, Carrier.LINK, MountPractice.MOVING_AIR_MM);
  }

  /**
   * Something that a spring or shock on the left, or its twin on the right, comes too close to.
   *
   * @param left its envelope at ride, from its frame end to its axle end
   */
  public Optional<TightSpot> tight(Cylinder left) {
    Pair pair = pair(left);
    for (int i = 0; i < blockers.size(); i++) {
      Blocker blocker = blockers.get(i);
      if (isTight(blocker.places(), pair, blocker.airMm())) {
        askFirst(i);
        return Optional.of(
            new TightSpot(
                blocker.body().name(), () -> leastMm(blocker.places(), pair), blocker.airMm()));
      }
    }
    return Optional.empty();
  }

  /**
   * A bar or shaft that its bracket on the axle, or the twin on the right, comes too close to.
   *
   * @param left the bracket at ride
   */
  public Optional<TightSpot> tightBracket(Capsule left) {
    Pair pair = pair(left);
    for (Blocker blocker : blockers) {
      if (blocker.body().carrier().isBetween()
          && isTight(blocker.places(), pair, MountPractice.WELD_ROOM_MM)) {
        return Optional.of(
            new TightSpot(
                blocker.body().name() + " with its bracket on the axle",
                () -> leastMm(blocker.places(), pair),
                MountPractice.WELD_ROOM_MM));
      }
    }
    return Optional.empty();
  }

  /**
   * What was in the way here is likely to be in the way of the next place, so it is asked first.
   */
  private void askFirst(int index) {
    blockers.add(0, blockers.remove(index));
  }

  private static boolean isTight(List<Bounded> blocker, Pair pair, double airMm) {
    for (int corner = 0; corner < blocker.size(); corner++) {
      Bounded other = blocker.get(corner);
      if (other.isCloser(pair.left(corner), airMm) || other.isCloser(pair.right(corner), airMm)) {
        return true;
      }
    }
    return false;
  }

  private static double leastMm(List<Bounded> blocker, Pair pair) {
    double leastMm = Double.POSITIVE_INFINITY;
    for (int corner = 0; corner < blocker.size(); corner++) {
      Shape other = blocker.get(corner).shape();
      leastMm = Math.min(leastMm, Gap.between(pair.left(corner).shape(), other).gapMm());
      leastMm = Math.min(leastMm, Gap.between(pair.right(corner).shape(), other).gapMm());
    }
    return leastMm;
  }

  /**
   * Places along the left axle tube where a bracket can be welded beside those of the bars, the
   * outermost first.
   *
   * @param directionRad direction of the bracket from the tube's centre in side view
   * @param halfMm half the room along the tube that it takes
   * @param outerMm distance from the centre plane beyond which it may not reach
   * @param stepMm distance between places
   */
  public List<Double> placesAlongTube(
      double directionRad, double halfMm, double outerMm, double stepMm) {
    double mostMm = Math.min(outerMm, chassis.axle().outerLimitMm()) - halfMm;
    double leastMm = chassis.axle().innerLimitMm() + halfMm;
    List<Double> places = new ArrayList<>();
    for (double leftMm = mostMm; leftMm >= leastMm; leftMm -= stepMm) {
      if (isFree(directionRad, leftMm, halfMm)) {
        places.add(leftMm);
      }
    }
    return places;
  }

  private boolean isFree(double directionRad, double leftMm, double halfMm) {
    for (Bar bar : bars) {
      double offMm = Math.abs(leftMm - Math.abs(bar.axle().yMm()));
      if (offMm < halfMm + halfBracketMm(bar) + MountPractice.WELD_ROOM_MM
          && sharesRound(directionRad, bar)) {
        return false;
      }
      boolean overHousing = Math.abs(bar.axle().yMm()) < chassis.axle().innerLimitMm();
      double footMm = chassis.axle().innerLimitMm() + BRIDGE_FOOT_MM;
      if (bar.axle().zMm() > chassis.axleCentre().zMm()
          && overHousing
          && leftMm - halfMm < footMm) {
        return false;
      }
    }
    return true;
  }

  /** Whether two saddles in the same place along the tube would meet on its round. */
  private boolean sharesRound(double directionRad, Bar bar) {
    Point3 centre = chassis.axleCentre();
    double barRad = Math.atan2(bar.axle().zMm() - centre.zMm(), bar.axle().xMm() - centre.xMm());
    double apartRad = Math.abs(Math.IEEEremainder(directionRad - barRad, 2 * Math.PI));
    return apartRad < TubeBracket.USUAL_WRAP_RAD;
  }

  private static double halfBracketMm(Bar bar) {
    return bar.isAcross()
        ? bar.axleJoint().barrelRadiusMm() + BESIDE_BARREL_MM
        : bar.axleJoint().widthMm() / 2 + MountPractice.WELD_ROOM_MM;
  }
}
