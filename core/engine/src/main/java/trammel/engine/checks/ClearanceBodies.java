package trammel.engine.checks;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Joint;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AntiRollBar;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Driveline;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.ShockUnit;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.engine.motion.BodyPose;

/**
 * What takes up room under a vehicle, and what of it is joined and so may touch.
 *
 * <p>Joined are:
 *
 * <ul>
 *   <li>a bar and the rail on the side of its frame joint, within a bracket's reach of that joint;
 *   <li>a bar and the axle tube, within a bracket's reach of its axle joint;
 *   <li>an arm or rocker with what it is pinned or bolted to, and a bar with the one that its joint
 *       is on, within a bracket's reach of it;
 *   <li>a spring or shock and the rail on its side, within a seat's reach of its upper mount;
 *   <li>springs and shocks with the axle tube, which a check of its own judges;
 *   <li>the axle tube with the rails over it, which a check of its own judges with the notch;
 *   <li>the driveshaft and the axle with its housing: between them is the pinion;
 *   <li>a coil spring and the shock that runs inside it;
 *   <li>an anti-roll bar with its arms and the axle tube, an arm with its link;
 *   <li>a tyre and the floor, which has a wheel house over it.
 * </ul>
 */
final class ClearanceBodies {
  private static final double INCH_MM = 25.4;

  /** What a bar's bracket reaches from its joint, 4 in: common practice, no source (mm). */
  private static final double BRACKET_MM = 4 * INCH_MM;

  /** What a seat or shock mount reaches along the spring, 2 in: common practice, no source (mm). */
  private static final double SEAT_MM = 2 * INCH_MM;

  /** Diameter of a driveshaft that is not measured, 3 1/2 in: from memory (mm). */
  private static final double USUAL_SHAFT_MM = 3.5 * INCH_MM;

  /**
   * Half the width of an anti-roll bar's arms and links, 1/2 in: common practice, no source (mm).
   */
  private static final double ANTI_ROLL_RADIUS_MM = INCH_MM / 2;

  private static final String TUBE = "axle tube";
  private static final String HOUSING = "axle's centre housing";
  private static final String SHAFT = "driveshaft";
  private static final String LEFT_TYRE = "left tyre";
  private static final String RIGHT_TYRE = "right tyre";

  private final Layout layout;
  private final Chassis chassis;
  private final List<Body> moving = new ArrayList<>();
  private Optional<Body> housing = Optional.empty();
  private final List<Body> leftRail;
  private final List<Body> rightRail;
  private final List<Body> staying = new ArrayList<>();
  private final List<Body> movedAway = new ArrayList<>();
  private final List<Body> fuel = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();

  ClearanceBodies(Layout layout) {
    this.layout = layout;
    chassis = layout.chassis();
    RailBlocks rails = new RailBlocks(chassis);
    leftRail = rails.of(true);
    rightRail = rails.of(false);
    addAxle();
    addBars();
    addSolids();
    addSprings();
    addShaft();
    layout.antiRollBar().ifPresent(this::addAntiRollBar);
    addObstacles();
  }

  /** What moves with the axle or hangs on it. */
  List<Body> moving() {
    return moving;
  }

  /** Both tyres. */
  List<Body> tyres() {
    return moving.stream()
        .filter(body -> body.name().equals(LEFT_TYRE) || body.name().equals(RIGHT_TYRE))
        .toList();
  }

  /** The centre housing, where it is measured; it is not among what moves. */
  Optional<Body> housing() {
    return housing;
  }

  /** The rails and what stays bolted to the frame. */
  List<Body> fixed() {
    List<Body> fixed = new ArrayList<>(leftRail);
    fixed.addAll(rightRail);
    fixed.addAll(staying);
    return fixed;
  }

  /** Fuel tanks and lines: nothing may strike them. */
  List<Body> fuel() {
    return fuel;
  }

  /** Exhaust, floor and running boards: where they are in the way, they are moved. */
  List<Body> movedAway() {
    return movedAway;
  }

  /** What may touch. */
  List<Joint> joints() {
    return joints;
  }

  private void addObstacles() {
    Set<String> names = new HashSet<>();
    for (Obstacle obstacle : chassis.obstacles()) {
      String name = "the " + obstacle.name();
      while (!names.add(name)) {
        name = name + ", another";
      }
      Body body = new Body(name, obstacle.shape(), Carrier.FRAME);
      groupOf(obstacle.kind()).add(body);
      if (obstacle.kind() == ObstacleKind.BED_FLOOR) {
        joints.add(Joint.whole(LEFT_TYRE, name));
        joints.add(Joint.whole(RIGHT_TYRE, name));
      }
    }
  }

  private List<Body> groupOf(ObstacleKind kind) {
    if (kind.holdsFuel()) {
      return fuel;
    }
    return kind == ObstacleKind.OTHER ? staying : movedAway;
  }

  private void addAxle() {
    double upMm = chassis.axleCentre().zMm();
    double radiusMm = chassis.axle().tubeRadiusMm();
    double halfMm = Math.max(1, chassis.axle().flangeToFlangeMm() / 2 - radiusMm);
    Capsule tube = new Capsule(new Point3(0, halfMm, upMm), new Point3(0, -halfMm, upMm), radiusMm);
    moving.add(new Body(TUBE, tube, Carrier.AXLE));
    joinToRails(TUBE, leftRail, Double.POSITIVE_INFINITY);
    joinToRails(TUBE, rightRail, Double.POSITIVE_INFINITY);
    addHousing();
    moving.add(new Body(LEFT_TYRE, chassis.tyreShape(true), Carrier.AXLE));
    moving.add(new Body(RIGHT_TYRE, chassis.tyreShape(false), Carrier.AXLE));
  }

