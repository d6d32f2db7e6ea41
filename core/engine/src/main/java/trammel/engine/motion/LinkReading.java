package trammel.engine.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import trammel.engine.geometry.Vector3;

/**
 * A link at one pose.
 *
 * @param name name of the link
 * @param lengthMm distance between its pivots (mm)
 * @param stretchMm length less length at ride: what the bushings give (mm)
 * @param bindForceN force of that stretch along the link, pull positive (N)
 * @param axleToFrame unit vector from the axle pivot to the frame pivot
 * @param turnInFrameRad turn of the link against the frame since ride: what the frame joint must
 *     allow (rad)
 * @param turnInAxleRad turn of the link against the axle since ride: what the axle joint must allow
 *     (rad)
 */
public record LinkReading(
    String name,
    double lengthMm,
    double stretchMm,
    double bindForceN,
    Vector3 axleToFrame,
    double turnInFrameRad,
    double turnInAxleRad) {

  /** A view in which the link is shorter than this shows no angle (mm). */
  private static final double SHORTEST_VIEW_MM = 0.1;

  /** Readings of all links of a linkage, in its order. */
  public static List<LinkReading> of(Linkage linkage, AxlePose pose) {
    Placement placement = pose.placement();
    List<LinkReading> readings = new ArrayList<>(linkage.links().size());
    for (Link link : linkage.links()) {
      readings.add(of(link, placement));
    }
    return readings;
  }

  private static LinkReading of(Link link, Placement placement) {
    Vector3 now = placement.move(link.axle()).to(link.frame());
    Vector3 atRide = link.axleToFrame();
    double lengthMm = now.norm();
    double stretchMm = lengthMm - link.lengthMm();
    return new LinkReading(
        link.name(),
        lengthMm,
        stretchMm,
        stretchMm * link.stiffnessNPerMm(),
        now.normalized(),
        now.angleToRad(atRide),
        placement.turnBack(now).angleToRad(atRide));
  }

  /** Rise to the front in side view (rad); empty if the link shows no length in that view. */
  public OptionalDouble sideViewRad() {
    return inView(axleToFrame.x(), axleToFrame.z(), axleToFrame.sideViewRad());
  }

  /** Turn to the left in plan view (rad); empty if the link shows no length in that view. */
  public OptionalDouble planViewRad() {
    return inView(axleToFrame.x(), axleToFrame.y(), axleToFrame.planViewRad());
  }

  /** True angle above the ground plane (rad). */
  public double elevationRad() {
    return axleToFrame.elevationRad();
  }

  private OptionalDouble inView(double across, double up, double angleRad) {
    return lengthMm * Math.sqrt(across * across + up * up) < SHORTEST_VIEW_MM
        ? OptionalDouble.empty()
        : OptionalDouble.of(angleRad);
  }
}
