package trammel.engine.layout;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.motion.AxlePose;
import trammel.engine.quantity.Given;
import trammel.engine.springs.AntiRollBarSize;

/**
 * An anti-roll bar that turns in two bearings on the axle, its arms held up to the frame by two
 * upright links. It stands the same on both sides; points are those of the left. When both wheels
 * rise it turns in its bearings and does nothing; when one rises more it is twisted.
 *
 * <p>The arms are taken as level: what their swing shortens is left out.
 *
 * @param linkTop upper end of the link, on the frame, at ride
 * @param armEnd end of the arm, below it
 * @param barEnd where the arm leaves the bar
 * @param bearing middle of the bearing, on the bar's axis
 * @param size bar and arms
 */
public record AntiRollBar(
    Point3 linkTop, Point3 armEnd, Point3 barEnd, Point3 bearing, AntiRollBarSize size) {
  /** What loads its mounts is known by this name. */
  public static final String NAME = "anti-roll bar";

  private static final double UPRIGHT_MM = 0.01;

  public AntiRollBar {
    Objects.requireNonNull(size, "size");
    Given.positive("distance of the anti-roll bar's arm from the centre plane (mm)", armEnd.yMm());
    Given.positive("distance of its bearing from the centre plane (mm)", bearing.yMm());
    Given.positive("length of the anti-roll bar's link (mm)", linkTop.zMm() - armEnd.zMm());
    if (Math.hypot(linkTop.xMm() - armEnd.xMm(), linkTop.yMm() - armEnd.yMm()) > UPRIGHT_MM) {
      throw new IllegalArgumentException(
          "The anti-roll bar's link goes from "
              + armEnd
              + " to "
              + linkTop
              + "; at ride it must stand upright. Put its upper end above the arm's end.");
    }
  }

  /**
   * How much higher the left side is pushed up than the right, at the arm ends: what twists the bar
   * at a pose (mm).
   */
  public double twistMm(AxlePose pose) {
    return riseMm(pose, true) - riseMm(pose, false);
  }

  private double riseMm(AxlePose pose, boolean left) {
    Point3 top = linkTop.onSide(left);
    Point3 end = armEnd.onSide(left);
    return top.distanceMm(end) - top.distanceMm(pose.move(end));
  }

  /** Force along each link at a pose (N), 0 or more: one is pushed, the other pulled. */
  public double forceN(AxlePose pose) {
    return Math.abs(size.rateNPerMm() * twistMm(pose));
  }

  /** Force of a bearing on the axle for each newton along the links: the couple is the same. */
  public double bearingShare() {
    return armEnd.yMm() / bearing.yMm();
  }
}
