package trammel.engine.motion;

/**
 * How far a lateral bar of rigid length pushes the axle sideways as the axle rises and falls. The
 * axle end travels on an arc about the frame end.
 *
 * @param acrossMm distance between the bar's ends across the vehicle, at rest (mm, above 0)
 * @param riseMm height of the axle end above the frame end, at rest; negative below (mm)
 */
public record LateralBarArc(double acrossMm, double riseMm) {

  /**
   * @throws IllegalArgumentException if the ends are not apart across the vehicle, or a distance is
   *     out of all proportion
   */
  public LateralBarArc {
    if (!(acrossMm > 0 && acrossMm <= Link.FARTHEST_MM)
        || !(Math.abs(riseMm) <= Link.FARTHEST_MM)) {
      throw new IllegalArgumentException(
          "The lateral bar spans "
              + acrossMm
              + " mm across and rises "
              + riseMm
              + " mm; it must span more than 0 mm. Measure between its two pivots.");
    }
  }

  /** Length of the bar (mm). */
  public double lengthMm() {
    return Math.hypot(acrossMm, riseMm);
  }

  /**
   * Shift of the axle toward the bar's frame end: H - sqrt(R² - (v + d)²), with R² = H² + v².
   *
   * @param travelMm travel d of the axle, bump positive (mm)
   * @return shift (mm); negative away from the frame end
   * @throws IllegalArgumentException if the bar is too short for the travel
   */
  public double shiftMm(double travelMm) {
    double endMm = riseMm + travelMm;
    double lengthMm = lengthMm();
    if (!(Math.abs(endMm) < lengthMm)) {
      throw new IllegalArgumentException(
          "The axle is to travel "
              + travelMm
              + " mm, which takes the end of the lateral bar "
              + Math.abs(endMm)
              + " mm away from level; the bar is only "
              + lengthMm
              + " mm long. Use a longer bar, or less travel.");
    }
    return acrossMm - Math.sqrt((lengthMm - endMm) * (lengthMm + endMm));
  }
}
