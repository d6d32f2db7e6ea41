package trammel.engine.motion;

/** What a link is there for. The motion itself makes no difference between the kinds. */
public enum LinkKind {
  /** Holds the axle fore and aft and against wind-up: upper and lower bars, trailing arms. */
  LONGITUDINAL,
  /** Holds the axle sideways: the lateral bar. */
  LATERAL
}
