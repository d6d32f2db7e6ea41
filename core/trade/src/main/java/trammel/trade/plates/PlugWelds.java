package trammel.trade.plates;

import java.util.ArrayList;
import java.util.List;
import trammel.trade.given.Dimension;

/**
 * A row of plug-weld holes along the middle of a boxing plate.
 *
 * @param diameterMm hole diameter; 0 for no holes
 * @param pitchMm greatest distance between centres; the row is spread evenly
 * @param endMm distance of the first and last hole from the plate's ends
 */
public record PlugWelds(double diameterMm, double pitchMm, double endMm) {
  public static final PlugWelds NONE = new PlugWelds(0.0, 0.0, 0.0);

  /** Least spacing of plug welds in diameters: AISC 360 J2.3b, from memory. */
  private static final double LEAST_PITCH_FACTOR = 4.0;

  private static final int MOST_HOLES = 500;

  public PlugWelds {
    Dimension.notNegativeMm("plug-weld hole diameter", diameterMm);
    if (diameterMm > 0.0) {
      Dimension.atLeastMm(
          "pitch of the plug welds",
          pitchMm,
          LEAST_PITCH_FACTOR * diameterMm,
          "Space plug welds at least four diameters apart.");
      Dimension.atLeastMm(
          "distance of the first plug weld from the end",
          endMm,
          diameterMm,
          "Start at least one diameter from the end.");
    }
  }

  List<Hole> along(List<RailStation> stations) {
    List<Hole> holes = new ArrayList<>();
    if (diameterMm == 0.0) {
      return holes;
    }
    double firstMm = stations.get(0).alongMm() + endMm;
    double lastMm = stations.get(stations.size() - 1).alongMm() - endMm;
    double spanMm =
        Dimension.notNegativeMm(
            "run left for plug welds between the end distances", lastMm - firstMm);
    int gaps = (int) Math.ceil(spanMm / pitchMm - 1e-9);
    Dimension.count("number of plug welds", gaps + 1, 1, MOST_HOLES);
    requireSpacing(spanMm, gaps);
    for (int i = 0; i <= gaps; i++) {
      double xMm = gaps == 0 ? (firstMm + lastMm) / 2.0 : firstMm + i * spanMm / gaps;
      holes.add(new RoundHole(new Point2(xMm, middleMm(stations, xMm)), diameterMm));
    }
    return holes;
  }

  private void requireSpacing(double spanMm, int gaps) {
    if (gaps > 0) {
      Dimension.atLeastMm(
          "spacing of the plug welds when spread evenly",
          spanMm / gaps,
          LEAST_PITCH_FACTOR * diameterMm,
          "Give a larger pitch, or another distance from the ends.");
    }
  }

  private static double middleMm(List<RailStation> stations, double xMm) {
    int next = 1;
    while (next < stations.size() - 1 && stations.get(next).alongMm() < xMm) {
      next++;
    }
    RailStation before = stations.get(next - 1);
    RailStation after = stations.get(next);
    double share = (xMm - before.alongMm()) / (after.alongMm() - before.alongMm());
    double start = (before.lowerMm() + before.upperMm()) / 2.0;
    double end = (after.lowerMm() + after.upperMm()) / 2.0;
    return start + share * (end - start);
  }
}
