package trammel.engine.clearance;

import trammel.engine.geometry.Point3;

/** The sizes and places that a shape on a vehicle can have. */
final class Limits {

  /** Below this a body has no thickness left for a penetration direction to be told from noise. */
  static final double LEAST_SIZE_MM = 0.001;

  static final double GREATEST_SIZE_MM = 100_000;

  /** Keeps rounding of a distance under about a millionth of a millimetre. */
  static final double GREATEST_COORDINATE_MM = 1_000_000;

  private Limits() {}

  static void checkSize(String what, double sizeMm) {
    if (!(sizeMm >= LEAST_SIZE_MM && sizeMm <= GREATEST_SIZE_MM)) {
      throw new IllegalArgumentException(
          what
              + " is "
              + sizeMm
              + " mm; it must be from "
              + LEAST_SIZE_MM
              + " to "
              + GREATEST_SIZE_MM
              + " mm. Give the size of the real part.");
    }
  }

  static void checkPoint(String what, Point3 point) {
    if (!(Math.abs(point.xMm()) <= GREATEST_COORDINATE_MM
        && Math.abs(point.yMm()) <= GREATEST_COORDINATE_MM
        && Math.abs(point.zMm()) <= GREATEST_COORDINATE_MM)) {
      throw new IllegalArgumentException(
          what
              + " is at ("
              + point.xMm()
              + ", "
              + point.yMm()
              + ", "
              + point.zMm()
              + ") mm; every coordinate must be within "
              + GREATEST_COORDINATE_MM
              + " mm of the origin under the axle. Check the units of the measurement.");
    }
  }
}
