package trammel.engine.layout;

import trammel.engine.quantity.Given;

/**
 * How far the axle is meant to move from ride height.
 *
 * @param bumpMm up, to the bump stop fully squeezed (mm), above 0
 * @param droopMm down (mm), above 0
 */
public record Travel(double bumpMm, double droopMm) {
  public Travel {
    Given.positive("bump travel (mm)", bumpMm);
    Given.positive("droop travel (mm)", droopMm);
  }
}
