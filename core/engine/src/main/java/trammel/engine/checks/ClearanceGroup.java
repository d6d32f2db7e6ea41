package trammel.engine.checks;

/** Which gaps a clearance check looks at. */
enum ClearanceGroup {
  /** What moves against the rails and what stays bolted to the frame. */
  FRAME,
  /** What moves against what else moves. */
  BETWEEN,
  /** The axle's centre housing against bars, springs, shocks and what is bolted to the frame. */
  HOUSING,
  /** The tyres against all that they do not turn with: body, rails, bars, springs, tank. */
  TYRE,
  /** What moves against fuel tanks and lines, which nothing may strike. */
  FUEL,
  /** What moves against exhaust, floor and running boards, which are moved out of its way. */
  MOVED_AWAY
}
