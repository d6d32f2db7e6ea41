package trammel.plugins.airspring;

import java.util.List;
import java.util.Optional;
import trammel.brackets.mount.MountStock;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Carrier;
import trammel.engine.clearance.Cylinder;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.SpringKind;
import trammel.engine.layout.SpringUnit;
import trammel.planning.catalog.AirSpring;

/**
 * An air spring between its seats on the left, at ride.
 *
 * @param spring the air spring
 * @param frame middle of its upper seat (mm)
 * @param axle middle of its lower seat (mm)
 * @param leftLoadN what it carries (N)
 * @param rightLoadN what its twin carries (N)
 */
record AirSpringFit(
    AirSpring spring, Point3 frame, Point3 axle, double leftLoadN, double rightLoadN) {

  /** Height between its seats (mm). */
  public double heightMm() {
    return frame.distanceMm(axle);
  }

  /** Pressure above the atmosphere of the one that carries more (MPa). */
  public double highestGaugeMPa() {
    return gaugeMPa(Math.max(leftLoadN, rightLoadN));
  }

  private double gaugeMPa(double loadN) {
    return spring.size().gaugeForLoadMPa(heightMm(), loadN);
  }

  /** The room that it takes. */
  public Cylinder envelope() {
    return new Cylinder(frame, axle, spring.outsideRadiusMm());
  }

  /** The spring, for what stands beside it. */
  Body body() {
    return new Body("spring", envelope(), Carrier.LINK);
  }

  /** Its lower seat and the arms under that. */
  List<Body> mounts(Chassis chassis, MountStock stock) {
    double plateMm = stock.plateMm();
    double diameterMm = AirSpringSeats.diameterMm(spring);
    Cylinder seat =
        new Cylinder(
            new Point3(axle.xMm(), axle.yMm(), axle.zMm() - plateMm), axle, diameterMm / 2);
    double halfMm = AirSpringSeats.armOffMm(diameterMm) + plateMm / 2;
    double farMm = axle.xMm() + Math.copySign(AirSpringSeats.armEdgeMm(diameterMm) / 2, axle.xMm());
    double middleMm = chassis.axleCentre().zMm();
    double underMm = axle.zMm() - plateMm;
    double radiusMm = chassis.axle().tubeRadiusMm();
    Box arms =
        Box.between(
            Math.min(0, farMm),
            Math.max(0, farMm),
            axle.yMm() - halfMm,
            axle.yMm() + halfMm,
            Math.min(underMm, middleMm - radiusMm / 2) - plateMm,
            Math.max(underMm, middleMm + radiusMm / 2));
    return List.of(
        new Body("seat of the spring", seat, Carrier.AXLE),
        new Body("arms of the spring's seat", arms, Carrier.AXLE));
  }

  /** The spring on the left as the layout keeps it. */
  public SpringUnit left() {
    return unit("spring-left", frame, axle, leftLoadN);
  }

  /** Its twin on the right. */
  public SpringUnit right() {
    return unit("spring-right", frame.mirrored(), axle.mirrored(), rightLoadN);
  }

  /** Its rate is that of the air shut in at its own pressure. */
  private SpringUnit unit(String name, Point3 upper, Point3 lower, double loadN) {
    return new SpringUnit(
        name,
        SpringKind.AIR,
        upper,
        lower,
        spring.outsideRadiusMm(),
        spring.size().rateNPerMm(heightMm(), gaugeMPa(loadN)),
        spring.size().leastHeightMm(),
        spring.size().mostHeightMm(),
        Optional.of(spring.rating()));
  }
}
