package trammel.engine.clearance;

import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.motion.Placement;

/**
 * A rectangular block at any angle: frame rails, crossmembers, floor, housing.
 *
 * @param centre its middle, vehicle axes
 * @param halfLengthMm half its size along {@code lengthwise}, 0.001 to 100 000 mm
 * @param halfWidthMm half its size along {@code crosswise}, 0.001 to 100 000 mm
 * @param halfHeightMm half its size along {@code upright}, 0.001 to 100 000 mm
 * @param lengthwise unit axis
 * @param crosswise unit axis, square to the first
 * @param upright unit axis, square to the other two
 */
public record Box(
    Point3 centre,
    double halfLengthMm,
    double halfWidthMm,
    double halfHeightMm,
    Vector3 lengthwise,
    Vector3 crosswise,
    Vector3 upright)
    implements Shape {

  private static final double AXIS_TOLERANCE = 1e-6;

  /**
   * @throws IllegalArgumentException if a size or the place is outside its range, or the axes are
   *     not unit axes square to each other within one part in a million
   */
  public Box {
    Limits.checkPoint("The box's centre", centre);
    Limits.checkSize("The box's half-length", halfLengthMm);
    Limits.checkSize("The box's half-width", halfWidthMm);
    Limits.checkSize("The box's half-height", halfHeightMm);
    checkProduct("lengthwise with itself", lengthwise.dot(lengthwise), 1);
    checkProduct("crosswise with itself", crosswise.dot(crosswise), 1);
    checkProduct("upright with itself", upright.dot(upright), 1);
    checkProduct("lengthwise with crosswise", lengthwise.dot(crosswise), 0);
    checkProduct("crosswise with upright", crosswise.dot(upright), 0);
    checkProduct("upright with lengthwise", upright.dot(lengthwise), 0);
  }

  /**
   * A box square to the vehicle axes.
   *
   * @throws IllegalArgumentException if a lower limit is not under its upper limit
   */
  public static Box between(
      double minXMm, double maxXMm, double minYMm, double maxYMm, double minZMm, double maxZMm) {
    checkOrder("x", minXMm, maxXMm);
    checkOrder("y", minYMm, maxYMm);
    checkOrder("z", minZMm, maxZMm);
    return new Box(
        new Point3(
            minXMm + (maxXMm - minXMm) / 2,
            minYMm + (maxYMm - minYMm) / 2,
            minZMm + (maxZMm - minZMm) / 2),
        (maxXMm - minXMm) / 2,
        (maxYMm - minYMm) / 2,
        (maxZMm - minZMm) / 2,
        new Vector3(1, 0, 0),
        new Vector3(0, 1, 0),
        new Vector3(0, 0, 1));
  }

  /**
   * The box turned about a line across the vehicle.
   *
   * @param angleRad turn in side view, front end up positive
   * @param about a point on the line about which it turns
   */
  public Box turnedInSideView(double angleRad, Point3 about) {
    double cosine = Math.cos(angleRad);
    double sine = Math.sin(angleRad);
    double x = centre.xMm() - about.xMm();
    double z = centre.zMm() - about.zMm();
    Point3 turnedCentre =
        new Point3(
            about.xMm() + x * cosine - z * sine, centre.yMm(), about.zMm() + x * sine + z * cosine);
    return new Box(
        turnedCentre,
        halfLengthMm,
        halfWidthMm,
        halfHeightMm,
        turned(lengthwise, cosine, sine),
        turned(crosswise, cosine, sine),
        turned(upright, cosine, sine));
  }

  @Override
  public Box moved(Placement placement) {
    return new Box(
        placement.move(centre),
        halfLengthMm,
        halfWidthMm,
        halfHeightMm,
        placement.turn(lengthwise),
        placement.turn(crosswise),
        placement.turn(upright));
  }

  private static Vector3 turned(Vector3 axis, double cosine, double sine) {
    return new Vector3(
        axis.x() * cosine - axis.z() * sine, axis.y(), axis.x() * sine + axis.z() * cosine);
  }

  private static void checkProduct(String axes, double product, double wanted) {
    if (!(Math.abs(product - wanted) <= AXIS_TOLERANCE)) {
      throw new IllegalArgumentException(
          "The box's axes must be unit axes square to each other: the product of "
              + axes
              + " is "
              + product
              + " and must be "
              + wanted
              + ". Give three perpendicular axes of length 1.");
    }
  }

  private static void checkOrder(String axis, double minMm, double maxMm) {
    if (!(minMm < maxMm)) {
      throw new IllegalArgumentException(
          "The box runs in "
              + axis
              + " from "
              + minMm
              + " to "
              + maxMm
              + " mm; the first must be less than the second. Swap them or check the measurement.");
    }
  }
}
