package trammel.brackets.mount;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleSupplier;
import trammel.brackets.bar.JointSeat;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Gap;
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
import trammel.engine.motion.AxlePose;
import trammel.trade.plates.TubeBracket;

/** What stands round the axle, and how close a spring or shock comes to it over the travel. */
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

  private record Blocker(Body body, double airMm) {}

  private final Chassis chassis;
  private final List<Bar> bars;
  private final AxleTravel travel;
  private final List<Blocker> blockers = new ArrayList<>();
  private final List<Body> besideBrackets = new ArrayList<>();
  private final List<Box> onTheRails = new ArrayList<>();

  public MountRoom(Chassis chassis, AxleGuide guide, AxleTravel travel) {
    this.chassis = chassis;
    bars = guide.bars();
    this.travel = travel;
    addTube();
    for (Bar bar : bars) {
      Capsule capsule = new Capsule(bar.frame(), bar.axle(), bar.tube().outsideDiameterMm() / 2);
      add(bar.name(), capsule, bar.carrier(), MountPractice.MOVING_AIR_MM);
      frameBracket(bar).ifPresent(onTheRails::add);
    }
    for (Body solid : guide.solids()) {
      blockers.add(new Blocker(solid, MountPractice.MOVING_AIR_MM));
    }
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

  /** Takes another spring or shock, or a part of its mount, into account. */
  public void add(Body other) {
    blockers.add(new Blocker(other, MountPractice.MOVING_AIR_MM));
    if (!other.carrier().isBetween()) {
      besideBrackets.add(other);
    }
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
   * Whether a spring or shock on the left and its bracket on the axle, and their twins, are clear
   * of the mounts of others on the axle and of the bars' frame brackets.
   */
  public boolean isClearOfBrackets(Cylinder left, Capsule bracket) {
    Body leftBody = new Body("left", left, Carrier.LINK);
    Body leftBracket = new Body("left", bracket, Carrier.AXLE);
    Body rightBody =
        new Body(
            "right",
            new Cylinder(left.from().mirrored(), left.to().mirrored(), left.radiusMm()),
            Carrier.LINK);
    Body rightBracket =
        new Body(
            "right",
            new Capsule(bracket.from().mirrored(), bracket.to().mirrored(), bracket.radiusMm()),
            Carrier.AXLE);
    for (Body mount : besideBrackets) {
      if (isTight(mount, leftBracket, rightBracket, BESIDE_PLATES_MM)) {
        return false;
      }
    }
    for (Box onRail : onTheRails) {
      Body still = new Body("frame bracket", onRail, Carrier.FRAME);
      if (isTight(still, leftBody, rightBody, MountPractice.WELD_ROOM_MM)
          || isTight(still, leftBracket, rightBracket, MountPractice.WELD_ROOM_MM)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether what is welded in from rail to rail is clear of the bars' frame brackets, and over the
   * travel of all that moves.
   */
  public boolean isFreeOnFrame(List<Box> carrier) {
    for (Box part : carrier) {
      for (Box bracket : onTheRails) {
        if (Gap.isCloser(part, bracket, MountPractice.WELD_ROOM_MM)) {
          return false;
        }
      }
      for (Blocker blocker : blockers) {
        boolean aRail = blocker.body().carrier().isStill() && !isMount(blocker.body());
        if (!aRail && meets(part, blocker.body())) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean isMount(Body body) {
    return besideBrackets.contains(body);
  }

  private boolean meets(Box still, Body moving) {
    return travel.corners().stream()
        .anyMatch(pose -> Gap.isCloser(still, moving.at(pose), MountPractice.WELD_ROOM_MM));
  }

  private void add(
      String name, trammel.engine.clearance.Shape shape, Carrier carrier, double airMm) {
    blockers.add(new Blocker(new Body(name, shape, carrier), airMm));
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
    addHousing(axle.takenHousingRadiusMm());
  }

  private void addHousing(double radiusMm) {
    double halfMm = chassis.axle().innerLimitMm();
    double upMm = chassis.axleCentre().zMm();
    Cylinder housing =
        new Cylinder(new Point3(0, halfMm, upMm), new Point3(0, -halfMm, upMm), radiusMm);
    add("axle's centre housing", housing, Carrier.AXLE, MountPractice.MOVING_AIR_MM);
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
    double middleMm = chassis.axle().trackMm() / 2;
    double halfMm = chassis.tyre().widthMm() / 2;
    double upMm = chassis.tyre().loadedRadiusMm();
    Cylinder left =
        new Cylinder(
            new Point3(0, middleMm - halfMm, upMm),
            new Point3(0, middleMm + halfMm, upMm),
            chassis.tyre().freeRadiusMm());
    Cylinder right = new Cylinder(left.from().mirrored(), left.to().mirrored(), left.radiusMm());
    add("left tyre", left, Carrier.AXLE, MountPractice.TYRE_AIR_MM);
    add("right tyre", right, Carrier.AXLE, MountPractice.TYRE_AIR_MM);
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
    Cylinder right = new Cylinder(left.from().mirrored(), left.to().mirrored(), left.radiusMm());
    Body leftBody = new Body("left", left, Carrier.LINK);
    Body rightBody = new Body("right", right, Carrier.LINK);
    for (int i = 0; i < blockers.size(); i++) {
      Blocker blocker = blockers.get(i);
      if (isTight(blocker.body(), leftBody, rightBody, blocker.airMm())) {
        askFirst(i);
        return Optional.of(
            new TightSpot(
                blocker.body().name(),
                new DoubleSupplier() {
                  @Override
                  public double getAsDouble() {
                    return leastMm(blocker.body(), leftBody, rightBody);
                  }
                },
                blocker.airMm()));
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
    Capsule right = new Capsule(left.from().mirrored(), left.to().mirrored(), left.radiusMm());
    Body leftBody = new Body("left", left, Carrier.AXLE);
    Body rightBody = new Body("right", right, Carrier.AXLE);
    for (Blocker blocker : blockers) {
      if (blocker.body().carrier().isBetween()
          && isTight(blocker.body(), leftBody, rightBody, MountPractice.WELD_ROOM_MM)) {
        return Optional.of(
            new TightSpot(
                blocker.body().name() + " with its bracket on the axle",
                new DoubleSupplier() {
                  @Override
                  public double getAsDouble() {
                    return leastMm(blocker.body(), leftBody, rightBody);
                  }
                },
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

  private boolean isTight(Body blocker, Body left, Body right, double airMm) {
    for (AxlePose pose : travel.corners()) {
      trammel.engine.clearance.Shape other = blocker.at(pose);
      if (Gap.isCloser(left.at(pose), other, airMm) || Gap.isCloser(right.at(pose), other, airMm)) {
        return true;
      }
    }
    return false;
  }

  private double leastMm(Body blocker, Body left, Body right) {
    double leastMm = Double.POSITIVE_INFINITY;
    for (AxlePose pose : travel.corners()) {
      trammel.engine.clearance.Shape other = blocker.at(pose);
      leastMm = Math.min(leastMm, Gap.between(left.at(pose), other).gapMm());
      leastMm = Math.min(leastMm, Gap.between(right.at(pose), other).gapMm());
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
