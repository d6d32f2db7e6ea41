package trammel.brackets.work;

import trammel.assembly.Held;

/** Ids of the vehicle's own parts, to which the work is welded and bolted. */
public final class VehicleParts {
  /** The axle tube. */
  public static final String AXLE_TUBE = "axle tube";

  /** The centre housing, where it is measured. */
  public static final String HOUSING = "axle's centre housing";

  /** The driveshaft. */
  public static final String SHAFT = "driveshaft";

  /** What the plates on the sides of a notched rail are called. */
  public static final String NOTCH_SIDE_PLATE = "notch side plate";

  private VehicleParts() {}

  /** A frame rail. */
  public static String rail(boolean left) {
    return left ? "left rail" : "right rail";
  }

  /**
   * A plate that lines the side of the rail round a notch, where there is one.
   *
   * @param outer true for the one on the rail's outer face
   */
  public static String notchSidePlate(boolean left, boolean outer) {
    return Held.id(NOTCH_SIDE_PLATE, (left ? "left" : "right") + (outer ? " outer" : " inner"));
  }

  /** A wheel. */
  public static String wheel(boolean left) {
    return left ? "left wheel" : "right wheel";
  }

  /** A tyre. */
  public static String tyre(boolean left) {
    return left ? "left tyre" : "right tyre";
  }
}
