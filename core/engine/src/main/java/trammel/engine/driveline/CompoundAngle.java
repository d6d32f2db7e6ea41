package trammel.engine.driveline;

import trammel.engine.quantity.Given;

/** A joint angle that shows in the side view and in the plan view at once. */
public final class CompoundAngle {
  private static final double LARGEST_RAD = Math.toRadians(80);

  private CompoundAngle() {}

  /**
   * True angle of a line that leans in two views, tanC = √(tan²T + tan²S). Manuals give C = √(T² +
   * S²), good to 0.05° at 10°; the exact form is used here. Source: installation manual J3311-1, p.
   * 13 (approximate form); the exact form is trigonometry.
   *
   * @param planRad angle in plan view, rad, −80° to 80°
   * @param sideRad angle in side view, rad, −80° to 80°
   * @return true angle, rad, 0 or more
   * @throws IllegalArgumentException if an angle is outside its range
   */
  public static double trueRad(double planRad, double sideRad) {
    checkAngle("plan-view angle", planRad);
    checkAngle("side-view angle", sideRad);
    return Math.atan(Math.hypot(Math.tan(planRad), Math.tan(sideRad)));
  }

  /**
   * Angle of a line in plan view from two offsets.
   *
   * @param firstOffsetMm distance of one end from the centre plane, mm, left positive
   * @param secondOffsetMm distance of the other end, mm, left positive
   * @param lengthMm distance between the two ends along the vehicle, mm, over 0
   * @return angle, rad, with the sign of first less second
   * @throws IllegalArgumentException if an input is outside its range
   */
  public static double planRad(double firstOffsetMm, double secondOffsetMm, double lengthMm) {
    Given.finite("first offset", firstOffsetMm, "mm");
    Given.finite("second offset", secondOffsetMm, "mm");
    Given.positive("length between the offsets", lengthMm, "mm", "Measure along the vehicle.");
    return Math.atan((firstOffsetMm - secondOffsetMm) / lengthMm);
  }

  private static void checkAngle(String what, double angleRad) {
    Given.angle(what, angleRad, -LARGEST_RAD, LARGEST_RAD, "Measure it from straight ahead.");
  }
}
