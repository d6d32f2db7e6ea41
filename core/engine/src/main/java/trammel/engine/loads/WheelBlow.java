package trammel.engine.loads;

import trammel.engine.quantity.Given;

/**
 * A blow on one wheel beside what the road carries: the edge of a pothole pushes it back, a kerb
 * pushes it in.
 *
 * @param rearward force rearward at the wheel's middle, share of the tyre's load at rest, 0 to 10
 * @param kerb force inward where the tyre stands, share of what tips the vehicle over that tyre: W
 *     t / 2h of the rear axle's weight, 0 to 5. Source: Brown, Robertson and Serpento, Motor
 *     Vehicle Structures, p. 24, which give factors of 1.4 to 1.75 for the whole vehicle
 */
public record WheelBlow(double rearward, double kerb) {
  /** No blow. */
  public static final WheelBlow NONE = new WheelBlow(0, 0);

  public WheelBlow {
    Given.within("rearward blow on a wheel", rearward, 0, 10, "", "0 for none.");
    Given.within("kerb blow on a wheel", kerb, 0, 5, "", "0 for none.");
  }

  /** Whether it is as hard as another; comparing records as such links code at run time. */
  boolean isAs(WheelBlow other) {
    return rearward == other.rearward && kerb == other.kerb;
  }
}
