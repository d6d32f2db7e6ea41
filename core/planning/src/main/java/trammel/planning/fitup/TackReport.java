package trammel.planning.fitup;

import java.util.List;
import trammel.engine.checks.CheckResult;

/**
 * What the readings after tacking say.
 *
 * @param verdict what to do
 * @param reasons why, most important first
 * @param moves brackets that are out of place, the furthest first, with what brings them back
 * @param again what to measure again, each with its reason
 * @param axle how the axle sits
 * @param asTacked every check on what was tacked
 * @param stops titles of the checks that say stop on what was tacked
 * @param corrected titles of checks that are still worse than planned when the brackets are re-set;
 *     empty when the correction brings all of them back
 */
public record TackReport(
    TackVerdict verdict,
    List<String> reasons,
    List<Move> moves,
    List<Again> again,
    AxleSeat axle,
    List<CheckResult> asTacked,
    List<String> stops,
    List<String> corrected) {
  public TackReport {
    reasons = List.copyOf(reasons);
    moves = List.copyOf(moves);
    again = List.copyOf(again);
    asTacked = List.copyOf(asTacked);
    stops = List.copyOf(stops);
    corrected = List.copyOf(corrected);
  }

  /**
   * A bracket that is out of place.
   *
   * @param mount which
   * @param what which, in words
   * @param offMm how far it is off: forward, left, up (mm)
   * @param deviationMm standard deviation of each (mm)
   */
  public record Move(Mount mount, String what, double[] offMm, double[] deviationMm) {
    public Move {
      offMm = offMm.clone();
      deviationMm = deviationMm.clone();
    }

    /** How far it is off altogether (mm). */
    public double distanceMm() {
      return Math.hypot(Math.hypot(offMm[0], offMm[1]), offMm[2]);
    }
  }

  /**
   * A reading to take again.
   *
   * @param id its name on the fit-up sheet
   * @param why what is wrong with it
   */
  public record Again(String id, String why) {}

  /**
   * How the axle sits under the frame.
   *
   * @param forwardMm ahead of where it belongs (mm)
   * @param leftMm left of where it belongs (mm)
   * @param turnRad left end ahead negative, seen from above, anticlockwise positive (rad)
   * @param squareMm left wheelbase less right (mm)
   */
  public record AxleSeat(double forwardMm, double leftMm, double turnRad, double squareMm) {}
}
