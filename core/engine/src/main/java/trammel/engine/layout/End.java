package trammel.engine.layout;

/** Which end of a bar, spring or shock. */
public enum End {
  /** The end on the frame, which stands still. */
  FRAME,
  /** The end on the axle, which moves. */
  AXLE
}
