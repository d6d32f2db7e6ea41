package trammel.plugins.wattslinkage;

import java.util.List;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Box;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.AxleHousing;
import trammel.engine.layout.Chassis;

/**
 * What rocker and carrier take of the room behind the axle, as simple forms.
 *
 * @param form their sizes
 * @param chassis the vehicle
 * @param pivot the rocker's pivot at ride
 * @param armMm from the pivot to the joint of each link
 */
record RockerBodies(RockerForm form, Chassis chassis, Point3 pivot, double armMm) {

  List<Body> all() {
    double outMm = form.armOutMm(chassis.axle());
    double landMm = form.landRadiusMm();
    double lowMm = Math.min(pivot.zMm(), chassis.axleCentre().zMm()) - landMm;
    double highMm = Math.max(pivot.zMm(), chassis.axleCentre().zMm()) + landMm;
    double besideMm = form.spacerOutMm();
    return List.of(
        new Body(
            Rocker.NAME,
            new Capsule(at(0, 0, armMm), at(0, 0, -armMm), form.tipMm()),
            Carrier.on(Rocker.NAME)),
        new Body(
            "rocker carrier plate",
            wall(form.apartMm() / 2, Math.max(outMm, besideMm) + landMm, lowMm, highMm),
            Carrier.AXLE),
        new Body(
            "rocker strap",
            wall(-form.gripMm() / 2, besideMm + landMm, pivot.zMm() - landMm, pivot.zMm() + landMm),
            Carrier.AXLE),
        arm("rocker carrier arm, left", outMm),
        arm("rocker carrier arm, right", -outMm),
        spacer("rocker spacer, left", besideMm),
        spacer("rocker spacer, right", -besideMm));
  }

  private Point3 at(double xMm, double yMm, double zMm) {
    return new Point3(pivot.xMm() + xMm, pivot.yMm() + yMm, pivot.zMm() + zMm);
  }

  private Box wall(double fromMm, double halfMm, double lowMm, double highMm) {
    return Box.between(
        pivot.xMm() + fromMm,
        pivot.xMm() + fromMm + form.seat().plateMm(),
        -halfMm,
        halfMm,
        lowMm,
        highMm);
  }

  /** From the axle tube's surface to the carrier plate, its ends rounded off inside both. */
  private Body arm(String name, double leftMm) {
    AxleHousing axle = chassis.axle();
    double upMm = chassis.axleCentre().zMm();
    double radiusMm = form.tubeRadiusMm();
    double rearMm = pivot.xMm() + form.gripMm() / 2;
    double frontMm = Math.max(-axle.tubeRadiusMm(), rearMm);
    return new Body(
        name,
        new Capsule(new Point3(frontMm, leftMm, upMm), new Point3(rearMm, leftMm, upMm), radiusMm),
        Carrier.AXLE);
  }

  private Body spacer(String name, double leftMm) {
    double halfMm = form.apartMm() / 2 - form.tubeRadiusMm();
    return new Body(
        name,
        new Capsule(
            at(Math.max(0, halfMm), leftMm, 0),
            at(-Math.max(0, halfMm), leftMm, 0),
            form.tubeRadiusMm()),
        Carrier.AXLE);
  }
}
