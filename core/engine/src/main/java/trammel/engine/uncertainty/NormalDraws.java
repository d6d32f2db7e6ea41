package trammel.engine.uncertainty;

/**
 * Numbers of the standard normal distribution, the same for the same seed and sample on every
 * machine.
 *
 * <p>Sources: bits by the SplitMix64 generator (Steele, Lea and Flood 2014, from memory), normals
 * by the transform of Box and Muller (1958).
 */
final class NormalDraws {
  private static final long GOLDEN = 0x9E3779B97F4A7C15L;
  private static final double UNIT = 0x1.0p-53;

  private long state;
  private double spare;
  private boolean hasSpare;

  NormalDraws(long seed, long sample) {
    state = mix(mix(seed) + GOLDEN * (sample + 1));
  }

  double next() {
    if (hasSpare) {
      hasSpare = false;
      return spare;
    }
    double radius = StrictMath.sqrt(-2 * StrictMath.log(uniform()));
    double angle = 2 * Math.PI * uniform();
    spare = radius * StrictMath.sin(angle);
    hasSpare = true;
    return radius * StrictMath.cos(angle);
  }

  /** Above 0 and at most 1. */
  private double uniform() {
    state += GOLDEN;
    return ((mix(state) >>> 11) + 1) * UNIT;
  }

  private static long mix(long bits) {
    long mixed = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return mixed ^ (mixed >>> 31);
  }
}
