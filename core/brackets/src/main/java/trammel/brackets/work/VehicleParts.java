package trammel.brackets.work;

/** Ids of the vehicle's own parts, to which the work is welded and bolted. */
public final class VehicleParts {
  /** The axle tube. */
  public static final String AXLE_TUBE = "axle tube";

  /** The centre housing, where it is measured. */
  public static final String HOUSING = "axle's centre housing";

  /** The propeller shaft. */
  public static final String SHAFT = "propeller shaft";

  private VehicleParts() {}

  /** A frame rail. */
  public static String rail(boolean left) {
    return left ? "left rail" : "right rail";
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
