package trammel.engine.checks;

import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Rails;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * Upright gap between the top of the axle tube and the underside of the rails over it, notch
 * counted.
 */
public final class RailGap {
  private RailGap() {}

  /**
   * The gap at one pose, the closer side (mm); negative when tube and rail would overlap.
   *
   * @param chassis the chassis with its rails
   * @param pose where the axle is
   */
  public static double gapMm(Chassis chassis, AxlePose pose) {
    Placement placement = pose.placement();
    return Math.min(
        gapMm(chassis, placement, chassis.rails().innerFaceMm(0)),
        Math.min(
            gapMm(chassis, placement, chassis.rails().outerFaceMm(0)),
            Math.min(
                gapMm(chassis, placement, -chassis.rails().innerFaceMm(0)),
                gapMm(chassis, placement, -chassis.rails().outerFaceMm(0)))));
  }

  private static double gapMm(Chassis chassis, Placement placement, double leftMm) {
    AxleHousing axle = chassis.axle();
    Rails rails = chassis.rails();
    Point3 tube = placement.move(new Point3(0, leftMm, chassis.tyre().loadedRadiusMm()));
    double undersideMm = rails.undersideMm(tube.xMm()) + rails.notchDepthMm();
    return undersideMm - tube.zMm() - axle.tubeRadiusMm();
  }

  /** The least gap over every pose that the wheels can take within the travel (mm). */
  public static double leastMm(LayoutAnalysis analysis) {
    double least = Double.POSITIVE_INFINITY;
    for (AxlePose pose : analysis.envelope()) {
      least = Math.min(least, gapMm(analysis.layout().chassis(), pose));
    }
    return least;
  }
}
