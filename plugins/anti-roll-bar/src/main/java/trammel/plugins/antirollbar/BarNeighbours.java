package trammel.plugins.antirollbar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.mount.MountPractice;
import trammel.engine.checks.LayoutAnalysis;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Gap;
import trammel.engine.clearance.Shape;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.layout.Rails;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.BodyPose;

/** What stands round an anti-roll bar, over every pose of the axle. */
final class BarNeighbours {
  private static final double INCH_MM = 25.4;

  /** A bar's joint with the sides of its bracket and their bolt: common practice, no source. */
  private static final double BRACKET_MM = 0.75 * INCH_MM;

  /** A seat or tab at the end of a spring or shock reaches so far past it: common practice. */
  private static final double SEAT_MM = INCH_MM;

  /** How far behind the axle the rails are looked at (mm). */
  private static final double RAIL_REACH_MM = 36 * INCH_MM;

  /** A body, and where it is at each of the poses. */
  private record Neighbour(Body body, List<Shape> at, double airMm) {}

  private final List<AxlePose> poses;
  private final double axleUpMm;
  private final List<Neighbour> neighbours = new ArrayList<>();

  BarNeighbours(LayoutAnalysis analysis) {
    poses = analysis.envelope();
    Layout layout = analysis.layout();
    Chassis chassis = layout.chassis();
    axleUpMm = chassis.axleCentre().zMm();
    add(
        "the axle's centre housing",
        chassis.housingShape(),
        Carrier.AXLE,
        MountPractice.MOVING_AIR_MM);
    addRails(chassis.rails());
    layout.bars().forEach(bar -> addBar(bar, chassis.rails()));
    for (Body solid : layout.guide().solids()) {
      add(solid, MountPractice.MOVING_AIR_MM);
    }
    layout
        .springs()
        .forEach(one -> addMounted(one.name(), one.frame(), one.axle(), one.radiusMm()));
    layout
        .shocks()
        .forEach(one -> addMounted(one.name(), one.frame(), one.axle(), one.bodyRadiusMm()));
    add("left tyre", chassis.tyreShape(true), Carrier.AXLE, MountPractice.TYRE_AIR_MM);
    add("right tyre", chassis.tyreShape(false), Carrier.AXLE, MountPractice.TYRE_AIR_MM);
    for (Obstacle obstacle : chassis.obstacles()) {
      // Exhaust, floor and running boards are moved where they are in the way; the rest stays.
      if (obstacle.kind().holdsFuel() || obstacle.kind() == ObstacleKind.OTHER) {
        add(obstacle.name(), obstacle.shape(), Carrier.FRAME, MountPractice.MOVING_AIR_MM);
      }
    }
  }

  private void add(String name, Shape shape, Carrier carrier, double airMm) {
    add(new Body(name, shape, carrier), airMm);
  }

  private void add(Body body, double airMm) {
    neighbours.add(new Neighbour(body, poses.stream().map(body::at).toList(), airMm));
  }

  /** Level blocks of the rails behind the axle, at their height there. */
  private void addRails(Rails rails) {
    double outMm = Math.max(rails.outerFaceMm(0), rails.outerFaceMm(-RAIL_REACH_MM));
    double inMm = Math.min(rails.innerFaceMm(0), rails.innerFaceMm(-RAIL_REACH_MM));
    double lowMm = Math.min(rails.undersideMm(0), rails.undersideMm(-RAIL_REACH_MM));
    double topMm = Math.max(rails.topMm(0), rails.topMm(-RAIL_REACH_MM));
    Box left = Box.between(-RAIL_REACH_MM, 0, inMm, outMm, lowMm, topMm);
    Box right = Box.between(-RAIL_REACH_MM, 0, -outMm, -inMm, lowMm, topMm);
    add("the left rail", left, Carrier.FRAME, MountPractice.MOVING_AIR_MM);
    add("the right rail", right, Carrier.FRAME, MountPractice.MOVING_AIR_MM);
  }

  private void addBar(Bar bar, Rails rails) {
    double radiusMm = bar.tube().outsideDiameterMm() / 2;
    Capsule tube = new Capsule(bar.frame(), bar.axle(), radiusMm);
    add(bar.name(), tube, bar.carrier(), MountPractice.MOVING_AIR_MM);
    addBracket(
        "axle bracket of " + bar.name(),
        bar.axle(),
        bar.axleJoint().widthMm(),
        bar.axleJoint().barrelRadiusMm(),
        Carrier.on(bar.axleEnd().body()));
    addBracket(
        "frame bracket of " + bar.name(),
        bar.frame(),
        bar.frameJoint().widthMm(),
        bar.frameJoint().barrelRadiusMm(),
        Carrier.on(bar.frameEnd().body()));
    if (bar.axleEnd().body().equals(BodyPose.AXLE)) {
      addOnTube(
          "axle bracket of " + bar.name(),
          bar.axle(),
          bar.axleJoint().widthMm() / 2 + BRACKET_MM / 2);
    }
    if (bar.frameEnd().body().equals(BodyPose.FRAME)) {
      double side = bar.frame().yMm() < 0 ? -1 : 1;
      double xMm = bar.frame().xMm();
      double railMm = (rails.outerFaceMm(xMm) + rails.innerFaceMm(xMm)) / 2;
      Point3 onRail = new Point3(xMm, side * railMm, rails.undersideMm(xMm));
      if (onRail.distanceMm(bar.frame()) > 1) {
        add(
            "frame bracket of " + bar.name(),
            new Capsule(bar.frame(), onRail, bar.frameJoint().barrelRadiusMm()),
            Carrier.FRAME,
            MountPractice.WELD_ROOM_MM);
      }
    }
  }

