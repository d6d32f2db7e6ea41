package trammel.plugins.airspring;

import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.AirSpring;

/**
 * An air spring between its seats on the left, at ride.
 *
 * @param spring the air spring
 * @param frame middle of its upper seat (mm)
 * @param axle middle of its lower seat (mm)
 * @param loadN what it carries (N)
 * @param gaugeMPa pressure above the atmosphere that carries it (MPa)
 * @param rateNPerMm rate with the air shut in (N/mm)
 */
record AirSpringFit(
    AirSpring spring, Point3 frame, Point3 axle, double loadN, double gaugeMPa, double rateNPerMm) {

  /** Height between its seats (mm). */
  public double heightMm() {
    return frame.distanceMm(axle);
  }

  /** The room that it takes. */
  public Cylinder envelope() {
    return new Cylinder(frame, axle, spring.outsideRadiusMm());
  }

  /** The spring on the left as the layout keeps it. */
  public SpringUnit left() {
    return unit("spring-left", frame, axle);
  }

  /** Its twin on the right. */
  public SpringUnit right() {
    return unit("spring-right", frame.mirrored(), axle.mirrored());
  }

  private SpringUnit unit(String name, Point3 upper, Point3 lower) {
    return new SpringUnit(
        name,
        SpringKind.AIR,
        upper,
        lower,
        spring.outsideRadiusMm(),
        rateNPerMm,
        spring.size().leastHeightMm(),
        spring.size().mostHeightMm());
  }
}
