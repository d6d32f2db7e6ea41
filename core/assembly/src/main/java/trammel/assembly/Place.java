package trammel.assembly;

import java.util.Objects;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.trade.plates.Point2;

/**
 * Where a part stands: its own axes and origin in vehicle axes (mm). Axes are right-handed unit
 * vectors, so it is a rigid motion as well: what moves a part from ride to a pose is also one.
 *
 * @param x the part's x axis in vehicle axes
 * @param y its y axis
 * @param z its z axis, x cross y
 * @param origin where its own origin lies (mm)
 */
public record Place(Vector3 x, Vector3 y, Vector3 z, Point3 origin) {
  private static final Vector3 FORWARD = new Vector3(1, 0, 0);
  private static final Vector3 LEFT = new Vector3(0, 1, 0);
  private static final Vector3 UP = new Vector3(0, 0, 1);
  private static final double SQUARE = 1e-9;
  private static final double NEARLY_UPRIGHT = 0.9;

  /** The vehicle's own axes; as a motion, none. */
  public static final Place RIDE = new Place(FORWARD, LEFT, UP, new Point3(0, 0, 0));

  /**
   * @throws IllegalArgumentException if the axes are not right-handed unit vectors
   */
  public Place {
    Objects.requireNonNull(origin, "origin");
    double offSquare =
        Math.abs(x.norm() - 1)
            + Math.abs(y.norm() - 1)
            + x.cross(y).minus(z).norm()
            + y.cross(z).minus(x).norm();
    if (!(offSquare < SQUARE)) {
      throw new IllegalArgumentException(
          "The axes of a place are "
              + x
              + ", "
              + y
              + " and "
              + z
              + "; they must be right-handed unit vectors square to each other. Use the vehicle's"
              + " axes, or build them from two square directions.");
    }
  }

  /** The vehicle's axes about another origin (mm). */
  public static Place at(Point3 origin) {
    return new Place(FORWARD, LEFT, UP, origin);
  }

  /**
   * A place with two of its axes given; the third follows.
   *
   * @param x direction of its x axis
   * @param y direction of its y axis, square to x
   */
  public static Place of(Point3 origin, Vector3 x, Vector3 y) {
    Vector3 unitX = x.normalized();
    Vector3 unitY = y.normalized();
    Vector3 z = unitX.cross(unitY);
    // Taken again, so that rounding in the two given does not add up.
    return new Place(unitX, z.normalized().cross(unitX), z.normalized(), origin);
  }

  /**
   * A place whose z axis points a given way; how it is turned about that does not matter.
   *
   * @param z direction of its z axis
   */
  public static Place along(Point3 origin, Vector3 z) {
    Vector3 unit = z.normalized();
    Vector3 helper = Math.abs(unit.z()) > NEARLY_UPRIGHT ? FORWARD : UP;
    return of(origin, helper.cross(unit), unit.cross(helper.cross(unit)));
  }

  /**
   * A plate that lies against a plane and grows to one side of it.
   *
   * @param origin the outline's origin in that plane (mm)
   * @param x direction of the outline's x axis
   * @param y direction of its y axis, square to x
   * @param towards the side to which the thickness goes; square to both
   * @param thicknessMm thickness of the plate
   */
  public static Place lying(
      Point3 origin, Vector3 x, Vector3 y, Vector3 towards, double thicknessMm) {
    Place place = of(origin, x, y);
    return place.z.dot(towards) > 0 ? place : place.shifted(0, 0, -thicknessMm);
  }

  /** A place in side view: x forward, y up, z to the right. */
  public static Place sideView(Point3 origin) {
    return of(origin, FORWARD, UP);
  }

  /** A direction of the part in vehicle axes. */
  public Vector3 turn(Vector3 own) {
    return x.scaled(own.x()).plus(y.scaled(own.y())).plus(z.scaled(own.z()));
  }

  /** A point of the part in vehicle axes (mm). */
  public Point3 apply(Point3 own) {
    return point(own.xMm(), own.yMm(), own.zMm());
  }

  /** A point of the part's own plane in vehicle axes (mm). */
  public Point3 apply(Point2 own) {
    return point(own.xMm(), own.yMm(), 0);
  }

  /** A point of the part by its own coordinates, in vehicle axes (mm). */
  public Point3 point(double xMm, double yMm, double zMm) {
    return new Point3(
        origin.xMm() + x.x() * xMm + y.x() * yMm + z.x() * zMm,
        origin.yMm() + x.y() * xMm + y.y() * yMm + z.y() * zMm,
        origin.zMm() + x.z() * xMm + y.z() * yMm + z.z() * zMm);
  }

  /** A point in vehicle axes as the part sees it (mm). */
  public Point3 own(Point3 point) {
    Vector3 from = origin.to(point);
    return new Point3(from.dot(x), from.dot(y), from.dot(z));
  }

  /** The same place with its origin moved along its own axes (mm). */
  public Place shifted(double xMm, double yMm, double zMm) {
    return new Place(x, y, z, point(xMm, yMm, zMm));
  }

  /** This motion after another: a part placed by the other and then moved by this. */
  public Place after(Place first) {
    Vector3 turnedX = turn(first.x).normalized();
    Vector3 turnedY = turn(first.y);
    return of(apply(first.origin), turnedX, turnedY);
  }
}
