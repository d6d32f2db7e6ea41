package trammel.engine.quantity;

/** Standard gravity. Source: 3rd General Conference on Weights and Measures, 1901: 9.80665 m/s². */
public final class Gravity {
  /** Standard gravity, m/s². Multiplies kg to give N. */
  public static final double M_PER_S2 = 9.80665;

  /** Standard gravity, mm/s². */
  public static final double MM_PER_S2 = 9806.65;

  private Gravity() {}
}
