package trammel.plugins.torquearm;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.UnworkableLayoutException;
import trammel.brackets.bar.BarPlane;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.bar.Mounting;
import trammel.engine.clearance.Body;
import trammel.engine.clearance.Capsule;
import trammel.engine.clearance.Carrier;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;

/** Where the arm runs, and the room that it takes. */
final class ArmRoom {
  /** Kept between the welds of neighbouring brackets, 1/4 in: common practice, no source. */
  private static final double WELD_ROOM_MM = 25.4 / 4;

  private ArmRoom() {}

  /**
   * How far from the centre plane the arm's middle runs: beside the centre housing (mm).
   *
   * @throws UnworkableLayoutException if the brackets of bars between the rails leave no room
   */
  static double besideHousingMm(Chassis chassis, JointSeat eye, BarPlane bars, double halfBarMm) {
    double middleMm = chassis.axle().innerLimitMm() + WELD_ROOM_MM + eye.stackMm() / 2;
    double outsideMm = middleMm + eye.stackMm() / 2;
    double barsMm = bars.leftMm() - halfBarMm - WELD_ROOM_MM;
    if (bars.mounting() == Mounting.INBOARD && outsideMm > barsMm) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the arm reaches {} from the centre plane beside the centre housing; the"
                  + " brackets of the lower bars begin at {}, so {} is missing. Choose"
                  + " mounting: outboard, or an axle_end with a narrower sleeve.",
              length(outsideMm),
              length(barsMm),
              length(outsideMm - barsMm)));
    }
    return middleMm;
  }

  /** The arm as it takes up room, from its tube to its eye; it moves with the axle. */
  static Body of(Chassis chassis, Bar link) {
    Point3 eye = link.axle();
    Point3 root = new Point3(chassis.axleCentre().xMm(), eye.yMm(), chassis.axleCentre().zMm());
    double halfMm = Math.max(chassis.axle().tubeRadiusMm(), link.axleJoint().widthMm() / 2);
    return new Body("torque arm", new Capsule(root, eye, halfMm), Carrier.AXLE);
  }
}
