package trammel.engine.checks;

/** The kind of quantity that a check's value and its limits are. */
public enum Measure {
  /** mm. */
  LENGTH,
  /** rad. */
  ANGLE,
  /** Hz. */
  FREQUENCY,
  /** rad/s2. */
  ANGULAR_ACCELERATION,
  /** A share, 1 being 100 %. */
  SHARE,
  /** A plain ratio, such as a safety factor. */
  FACTOR,
  /** How many of something. */
  COUNT,
  /** MPa above the atmosphere. */
  PRESSURE,
  /** MPa. */
  STRESS,
  /** N. */
  FORCE,
  /** Nmm. */
  TORQUE,
  /** N/mm. */
  RATE,
  /** kg. */
  MASS,
  /** m/s. */
  SPEED,
  /** rev/min. */
  ROTATION,
  /** Nmm. */
  ENERGY
}
