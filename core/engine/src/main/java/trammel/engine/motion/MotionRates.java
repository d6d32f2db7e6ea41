package trammel.engine.motion;

/**
 * How the free coordinates of the axle change with heave and with roll, from the derivatives of the
 * motion itself (implicit differentiation).
 *
 * @param forwardPerMmHeave shift to the front (mm per mm heave)
 * @param lateralPerMmHeave shift to the left (mm per mm heave)
 * @param yawRadPerMmHeave heading (rad per mm heave)
 * @param pitchNoseUpRadPerMmHeave turn of the housing (rad per mm heave)
 * @param forwardMmPerRadRoll shift to the front (mm per rad roll)
 * @param lateralMmPerRadRoll shift to the left (mm per rad roll)
 * @param yawRadPerRadRoll heading (rad per rad roll)
 * @param pitchNoseUpRadPerRadRoll turn of the housing (rad per rad roll)
 */
public record MotionRates(
    double forwardPerMmHeave,
    double lateralPerMmHeave,
    double yawRadPerMmHeave,
    double pitchNoseUpRadPerMmHeave,
    double forwardMmPerRadRoll,
    double lateralMmPerRadRoll,
    double yawRadPerRadRoll,
    double pitchNoseUpRadPerRadRoll) {

  /**
   * From rates per mm heave and per mm of roll times lever, angles times lever.
   *
   * @throws IllegalStateException if a rate is not finite
   */
  public static MotionRates of(double[] perHeave, double[] perRoll, double leverMm) {
    for (int i = 0; i < perHeave.length; i++) {
      if (!Double.isFinite(perHeave[i]) || !Double.isFinite(perRoll[i])) {
        throw new IllegalStateException(
            "At this pose the links are at the very end of their travel and there is no onward"
                + " motion; ask for the rates a little before it.");
      }
    }
    return new MotionRates(
        perHeave[0],
        perHeave[1],
        perHeave[2] / leverMm,
        perHeave[3] / leverMm,
        perRoll[0] * leverMm,
        perRoll[1] * leverMm,
        perRoll[2],
        perRoll[3]);
  }

  /**
   * From poses close by, as the slope between them.
   *
   * @param lower a pose a little below
   * @param higher one as much above, at the same roll
   * @param rightUp a pose a little rolled to the right wheel up
   * @param leftUp one rolled as much the other way, at the same heave
   */
  public static MotionRates between(
      AxlePose lower, AxlePose higher, AxlePose rightUp, AxlePose leftUp) {
    double heaveMm = higher.heaveMm() - lower.heaveMm();
    double rollRad = leftUp.rollRad() - rightUp.rollRad();
    return new MotionRates(
        (higher.forwardMm() - lower.forwardMm()) / heaveMm,
        (higher.lateralMm() - lower.lateralMm()) / heaveMm,
        (higher.yawRad() - lower.yawRad()) / heaveMm,
        (higher.pitchNoseUpRad() - lower.pitchNoseUpRad()) / heaveMm,
        (leftUp.forwardMm() - rightUp.forwardMm()) / rollRad,
        (leftUp.lateralMm() - rightUp.lateralMm()) / rollRad,
        (leftUp.yawRad() - rightUp.yawRad()) / rollRad,
        (leftUp.pitchNoseUpRad() - rightUp.pitchNoseUpRad()) / rollRad);
  }
}
