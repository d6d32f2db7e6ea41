package trammel.engine.layout;

import trammel.engine.quantity.Given;

/**
 * A rear tyre as it stands on the ground.
 *
 * @param freeRadiusMm radius without load (mm), at least the loaded radius
 * @param loadedRadiusMm height of the wheel's centre above the ground under load (mm), above 0
 * @param widthMm section width (mm), above 0
 */
public record Tyre(double freeRadiusMm, double loadedRadiusMm, double widthMm) {
  public Tyre {
    Given.positive("loaded tyre radius (mm)", loadedRadiusMm);
    Given.positive("tyre width (mm)", widthMm);
    if (!(freeRadiusMm >= loadedRadiusMm) || Double.isInfinite(freeRadiusMm)) {
      throw new IllegalArgumentException(
          "free tyre radius is "
              + freeRadiusMm
              + " mm; it cannot be below the loaded radius, "
              + loadedRadiusMm
              + " mm. Measure from the ground to the wheel's centre with the weight on it.");
    }
  }
}
