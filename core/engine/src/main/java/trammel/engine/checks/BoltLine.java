package trammel.engine.checks;

import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Bar;
import trammel.engine.motion.Placement;

/**
 * How far the two joints of a bar are tilted from their bolts. At ride both bolts lie level and
 * square to the bar, as its brackets are made. A bar swings about its bolts without end; what a
 * joint must allow is the angle between its bolt and its barrel. The bar turns about its own length
 * until its two barrels, which lie alike, are tilted alike.
 */
final class BoltLine {
  private static final Vector3 UP = new Vector3(0, 0, 1);

  /** A bar this close to upright has its bolts across the vehicle (sine of the angle). */
  private static final double UPRIGHT = 1e-3;

  private final Bar bar;
  private final Vector3 atRide;

  BoltLine(Bar bar) {
    this.bar = bar;
    Vector3 level = bar.axle().to(bar.frame()).normalized().cross(UP);
    atRide = level.norm() < UPRIGHT ? new Vector3(0, 1, 0) : level.normalized();
  }

  /** Tilt of the joint at the frame and of the joint at the axle (rad), in this order. */
  double[] tiltsRad(Placement placement) {
    Placement frame = placement.of(bar.frameEnd().body());
    Placement axle = placement.of(bar.axleEnd().body());
    Vector3 along = axle.move(bar.axle()).to(frame.move(bar.frame())).normalized();
    Vector3 boltOnFrame = frame.turn(atRide);
    Vector3 boltOnAxle = axle.turn(atRide);
    Vector3 middle = boltOnFrame.plus(boltOnAxle);
    Vector3 barrel = middle.plus(along.scaled(-middle.dot(along)));
    return new double[] {barrel.angleToLineRad(boltOnFrame), barrel.angleToLineRad(boltOnAxle)};
  }
}
