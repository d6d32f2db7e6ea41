package trammel.engine.clearance;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * Looks for a lower gap between the poses of a grid: from each start it steps to the lowest of the
 * eight poses around it and halves the step where none is lower, until a step can no longer change
 * the gap noticeably.
 */
final class Refinement {

  /** The search ends when a step moves no point of the pair further than this. */
  private static final double FINEST_MM = 0.005;

  /** Bounds the search from one start; some hundred steps are usual. */
  private static final int GREATEST_STEPS = 500;

  private final PoseGrid grid;
  private final PoseSource source;
  private final PairGap pairGap = new PairGap();
  private final Map<Double, Map<Double, Optional<AxlePose>>> known = new HashMap<>();

  private ClearancePair pair;
  private AxlePose best;
  private double bestMm;

  Refinement(PoseGrid grid, PoseSource source) {
    this.grid = grid;
    this.source = source;
  }

  /** The pose with the lowest gap that the search came to. */
  AxlePose refine(ClearancePair nextPair, GridLeast found) {
    pair = nextPair;
    AxlePose lowest = grid.pose(found.pose());
    double lowestMm = found.gapMm();
    for (int start : found.starts()) {
      pairGap.start(pair);
      best = grid.pose(start);
      bestMm = gapOrMoreThan(Double.POSITIVE_INFINITY, best);
      if (bestMm - found.reachMm() < lowestMm) {
        descend(start, found.reachMm());
      }
      if (bestMm < lowestMm) {
        lowest = best;
        lowestMm = bestMm;
      }
    }
    return lowest;
  }

  private double gapOrMoreThan(double limitMm, AxlePose pose) {
    Placement placement = pose.placement();
    return pairGap.gapOrMoreThan(
        limitMm, Placed.of(pair.first().at(placement)), Placed.of(pair.second().at(placement)));
  }

  private void descend(int start, double reachMm) {
    double share = 0.5;
    double heaveStepMm = grid.heaveStepMm(start);
    double rollStepRad = grid.rollStepRad(start);
    if (heaveStepMm == 0 && rollStepRad == 0) {
      return;
    }
    for (int step = 0; step < GREATEST_STEPS && share * reachMm > FINEST_MM; step++) {
      if (!stepsLower(share * heaveStepMm, share * rollStepRad)) {
        share /= 2;
      }
    }
  }

  private boolean stepsLower(double heaveStepMm, double rollStepRad) {
    AxlePose centre = best;
    double centreMm = bestMm;
    for (int rows = -1; rows <= 1; rows++) {
      for (int columns = -1; columns <= 1; columns++) {
        double heaveMm = grid.withinHeaveMm(centre.heaveMm() + rows * heaveStepMm);
        double rollRad = grid.withinRollRad(centre.rollRad() + columns * rollStepRad);
        if (heaveMm != centre.heaveMm() || rollRad != centre.rollRad()) {
          tryPose(heaveMm, rollRad);
        }
      }
    }
    return bestMm < centreMm;
  }

  private void tryPose(double heaveMm, double rollRad) {
    Optional<AxlePose> pose = pose(heaveMm, rollRad);
    if (pose.isEmpty()) {
      return;
    }
    double gapMm = gapOrMoreThan(bestMm, pose.get());
    if (gapMm < bestMm) {
      best = pose.get();
      bestMm = gapMm;
    }
  }

  private Optional<AxlePose> pose(double heaveMm, double rollRad) {
    Map<Double, Optional<AxlePose>> atHeave = known.get(heaveMm);
    if (atHeave == null) {
      atHeave = new HashMap<>();
      known.put(heaveMm, atHeave);
    }
    Optional<AxlePose> pose = atHeave.get(rollRad);
    if (pose == null) {
      pose = source.at(heaveMm, rollRad);
      atHeave.put(rollRad, pose);
    }
    return pose;
  }
}
