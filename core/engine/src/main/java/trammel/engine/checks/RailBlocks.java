package trammel.engine.checks;

import java.util.ArrayList;
import java.util.List;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;

/**
 * The frame rails as blocks that follow their slope and their taper. A notch divides a rail into
 * the run behind it, the run ahead of it and what is left over it.
 */
final class RailBlocks {
  /** How far the straight run goes on behind the axle (mm), 36 in: from memory. */
  private static final double BEHIND_MM = 36 * 25.4;

  /** How far it goes on ahead of the front mounts (mm), 12 in: from memory. */
  private static final double AHEAD_MM = 12 * 25.4;

  private final Chassis chassis;
  private final Rails rails;

  RailBlocks(Chassis chassis) {
    this.chassis = chassis;
    rails = chassis.rails();
  }

  /** The blocks of one rail; all their names begin with the rail's. */
  List<Body> of(boolean left) {
    String name = left ? "left rail" : "right rail";
    double rearMm = -BEHIND_MM;
    double frontMm = rails.frontMountsForwardMm() + AHEAD_MM;
    List<Body> blocks = new ArrayList<>(3);
    if (rails.notchDepthMm() > 0) {
      double halfMm = notchHalfLengthMm();
      add(blocks, name + " behind the notch", left, rearMm, -halfMm, 0);
      add(blocks, name + " over the notch", left, -halfMm, halfMm, rails.notchDepthMm());
      add(blocks, name, left, halfMm, frontMm, 0);
    } else {
      add(blocks, name, left, rearMm, frontMm, 0);
    }
    return blocks;
  }

  /**
   * Half the length of the notch's opening: an arc about the axle tube that leaves the room which
   * the notch leaves over it, with straight flanks if the notch is deeper than that.
   */
  private double notchHalfLengthMm() {
    double overTubeMm =
        rails.undersideMm(0)
            + rails.notchDepthMm()
            - chassis.axleCentre().zMm()
            - chassis.travel().bumpMm();
    double radiusMm = Math.max(overTubeMm, chassis.axle().tubeRadiusMm());
    double belowMm = Math.max(0, radiusMm - rails.notchDepthMm());
    return Math.sqrt(radiusMm * radiusMm - belowMm * belowMm);
  }

  private void add(
      List<Body> blocks, String name, boolean left, double rearMm, double frontMm, double cutMm) {
    blocks.add(new Body(name, block(left ? 1 : -1, rearMm, frontMm, cutMm), Carrier.FRAME));
  }

  private Box block(int side, double rearMm, double frontMm, double cutMm) {
    Point3 rear = middle(side, rearMm, cutMm);
    Point3 front = middle(side, frontMm, cutMm);
    Vector3 lengthwise = rear.to(front).normalized();
    Vector3 crosswise = new Vector3(-lengthwise.y(), lengthwise.x(), 0).normalized();
    return new Box(
        middle(side, (rearMm + frontMm) / 2, cutMm),
        rear.distanceMm(front) / 2,
        rails.flangeMm() / 2,
        (rails.depthMm() - cutMm) / 2,
        lengthwise,
        crosswise,
        lengthwise.cross(crosswise));
  }

  private Point3 middle(int side, double forwardMm, double cutMm) {
    return new Point3(
        forwardMm,
        side * (rails.outerFaceMm(forwardMm) - rails.flangeMm() / 2),
        rails.undersideMm(forwardMm) + (rails.depthMm() + cutMm) / 2);
  }
}
