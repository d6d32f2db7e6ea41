package trammel.brackets.mount;

/** Distances that mounts of springs and shocks keep: common practice, no source. */
public final class MountPractice {
  private static final double INCH_MM = 25.4;

  /** Shock travel left at the end of bump and of droop, 3/8 in. */
  public static final double SHOCK_RESERVE_MM = 0.375 * INCH_MM;

  /** Least length of a spring above solid at full bump, 3/8 in. */
  public static final double ABOVE_SOLID_MM = 0.375 * INCH_MM;

  /** Air between a spring or shock and the axle tube, 1/4 in over all travel. */
  public static final double TUBE_AIR_MM = 0.25 * INCH_MM;

  /** Room over that for the paint, the weld and the tape, 1/8 in. */
  public static final double MARGIN_MM = 0.125 * INCH_MM;

  /** Air between a spring or shock and bars, rails or shaft, 1/2 in over all travel. */
  public static final double MOVING_AIR_MM = 0.5 * INCH_MM;

  /** Air to the tyre, 1 in over all travel. */
  public static final double TYRE_AIR_MM = INCH_MM;

  /** Room between the welds of neighbouring brackets, 1/4 in. */
  public static final double WELD_ROOM_MM = 0.25 * INCH_MM;

  /** Head or nut of a bolt beside its plate, with what stands out of the nut, 5/8 in. */
  public static final double BOLT_END_MM = 0.625 * INCH_MM;

  /** Hole over bolt, 1/64 in. */
  public static final double BOLT_CLEARANCE_MM = INCH_MM / 64;

  /** Least height of a bracket above ground, 4 in. */
  public static final double GROUND_MM = 4 * INCH_MM;

  private MountPractice() {}
}
