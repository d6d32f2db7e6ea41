package trammel.planning.fitup;

import trammel.assembly.Assembly;
import trammel.assembly.Place;
import trammel.brackets.work.VehicleParts;
import trammel.engine.geometry.Point3;
import trammel.engine.geometry.Vector3;
import trammel.engine.layout.Rails;

/**
 * Where a tape is held and which ways it is read: along (ahead is plus), up, and out. Each reading
 * is a vector of those three (mm), in that order.
 *
 * @param kind what it is marked on
 * @param origin its mark in vehicle axes (mm)
 * @param along the way ahead, a unit vector
 * @param up the way up, square to it
 * @param out the way out, square to both
 */
public record Datum(Kind kind, Point3 origin, Vector3 along, Vector3 up, Vector3 out) {
  /** What a datum is marked on. */
  public enum Kind {
    /** The left rail: the axle mark on its outer face, at the underside. */
    LEFT_RAIL("outward", "inward"),
    /** The right rail, the same. */
    RIGHT_RAIL("outward", "inward"),
    /** The axle tube's middle, read to the left. */
    AXLE_LEFT("outward", "inward"),
    /** The axle tube's middle, read to the right. */
    AXLE_RIGHT("outward", "inward"),
    /** The axle tube's middle, read to the left, for what spans it. */
    AXLE("left", "right"),
    /** The axle line, the centre line and the rails' underside over the axle, read to the left. */
    FRAME("left", "right");

    private final String outwards;
    private final String inwards;

    Kind(String outwards, String inwards) {
      this.outwards = outwards;
      this.inwards = inwards;
    }

    /** True for the left rail and the left half of the axle. */
    public boolean left() {
      return this == LEFT_RAIL || this == AXLE_LEFT;
    }

    /** True for a rail. */
    public boolean rail() {
      return this == LEFT_RAIL || this == RIGHT_RAIL;
    }

    /** True for the axle or a half of it. */
    public boolean axle() {
      return this == AXLE || this == AXLE_LEFT || this == AXLE_RIGHT;
    }

    /** True for what has its mirror image on the other side. */
    public boolean oneSided() {
      return left() || isRight();
    }

    /** True for two that are mirror images of each other. */
    boolean opposite(Kind other) {
      return rail() == other.rail()
          && axle() == other.axle()
          && (left() && other.isRight() || isRight() && other.left());
    }

    private boolean isRight() {
      return this == RIGHT_RAIL || this == AXLE_RIGHT;
    }

    /** The word for the way out, and for the way back. */
    String outWord(boolean plus) {
      return plus ? outwards : inwards;
    }
  }

  /** A rail's: along its outer face, square up from its underside, square out from that face. */
  public static Datum rail(Assembly assembly, boolean left) {
    Place rail = assembly.part(VehicleParts.rail(left)).orElseThrow().place();
    Vector3 out = left ? rail.z().scaled(-1) : rail.z();
    return new Datum(
        left ? Kind.LEFT_RAIL : Kind.RIGHT_RAIL, rail.origin(), rail.x(), rail.y(), out);
  }

  /** The axle tube's, as it stands at ride: level ahead, upright, along the tube. */
  static Datum axle(Kind kind, Point3 tubeMiddle) {
    return level(kind, tubeMiddle, kind != Kind.AXLE_RIGHT);
  }

  /**
   * The vehicle's own: level ahead of the axle line, up from the underside over it, to the left.
   */
  public static Datum frame(Rails rails) {
    return level(Kind.FRAME, new Point3(0, 0, rails.undersideMm(0)), true);
  }

  private static Datum level(Kind kind, Point3 origin, boolean left) {
    return new Datum(
        kind, origin, new Vector3(1, 0, 0), new Vector3(0, 0, 1), new Vector3(0, left ? 1 : -1, 0));
  }

  /** A point as the tape reads it. */
  public Vector3 read(Point3 point) {
    return read(origin.to(point));
  }

  /** A direction by along, up and out. */
  public Vector3 read(Vector3 direction) {
    return new Vector3(direction.dot(along), direction.dot(up), direction.dot(out));
  }

  /** The direction that reads so, in vehicle axes. */
  public Vector3 direction(Vector3 reading) {
    return along.scaled(reading.x()).plus(up.scaled(reading.y())).plus(out.scaled(reading.z()));
  }

  /** The point that reads so, in vehicle axes. */
  public Point3 point(Vector3 reading) {
    return origin.plus(direction(reading));
  }

  /**
   * The same held at another point and turned about the way up.
   *
   * @param zero where it is held, as this one reads it (mm)
   * @param turnRad how far its front end is swung out; minus inwards
   */
  public Datum at(Vector3 zero, double turnRad) {
    double cosine = Math.cos(turnRad);
    double sine = Math.sin(turnRad);
    return new Datum(
        kind,
        point(zero),
        along.scaled(cosine).plus(out.scaled(sine)),
        up,
        out.scaled(cosine).minus(along.scaled(sine)));
  }
}
