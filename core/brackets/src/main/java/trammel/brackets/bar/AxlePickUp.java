package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import trammel.brackets.UnworkableLayoutException;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Chassis;
import trammel.engine.quantity.Phrase;

/** Room about the axle tube for a joint on a bracket. */
public final class AxlePickUp {
  /** Least height of a bracket above ground, 4 in: common practice, no source. */
  private static final double GROUND_MM = 4 * 25.4;

  private AxlePickUp() {}

  /** Least distance of a joint from the axle's centre at which its bracket clears the tube (mm). */
  public static double clearOfTubeMm(JointSeat seat, Chassis chassis) {
    return chassis.axle().tubeRadiusMm() + seat.reachMm();
  }

  /** Greatest distance of a joint under the axle's centre that keeps its bracket up (mm). */
  public static double clearOfGroundMm(JointSeat seat, Chassis chassis) {
    return chassis.axleCentre().zMm() - seat.reachMm() - GROUND_MM;
  }

  /**
   * Accepts a pick-up point that is clear of the axle tube and of the ground.
   *
   * @param bar name of the bar
   * @param option the option that sets the distance
   * @throws UnworkableLayoutException if it is too close
   */
  public static Point3 checked(
      String bar, String option, Point3 point, JointSeat seat, Chassis chassis) {
    double foundMm =
        Math.hypot(
            point.xMm() - chassis.axleCentre().xMm(), point.zMm() - chassis.axleCentre().zMm());
    double neededMm = clearOfTubeMm(seat, chassis);
    if (!(foundMm >= neededMm - 1e-6)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the axle joint of {} is {} from the axle's centre; its bracket needs {}"
                  + " to clear the tube of {}. Set {} to that or more, or choose a joint"
                  + " with a smaller barrel.",
              bar,
              length(foundMm),
              length(neededMm),
              length(chassis.axle().tubeDiameterMm()),
              option));
    }
    double lowestMm = point.zMm() - seat.reachMm();
    if (!(lowestMm >= GROUND_MM)) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the axle bracket of {} would hang {} above the ground; it needs {} at"
                  + " least. Set {} smaller by {}.",
              bar,
              length(lowestMm),
              length(GROUND_MM),
              option,
              length(GROUND_MM - lowestMm)));
    }
    return point;
  }
}
