package trammel.plugins.limitingstraps;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.mount.MountPractice;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.Cylinder;
import trammel.engine.clearance.Gap;
import trammel.engine.clearance.Shape;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Layout;
import trammel.engine.layout.Obstacle;
import trammel.engine.layout.ObstacleKind;
import trammel.engine.motion.AxlePose;

/** What stands round the straps, over every pose of the axle. */
final class StrapNeighbours {
  /** A bar's joint with the sides of its bracket and their bolt: common practice, no source. */
  private static final double BRACKET_MM = 25.4;

  private final List<AxlePose> poses;
  private final List<Body> bodies = new ArrayList<>();

  StrapNeighbours(Layout layout, List<AxlePose> poses) {
    this.poses = poses;
    for (Bar bar : layout.bars()) {
      double radiusMm = bar.tube().outsideDiameterMm() / 2;
      add(bar.name(), new Capsule(bar.frame(), bar.axle(), radiusMm), bar.carrier());
      double halfMm = bar.axleJoint().widthMm() / 2 + BRACKET_MM;
      Point3 at = bar.axle();
      add(
          "axle bracket of " + bar.name(),
          new Capsule(
              new Point3(at.xMm(), at.yMm() - halfMm, at.zMm()),
              new Point3(at.xMm(), at.yMm() + halfMm, at.zMm()),
              bar.axleJoint().barrelRadiusMm()),
          Carrier.on(bar.axleEnd().body()));
    }
    layout
        .springs()
        .forEach(
            one ->
                add(
                    one.name(),
                    new Cylinder(one.frame(), one.axle(), one.radiusMm()),
                    Carrier.LINK));
    layout
        .shocks()
        .forEach(
            one ->
                add(
                    one.name(),
                    new Cylinder(one.frame(), one.axle(), one.bodyRadiusMm()),
                    Carrier.LINK));
    add("left tyre", layout.chassis().tyreShape(true), Carrier.AXLE);
    add("right tyre", layout.chassis().tyreShape(false), Carrier.AXLE);
    for (Obstacle obstacle : layout.chassis().obstacles()) {
      // The floor is relieved over the axle; straps and tabs stay below the rails' top at ride.
      if (obstacle.kind() != ObstacleKind.BED_FLOOR) {
        add(obstacle.name(), obstacle.shape(), Carrier.FRAME);
      }
    }
  }

  private void add(String name, Shape shape, Carrier carrier) {
    bodies.add(new Body(name, shape, carrier));
  }

  /** The name of something that a strap of either side comes too close to. */
  Optional<String> tight(StrapPlace place) {
    Capsule left = new Capsule(place.upper(), place.lower(), StrapPlace.WIDTH_MM / 2);
    Body leftStrap = new Body("left strap", left, Carrier.LINK);
    Body rightStrap = new Body("right strap", left.mirrored(), Carrier.LINK);
    for (Body body : bodies) {
      double airMm =
          body.name().endsWith(" tyre") ? MountPractice.TYRE_AIR_MM : MountPractice.MOVING_AIR_MM;
      for (AxlePose pose : poses) {
        Shape other = body.at(pose);
        if (Gap.isCloser(leftStrap.at(pose), other, airMm)
            || Gap.isCloser(rightStrap.at(pose), other, airMm)) {
          return Optional.of(body.name());
        }
      }
    }
    return Optional.empty();
  }
}