  private void addHousing() {
    housing = Optional.of(new Body(HOUSING, chassis.housingShape(), Carrier.AXLE));
    joints.add(Joint.whole(SHAFT, HOUSING));
  }

  private void addBars() {
    for (Bar bar : layout.bars()) {
      Capsule tube = new Capsule(bar.frame(), bar.axle(), bar.tube().outsideDiameterMm() / 2);
      moving.add(new Body(bar.name(), tube, bar.carrier()));
      joints.add(Joint.atAxleEnd(bar.name(), TUBE, BRACKET_MM));
      joinToRails(bar.name(), railAt(bar.frame()), BRACKET_MM);
    }
  }

  /** Arms and rockers; each is bolted or pinned to what carries it. */
  private void addSolids() {
    for (Body solid : layout.guide().solids()) {
      moving.add(solid);
      String carrier = solid.carrier().to();
      if (isOn(carrier, BodyPose.AXLE)) {
        joints.add(Joint.whole(solid.name(), TUBE));
        joints.add(Joint.whole(solid.name(), HOUSING));
      }
      if (isOn(carrier, BodyPose.FRAME)) {
        joinToRails(solid.name(), leftRail, Double.POSITIVE_INFINITY);
        joinToRails(solid.name(), rightRail, Double.POSITIVE_INFINITY);
      }
      for (Bar bar : layout.bars()) {
        if (bar.axleEnd().body().equals(carrier)) {
          joints.add(Joint.atAxleEnd(bar.name(), solid.name(), BRACKET_MM));
        } else if (bar.frameEnd().body().equals(carrier)) {
          joints.add(Joint.atFrameEnd(bar.name(), solid.name(), BRACKET_MM));
        }
      }
    }
  }

  /** Whether a body is another one, or has its pivot on it. */
  private boolean isOn(String body, String other) {
    return body.equals(other)
        || layout.guide().bodies().stream()
            .anyMatch(one -> one.name().equals(body) && one.pivot().on().equals(other));
  }

  private void addSprings() {
    for (SpringUnit spring : layout.springs()) {
      Cylinder shape = new Cylinder(spring.frame(), spring.axle(), spring.radiusMm());
      addMounted(spring.name(), shape, spring.frame());
    }
    for (ShockUnit shock : layout.shocks()) {
      Cylinder shape = new Cylinder(shock.frame(), shock.axle(), shock.bodyRadiusMm());
      addMounted(shock.name(), shape, shock.frame());
      for (SpringUnit spring : layout.springs()) {
        if (isInside(shock, spring)) {
          joints.add(Joint.whole(shock.name(), spring.name()));
        }
      }
    }
  }

  private static boolean isInside(ShockUnit shock, SpringUnit spring) {
    return spring.kind() == SpringKind.COIL
        && spring.frame().distanceMm(shock.frame()) < spring.radiusMm()
        && spring.axle().distanceMm(shock.axle()) < spring.radiusMm();
  }

  private void addMounted(String name, Cylinder shape, Point3 frame) {
    moving.add(new Body(name, shape, Carrier.LINK));
    joints.add(Joint.whole(name, TUBE));
    joinToRails(name, railAt(frame), SEAT_MM);
  }

  private void addShaft() {
    Driveline driveline = chassis.driveline();
    double radiusMm = driveline.shaftDiameterMm().orElse(USUAL_SHAFT_MM) / 2;
    Capsule shape = new Capsule(driveline.transmissionJoint(), driveline.pinionJoint(), radiusMm);
    moving.add(new Body(SHAFT, shape, Carrier.LINK));
    joints.add(Joint.whole(SHAFT, TUBE));
  }

  /**
   * The bar moves with the axle; its arms swing between it and the links, which hang on the frame.
   */
  private void addAntiRollBar(AntiRollBar bar) {
    double radiusMm = bar.size().outsideMm() / 2;
    String across = "anti-roll bar";
    moving.add(
        new Body(
            across, new Capsule(bar.barEnd(), bar.barEnd().mirrored(), radiusMm), Carrier.AXLE));
    for (boolean left : new boolean[] {true, false}) {
      String side = left ? "left" : "right";
      Point3 barEnd = bar.barEnd().onSide(left);
      Point3 armEnd = bar.armEnd().onSide(left);
      Point3 linkTop = bar.linkTop().onSide(left);
      String arm = side + " anti-roll bar arm";
      String link = side + " anti-roll bar link";
      moving.add(
          new Body(
              arm,
              new Capsule(barEnd, armEnd, ANTI_ROLL_RADIUS_MM),
              new Carrier(BodyPose.AXLE, BodyPose.FRAME)));
      staying.add(new Body(link, new Capsule(armEnd, linkTop, ANTI_ROLL_RADIUS_MM), Carrier.FRAME));
      joints.add(Joint.whole(arm, across));
      joints.add(Joint.whole(arm, link));
      joints.add(Joint.whole(arm, TUBE));
    }
  }

  private List<Body> railAt(Point3 frame) {
    return frame.yMm() < 0 ? rightRail : leftRail;
  }

  private void joinToRails(String name, List<Body> rail, double reachMm) {
    for (Body block : rail) {
      joints.add(
          Double.isInfinite(reachMm)
              ? Joint.whole(name, block.name())
              : Joint.atFrameEnd(name, block.name(), reachMm));
    }
  }
}
