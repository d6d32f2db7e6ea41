package trammel.brackets.barend;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import trammel.brackets.bar.RailSideBars;
import trammel.engine.layout.Bar;

/**
 * A lower and an upper pair of bars beside the rails, both to the same frame ends' room.
 *
 * @param beside places the bars
 * @param lower the lower pair; its slope is the rise to the front
 * @param upper the upper pair; its slope is the fall to the front
 */
public record RailSidePairs(RailSideBars beside, Pair lower, Pair upper) {
  /**
   * One pair.
   *
   * @param lengthMm joint to joint (mm)
   * @param slopeRad rise or fall to the front (rad)
   * @param fromCentreMm joints under or over the axle's centre (mm); empty where the vehicle
   *     decides
   */
  public record Pair(double lengthMm, double slopeRad, Optional<Double> fromCentreMm) {}

  /**
   * The four bars, the lower ones first, left before right.
   *
   * @throws trammel.brackets.UnworkableLayoutException if a joint touches the tube or the ground,
   *     or a frame end finds no room on the rail
   */
  public List<Bar> bars() {
    RailSideHeights heights = new RailSideHeights(beside);
    double dropMm =
        lower.fromCentreMm.orElseGet(() -> heights.dropMm(lower.lengthMm, lower.slopeRad));
    List<Bar> bars =
        new ArrayList<>(
            beside.pair("lower", "lower_drop", -dropMm, lower.lengthMm, lower.slopeRad));
    double riseMm =
        upper.fromCentreMm.orElseGet(
            () -> heights.riseMm(List.copyOf(bars), upper.lengthMm, upper.slopeRad));
    bars.addAll(beside.pair("upper", "upper_rise", riseMm, upper.lengthMm, -upper.slopeRad));
    FrameRoom.require(bars, beside.makeUp(), beside.chassis().rails());
    return List.copyOf(bars);
  }
}
