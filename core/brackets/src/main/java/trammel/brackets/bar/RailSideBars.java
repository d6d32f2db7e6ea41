package trammel.brackets.bar;

import java.util.List;
import java.util.Set;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Bar;
import trammel.engine.layout.Chassis;
import trammel.engine.layout.Duty;

/**
 * Places bars that run straight along the rails, each in its plane beside its rail, from over or
 * under the axle to the front.
 *
 * @param chassis the vehicle
 * @param plane the planes that they run in
 * @param makeUp joints and plates
 */
public record RailSideBars(Chassis chassis, BarPlane plane, BarMakeUp makeUp) {

  /**
   * A pair of bars, the left one first.
   *
   * @param name what the two are called, such as {@code lower}
   * @param option the option that sets their height on the axle
   * @param upMm their joints over the axle's centre, negative under it (mm)
   * @param lengthMm joint to joint (mm)
   * @param riseRad rise to the front (rad)
   * @throws trammel.brackets.UnworkableLayoutException if a joint touches the tube or the ground
   */
  public List<Bar> pair(String name, String option, double upMm, double lengthMm, double riseRad) {
    Bar left = bar(name + "-left", name + " bars", option, upMm, lengthMm, riseRad);
    return List.of(
        left,
        makeUp.bar(
            name + "-right", left.duties(), left.frame().mirrored(), left.axle().mirrored()));
  }

  /**
   * One bar on one side.
   *
   * @param left true for the left side
   * @throws trammel.brackets.UnworkableLayoutException if a joint touches the tube or the ground
   */
  public Bar single(
      String name, String option, boolean left, double upMm, double lengthMm, double riseRad) {
    Bar bar = bar(name, name + " bar", option, upMm, lengthMm, riseRad);
    return left
        ? bar
        : makeUp.bar(name, bar.duties(), bar.frame().mirrored(), bar.axle().mirrored());
  }

  private Bar bar(
      String name, String bars, String option, double upMm, double lengthMm, double riseRad) {
    Point3 point = new Point3(0, plane.leftMm(), chassis.axleCentre().zMm() + upMm);
    Point3 axle = AxlePickUp.checked(bars, option, point, makeUp.axleSeat(), chassis);
    Point3 frame =
        new Point3(
            axle.xMm() + lengthMm * Math.cos(riseRad),
            axle.yMm(),
            axle.zMm() + lengthMm * Math.sin(riseRad));
    Set<Duty> drive = Duty.DRIVE_AND_BRAKING.only();
    return makeUp.bar(name, drive, frame, axle);
  }
}
