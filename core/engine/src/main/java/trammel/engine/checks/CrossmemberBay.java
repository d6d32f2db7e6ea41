package trammel.engine.checks;

import trammel.engine.quantity.Given;

/**
 * Where the frame's own crossmembers next to the axle stand, which hold the rails against twist.
 *
 * @param behindMm the next one behind the axle (mm), above 0
 * @param aheadMm the next one ahead of it (mm), above 0
 */
public record CrossmemberBay(double behindMm, double aheadMm) {
  public CrossmemberBay {
    Given.positive("the frame's crossmember behind the axle (mm)", behindMm);
    Given.positive("the frame's crossmember ahead of the axle (mm)", aheadMm);
  }
}
