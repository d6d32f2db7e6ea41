package trammel.engine.clearance;

import java.util.Arrays;
import java.util.Map;

/** Looks for the least gap of a pair among the poses of a grid. One for each thread. */
final class GridSearch {

  /**
   * Between two neighbouring poses a pair is never further than half of its step from one of them,
   * so no gap in between is lower than the lower of theirs by more than this share. A tenth more
   * allows for paths that are not quite straight.
   */
  private static final double REACH_SHARE = 0.55;

  /** Gaps this close count as the same height, so that a level stretch has one start. */
  private static final double LEVEL_MM = 1e-6;

  private static final int GREATEST_STARTS = 8;

  private final PoseGrid grid;
  private final Map<String, BodyTrack> tracks;
  private final double refineBelowMm;
  private final PairGap pairGap = new PairGap();
  private final double[] gapsMm;

  /**
   * @param refineBelowMm pairs that cannot come under this get no starts
   */
  GridSearch(PoseGrid grid, Map<String, BodyTrack> tracks, double refineBelowMm) {
    this.grid = grid;
    this.refineBelowMm = refineBelowMm;
    this.tracks = tracks;
    gapsMm = new double[grid.size()];
  }

  GridLeast search(ClearancePair pair) {
    BodyTrack first = tracks.get(pair.first().name());
    BodyTrack second = tracks.get(pair.second().name());
    double reachMm = REACH_SHARE * (first.greatestStepMm() + second.greatestStepMm());
    pairGap.start(pair);
    int least = 0;
    gapsMm[0] = pairGap.gapOrMoreThan(Double.POSITIVE_INFINITY, first.at(0), second.at(0));
    for (int k = 1; k < gapsMm.length; k++) {
      double limitMm = gapsMm[least] + (isClose(gapsMm[least], reachMm) ? reachMm : 0);
      gapsMm[k] = pairGap.gapOrMoreThan(limitMm, first.at(k), second.at(k));
      if (gapsMm[k] < gapsMm[least] - LEVEL_MM) {
        least = k;
      }
    }
    boolean isClose = isClose(gapsMm[least], reachMm);
    int[] starts = isClose ? starts(gapsMm[least] + reachMm) : new int[0];
    return new GridLeast(least, gapsMm[least], reachMm, isClose, starts);
  }

  private boolean isClose(double leastMm, double reachMm) {
    return leastMm - reachMm < refineBelowMm;
  }

  private int[] starts(double limitMm) {
    int[] starts = new int[GREATEST_STARTS];
    int count = 0;
    for (int k = 0; k < gapsMm.length; k++) {
      if (gapsMm[k] > limitMm || !isLowest(k)) {
        continue;
      }
      int place = count < GREATEST_STARTS ? count++ : GREATEST_STARTS;
      while (place > 0 && gapsMm[starts[place - 1]] > gapsMm[k]) {
        if (place < GREATEST_STARTS) {
          starts[place] = starts[place - 1];
        }
        place--;
      }
      if (place < GREATEST_STARTS) {
        starts[place] = k;
      }
    }
    return Arrays.copyOf(starts, count);
  }

  private boolean isLowest(int index) {
    for (int rows = -1; rows <= 1; rows++) {
      for (int columns = -1; columns <= 1; columns++) {
        int other = grid.neighbour(index, rows, columns);
        boolean isRival = other >= 0 && other != index;
        // On a level stretch the first pose speaks for the rest.
        double levelMm = other < index ? LEVEL_MM : -LEVEL_MM;
        if (isRival && gapsMm[other] < gapsMm[index] + levelMm) {
          return false;
        }
      }
    }
    return true;
  }
}
