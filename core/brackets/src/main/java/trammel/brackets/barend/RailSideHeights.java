package trammel.brackets.barend;

import java.util.ArrayList;
import java.util.List;
import trammel.brackets.bar.AxlePickUp;
import trammel.brackets.bar.JointSeat;
import trammel.brackets.bar.NearestHeight;
import trammel.brackets.bar.RailSideBars;
import trammel.engine.layout.Bar;

/**
 * How far under and over the axle's centre bars beside the rails join it where the job does not
 * say: as near to the usual distance as tube, ground and the flats of the rails allow.
 *
 * @param beside places the bars
 */
public record RailSideHeights(RailSideBars beside) {
  private static final double INCH_MM = 25.4;

  /** Lower joints 3 in under the axle's centre, 8 in at most: common practice, no source. */
  private static final double USUAL_DROP_MM = 3 * INCH_MM;

  private static final double MOST_DROP_MM = 8 * INCH_MM;

  /** Upper joints 4 1/2 in over it, 14 in at most: common practice, no source. */
  private static final double USUAL_RISE_MM = 4.5 * INCH_MM;

  private static final double MOST_RISE_MM = 14 * INCH_MM;

  /**
   * The lower joints under the axle's centre (mm).
   *
   * @param lengthMm length of the bars
   * @param riseRad their rise to the front
   */
  public double dropMm(double lengthMm, double riseRad) {
    JointSeat seat = beside.makeUp().axleSeat();
    double mostMm = Math.min(MOST_DROP_MM, AxlePickUp.clearOfGroundMm(seat, beside.chassis()));
    return NearestHeight.of(
        USUAL_DROP_MM,
        AxlePickUp.clearOfTubeMm(seat, beside.chassis()),
        mostMm,
        dropMm -> isRoom(List.of(), "lower", -dropMm, lengthMm, riseRad));
  }

  /**
   * The upper joints over the axle's centre (mm).
   *
   * @param lower the lower bars, which are there
   * @param lengthMm length of the upper bars
   * @param fallRad their fall to the front
   */
  public double riseMm(List<Bar> lower, double lengthMm, double fallRad) {
    return NearestHeight.of(
        USUAL_RISE_MM,
        AxlePickUp.clearOfTubeMm(beside.makeUp().axleSeat(), beside.chassis()),
        MOST_RISE_MM,
        riseMm -> isRoom(lower, "upper", riseMm, lengthMm, -fallRad));
  }

  private boolean isRoom(
      List<Bar> others, String name, double upMm, double lengthMm, double riseRad) {
    List<Bar> bars = new ArrayList<>(others);
    bars.addAll(beside.pair(name, "", upMm, lengthMm, riseRad));
    return FrameRoom.isThere(bars, beside.makeUp(), beside.chassis().rails());
  }
}
