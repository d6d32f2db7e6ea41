package trammel.brackets.rail;

import trammel.engine.layout.Rails;

/**
 * The stretch of a rail that a bracket takes.
 *
 * @param left true for the left rail
 * @param rearMm its rear end, forward of the axle (mm)
 * @param frontMm its front end (mm)
 * @param bracket what sits there
 */
public record Footprint(boolean left, double rearMm, double frontMm, String bracket) {

  /** This stretch and another as one, with what lies between. */
  public Footprint with(Footprint other) {
    String both = bracket.equals(other.bracket) ? bracket : bracket + " and " + other.bracket;
    return new Footprint(
        left, Math.min(rearMm, other.rearMm), Math.max(frontMm, other.frontMm), both);
  }

  /** This stretch with a lead at both ends (mm). */
  public Footprint widened(double leadMm) {
    return new Footprint(left, rearMm - leadMm, frontMm + leadMm, bracket);
  }

  /** Whether two stretches of one rail meet or come closer than a plate is worth ending. */
  public boolean meets(Footprint other, double apartMm) {
    return left == other.left
        && rearMm < other.frontMm + apartMm
        && other.rearMm < frontMm + apartMm;
  }

  /** Length along the sloping, tapering rail (mm). */
  public double runMm(Rails rails) {
    return Math.hypot(
        frontMm - rearMm,
        Math.hypot(
            rails.innerFaceMm(frontMm) - rails.innerFaceMm(rearMm),
            rails.undersideMm(frontMm) - rails.undersideMm(rearMm)));
  }

  public String side() {
    return left ? "left" : "right";
  }
}
