package trammel.engine.clearance;

/** What a body moves with. */
public enum Carrier {
  /** Fixed to the frame or body: rails, crossmembers, floor, tanks. */
  FRAME,
  /** Fixed to the axle: tube, housing, brackets, tyres. */
  AXLE,
  /** Between the two: links, lateral bar, shocks, springs, propeller shaft. */
  LINK
}
