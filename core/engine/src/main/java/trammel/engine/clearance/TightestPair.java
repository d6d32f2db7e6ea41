package trammel.engine.clearance;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * Finds the one pair that comes closest over a set of poses. It is faster than a {@link
 * ClearanceSweep}, because a pair is measured only where it could be closer than all before it.
 */
public final class TightestPair {
  private final PoseGrid grid;
  private final Placement[] placements;
  private final Map<String, BodyTrack> tracks = new HashMap<>();
  private final PairGap pairGap = new PairGap();

  private ClearancePair tightest;
  private int pose;
  private double leastMm = Double.POSITIVE_INFINITY;

  /**
   * @param poses the poses to look at, at least one
   * @throws IllegalArgumentException if there are no poses
   */
  public TightestPair(List<AxlePose> poses) {
    grid = new PoseGrid(poses);
    placements = new Placement[grid.size()];
    for (int k = 0; k < placements.length; k++) {
      placements[k] = grid.pose(k).placement();
    }
  }

  /** Takes a pair into account; bodies of one name are one body in all pairs. */
  public void add(ClearancePair pair) {
    BodyTrack first = track(pair.first());
    BodyTrack second = track(pair.second());
    pairGap.start(pair);
    for (int k = 0; k < placements.length; k++) {
      double gapMm = pairGap.gapOrMoreThan(leastMm, first.at(k), second.at(k));
      if (gapMm < leastMm) {
        leastMm = gapMm;
        tightest = pair;
        pose = k;
      }
    }
  }

  private BodyTrack track(Body body) {
    BodyTrack track = tracks.get(body.name());
    if (track == null) {
      track = new BodyTrack(body, grid, placements);
      tracks.put(body.name(), track);
    }
    return track;
  }

  /** The least gap among the pairs so far (mm), infinite before the first. */
  public double leastMm() {
    return leastMm;
  }

  /** The pair that comes closest, at the pose where it does; empty before the first pair. */
  public Optional<LeastGap> found() {
    if (tightest == null) {
      return Optional.empty();
    }
    pairGap.start(tightest);
    Gap gap = pairGap.gap(track(tightest.first()).at(pose), track(tightest.second()).at(pose));
    AxlePose at = grid.pose(pose);
    return Optional.of(new LeastGap(tightest, gap, at.heaveMm(), at.rollRad(), false));
  }
}
