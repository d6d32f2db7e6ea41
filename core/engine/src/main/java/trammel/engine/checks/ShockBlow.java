package trammel.engine.checks;

import trammel.engine.quantity.Given;

/**
 * What a shock puts into its mounts: in a fast stroke by its damping, and where the axle tops out
 * on it.
 *
 * @param strokeMmPerS speed of the wheel in a fast stroke (mm/s), above 0
 * @param topOut with how many times its half of the axle's weight an axle that tops out pulls, 1 or
 *     more
 */
public record ShockBlow(double strokeMmPerS, double topOut) {
  public ShockBlow {
    Given.positive("speed of a shock's fast stroke (mm/s)", strokeMmPerS);
    Given.within("pull of an axle that tops out, times its weight", topOut, 1, 50);
  }
}
