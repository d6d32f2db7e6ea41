package trammel.planning.job;

/** Section of a frame rail. */
public enum RailShape {
  /** Open channel, flanges inward. */
  CHANNEL,
  /** Closed box. */
  BOX
}
