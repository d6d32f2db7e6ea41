package trammel.engine.motion;

/** Which way the axle steers when the body leans in a bend. */
public enum RollSteerSense {
  /** The axle turns into the bend: the car runs wider. */
  UNDERSTEER,
  /** The axle turns out of the bend: the car runs tighter. */
  OVERSTEER,
  /** The axle keeps its heading. */
  NEUTRAL
}
