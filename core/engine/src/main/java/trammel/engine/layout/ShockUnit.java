package trammel.engine.layout;

import trammel.engine.geometry.Point3;
import trammel.engine.quantity.Given;

/**
 * One shock between frame and axle at ride.
 *
 * @param name the name that parts list and job file use, such as {@code shock-left}
 * @param frame centre of its mount on the frame (mm)
 * @param axle centre of its mount on the axle at ride (mm)
 * @param bodyRadiusMm outside radius of the body (mm), above 0
 * @param closedMm length eye to eye fully closed (mm), above 0
 * @param openMm length eye to eye fully open (mm), above the closed length
 */
public record ShockUnit(
    String name, Point3 frame, Point3 axle, double bodyRadiusMm, double closedMm, double openMm) {
  public ShockUnit {
    Given.text("shock name", name);
    Given.positive("body radius of " + name + " (mm)", bodyRadiusMm);
    Given.positive("closed length of " + name + " (mm)", closedMm);
    if (!(openMm > closedMm)) {
      throw new IllegalArgumentException(
          "open length of "
              + name
              + " is "
              + openMm
              + " mm; it must be over the closed length, "
              + closedMm
              + " mm. Check the catalog entry.");
    }
    if (frame.distanceMm(axle) < 1) {
      throw new IllegalArgumentException(
          name + " has both its mounts at " + frame + "; they must be apart. Check its points.");
    }
  }

  /** Distance between the mounts at ride (mm). */
  public double lengthMm() {
    return frame.distanceMm(axle);
  }

  /** The centre of the mount at one end at ride (mm). */
  public Point3 point(End end) {
    return end == End.FRAME ? frame : axle;
  }

  /** This shock with one mount elsewhere. */
  public ShockUnit withPoint(End end, Point3 point) {
    Point3 newFrame = end == End.FRAME ? point : frame;
    Point3 newAxle = end == End.AXLE ? point : axle;
    return new ShockUnit(name, newFrame, newAxle, bodyRadiusMm, closedMm, openMm);
  }
}