  private void addBracket(
      String name, Point3 at, double widthMm, double radiusMm, Carrier carrier) {
    double halfMm = widthMm / 2 + BRACKET_MM;
    add(
        name,
        new Cylinder(
            new Point3(at.xMm(), at.yMm() - halfMm, at.zMm()),
            new Point3(at.xMm(), at.yMm() + halfMm, at.zMm()),
            radiusMm),
        carrier,
        MountPractice.WELD_ROOM_MM);
  }

  private void addMounted(String name, Point3 frame, Point3 axle, double radiusMm) {
    add(
        name,
        new Cylinder(frame, axle, radiusMm + MountPractice.MARGIN_MM),
        Carrier.LINK,
        MountPractice.MOVING_AIR_MM);
    addOnTube("the mount of " + name + " on the axle", axle, Math.max(SEAT_MM, radiusMm / 2));
  }

  /** What is welded on the axle tube for a point, from that to the tube. */
  private void addOnTube(String name, Point3 at, double radiusMm) {
    Point3 tube = new Point3(0, at.yMm(), axleUpMm);
    Point3 from = at.distanceMm(tube) > 1 ? at : new Point3(1, at.yMm(), axleUpMm);
    add(name, new Capsule(from, tube, radiusMm), Carrier.AXLE, MountPractice.WELD_ROOM_MM);
  }

  /** The name of something that the straight bar comes too close to. */
  Optional<String> bySpan(BarPlace place) {
    Point3 end = place.barEnd();
    return tight(
        List.of(
            new Body("bar", new Capsule(end, end.mirrored(), place.barMm() / 2), Carrier.AXLE)));
  }

  /** The name of something that an arm or a link of either side comes too close to. */
  Optional<String> byArms(BarPlace place) {
    Carrier swinging = new Carrier(BodyPose.AXLE, BodyPose.FRAME);
    List<Body> bodies = new ArrayList<>();
    for (boolean left : new boolean[] {true, false}) {
      Point3 barEnd = place.barEnd().onSide(left);
      Point3 armEnd = place.armEnd().onSide(left);
      bodies.add(new Body("arm", new Capsule(barEnd, armEnd, BarPlace.ARM_DEEP_MM / 2), swinging));
      bodies.add(
          new Body(
              "link",
              new Capsule(
                  place.linkBottom().onSide(left),
                  place.linkTop().onSide(left),
                  BarPlace.EYE_RADIUS_MM),
              Carrier.FRAME));
    }
    return tight(bodies);
  }

  /**
   * The name of something that a bearing with its bracket, all round the tube, comes too close to.
   */
  Optional<String> byBearing(BarPlace place) {
    double tubeMm = place.chassis().axle().tubeRadiusMm() + place.plateMm();
    double halfMm = place.plateMm() / 2;
    List<Body> bodies = new ArrayList<>();
    for (boolean left : new boolean[] {true, false}) {
      Point3 bearing = place.bearing().onSide(left);
      Point3 tube = new Point3(0, bearing.yMm(), axleUpMm);
      Box saddle =
          Box.between(
              -tubeMm,
              tubeMm,
              bearing.yMm() - halfMm,
              bearing.yMm() + halfMm,
              axleUpMm - tubeMm,
              axleUpMm + tubeMm / 2);
      Point3 root = tube.plus(tube.to(bearing).normalized().scaled(tubeMm));
      bodies.add(new Body("saddle", saddle, Carrier.AXLE));
      Vector3 along = tube.to(bearing).normalized();
      Point3 end = bearing.plus(along.scaled(place.noseMm()));
      Vector3 across = new Vector3(0, 1, 0);
      Box plate =
          new Box(
              root.midpoint(end),
              root.distanceMm(end) / 2,
              halfMm,
              place.noseMm(),
              along,
              across,
              along.cross(across));
      bodies.add(new Body("plate", plate, Carrier.AXLE));
      double shellMm = BarPlace.BEARING_LONG_MM / 2;
      Cylinder shell =
          new Cylinder(
              new Point3(bearing.xMm(), bearing.yMm() - shellMm, bearing.zMm()),
              new Point3(bearing.xMm(), bearing.yMm() + shellMm, bearing.zMm()),
              place.shellRadiusMm());
      bodies.add(new Body("shell", shell, Carrier.AXLE));
    }
    return tight(bodies);
  }

  private Optional<String> tight(List<Body> own) {
    for (int i = 0; i < poses.size(); i++) {
      for (Body body : own) {
        Shape shape = body.at(poses.get(i));
        for (Neighbour neighbour : neighbours) {
          boolean moves = i == 0 || !neighbour.body().carrier().equals(body.carrier());
          if (moves && Gap.isCloser(shape, neighbour.at().get(i), neighbour.airMm())) {
            return Optional.of(neighbour.body().name());
          }
        }
      }
    }
    return Optional.empty();
  }
}
