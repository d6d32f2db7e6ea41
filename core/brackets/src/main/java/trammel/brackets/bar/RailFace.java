package trammel.brackets.bar;

import static trammel.engine.quantity.Amount.length;

import java.util.Optional;
import trammel.brackets.UnworkableLayoutException;
import trammel.engine.geometry.Point3;
import trammel.engine.layout.Rails;
import trammel.engine.quantity.Phrase;
import trammel.trade.plates.RailBracket;

/**
 * The flat of a rail's face to which the bracket of a frame joint is fixed. The bracket hangs from
 * the rail where the joint lies low enough, and stands on it otherwise.
 *
 * @param hangs true when the joint lies below the bracket's base
 * @param baseUpMm height of the base above ground (mm)
 * @param flatMm flat rail face from the base away from the joint (mm)
 */
public record RailFace(boolean hangs, double baseUpMm, double flatMm) {
  /** Kept off the rail's corners beyond its wall, 1/4 in for radius and seam: common practice. */
  public static final double CORNER_MM = 25.4 / 4;

  /** Least flat face that carries a bracket, 1 1/2 in: common practice, no source. */
  public static final double LEAST_MM = 1.5 * 25.4;

  /** A gap to the rail of less than this is welded over, 1/16 in: common practice. */
  public static final double WELDED_OVER_MM = 25.4 / 16;

  private static final double ROUNDING_MM = 1e-6;

  /** The flat for a joint, if the rail has enough of it there. */
  public static Optional<RailFace> find(Point3 joint, JointSeat seat, Rails rails) {
    RailFace widest = widest(joint, seat, rails);
    return widest.flatMm >= LEAST_MM - ROUNDING_MM ? Optional.of(widest) : Optional.empty();
  }

  private static RailFace widest(Point3 joint, JointSeat seat, Rails rails) {
    double halfMm = RailBracket.baseByRuleMm(seat.reachMm(), seat.noseMm()) / 2;
    double climbMm =
        Math.abs(rails.undersideMm(joint.xMm() + halfMm) - rails.undersideMm(joint.xMm()));
    // Where the rail climbs, one end of the base comes nearer to its corner, but not on to it.
    double offMm = rails.wallMm() + Math.max(CORNER_MM, climbMm);
    double lowMm = rails.undersideMm(joint.xMm()) + offMm;
    double highMm = rails.topMm(joint.xMm()) - offMm;
    double hangingMm = Math.max(lowMm, joint.zMm() + seat.reachMm());
    if (highMm - hangingMm >= LEAST_MM) {
      return new RailFace(true, hangingMm, highMm - hangingMm);
    }
    double standingMm = Math.min(highMm, joint.zMm() - seat.reachMm());
    return new RailFace(false, standingMm, standingMm - lowMm);
  }

  /**
   * The flat for a joint.
   *
   * @param bar name of the bar
   * @throws UnworkableLayoutException if the rail has too little of it there
   */
  public static RailFace of(String bar, Point3 joint, JointSeat seat, Rails rails) {
    Optional<RailFace> found = find(joint, seat, rails);
    if (found.isEmpty()) {
      throw new UnworkableLayoutException(
          Phrase.of(
              "the frame joint of {} lies {} above the underside of a rail that is {}"
                  + " deep; above or below the joint that leaves {} of flat face for its"
                  + " bracket, which needs {}. Move the joint up or down, or choose a joint"
                  + " with a smaller barrel.",
              bar,
              length(joint.zMm() - rails.undersideMm(joint.xMm())),
              length(rails.depthMm()),
              length(Math.max(0, widest(joint, seat, rails).flatMm)),
              length(LEAST_MM)));
    }
    return found.get();
  }
}
