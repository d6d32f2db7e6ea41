package trammel.engine.layout;

/** What a bar does in the linkage. */
public enum BarRole {
  /** Carries drive and brake thrust at or below the axle's line. */
  LOWER,
  /** Holds the housing against turning, above the axle's line. */
  UPPER,
  /** Runs across the vehicle and holds the axle sideways. */
  LATERAL
}
