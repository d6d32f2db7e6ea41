package trammel.engine.clearance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import trammel.engine.motion.AxlePose;
import trammel.engine.motion.Placement;

/**
 * The least gap of every pair over the travel of the axle. The result is the same for any number of
 * workers.
 *
 * @param pairs what is compared
 * @param refineBelowMm pairs whose gap may come under this are looked at between the poses of the
 *     grid too; the others keep the grid's value
 * @param workers threads that share the pairs, 1 to 64
 */
public record ClearanceSweep(List<ClearancePair> pairs, double refineBelowMm, int workers) {

  private static final double USUAL_REFINE_BELOW_MM = 50;
  private static final int GREATEST_WORKERS = 64;

  /** Fewer gaps than this are found faster than a second thread starts. */
  private static final long WORTH_SHARING = 20_000;

  /**
   * @throws IllegalArgumentException if the limit is not a number, the number of workers is outside
   *     its range, or two different bodies share a name
   */
  public ClearanceSweep {
    pairs = List.copyOf(pairs);
    if (Double.isNaN(refineBelowMm)) {
      throw new IllegalArgumentException(
          "The gap below which the search is refined is not a number; it must be a length in mm."
              + " Usual is "
              + USUAL_REFINE_BELOW_MM
              + " mm.");
    }
    if (workers < 1 || workers > GREATEST_WORKERS) {
      throw new IllegalArgumentException(
          "The clearance check was given "
              + workers
              + " workers; it must be from 1 to "
              + GREATEST_WORKERS
              + ". Give the number of processor cores.");
    }
    bodiesByName(pairs);
  }

  /** A sweep that looks closer at gaps under 50 mm, on all cores up to two. */
  public static ClearanceSweep of(List<ClearancePair> pairs) {
    int workers = Math.min(2, Runtime.getRuntime().availableProcessors());
    return new ClearanceSweep(pairs, USUAL_REFINE_BELOW_MM, workers);
  }

  /**
   * The least gaps among the given poses alone.
   *
   * @param poses at least one
   * @return one result a pair, in the order of the pairs
   * @throws IllegalArgumentException if there are no poses
   */
  public List<LeastGap> over(List<AxlePose> poses) {
    return over(poses, Optional.empty());
  }

  /**
   * The least gaps among the given poses and between them.
   *
   * @param poses at least one; meant as a grid of heave and roll, in any order, with places left
   *     empty where the linkage does not reach
   * @param between gives the poses between those of the grid, never outside its least and greatest
   *     heave and roll; called from this thread only
   * @return one result a pair, in the order of the pairs
   * @throws IllegalArgumentException if there are no poses
   */
  public List<LeastGap> over(List<AxlePose> poses, PoseSource between) {
    return over(poses, Optional.of(between));
  }

  private List<LeastGap> over(List<AxlePose> poses, Optional<PoseSource> between) {
    PoseGrid grid = new PoseGrid(poses);
    double closeMm = between.isPresent() ? refineBelowMm : Double.NEGATIVE_INFINITY;
    GridLeast[] found = searchGrid(grid, closeMm);
    List<LeastGap> results = new ArrayList<>(found.length);
    if (between.isEmpty()) {
      for (int k = 0; k < found.length; k++) {
        results.add(atPose(pairs.get(k), grid.pose(found[k].pose()), false));
      }
      return List.copyOf(results);
    }
    Refinement refinement = new Refinement(grid, between.get());
    for (int k = 0; k < found.length; k++) {
      AxlePose pose =
          found[k].close() ? refinement.refine(pairs.get(k), found[k]) : grid.pose(found[k].pose());
      results.add(atPose(pairs.get(k), pose, found[k].close()));
    }
    return List.copyOf(results);
  }

  private static LeastGap atPose(ClearancePair pair, AxlePose pose, boolean refined) {
    PairGap pairGap = new PairGap();
    pairGap.start(pair);
    Gap gap = pairGap.gap(Placed.of(pair.first().at(pose)), Placed.of(pair.second().at(pose)));
    return new LeastGap(pair, gap, pose.heaveMm(), pose.rollRad(), refined);
  }

  private Map<String, BodyTrack> tracks(PoseGrid grid) {
    Placement[] placements = new Placement[grid.size()];
    for (int k = 0; k < placements.length; k++) {
      placements[k] = grid.pose(k).placement();
    }
    Map<String, BodyTrack> tracks = new HashMap<>();
    for (Map.Entry<String, Body> entry : bodiesByName(pairs).entrySet()) {
      tracks.put(entry.getKey(), new BodyTrack(entry.getValue(), grid, placements));
    }
    return tracks;
  }

  private GridLeast[] searchGrid(PoseGrid grid, double closeMm) {
    Map<String, BodyTrack> tracks = tracks(grid);
    GridLeast[] found = new GridLeast[pairs.size()];
    int shares = (long) found.length * grid.size() < WORTH_SHARING ? 1 : workers;
    List<FutureTask<Void>> tasks = new ArrayList<>();
    for (int share = 1; share < shares; share++) {
      int offset = share;
      GridSearch search = new GridSearch(grid, tracks, closeMm);
      tasks.add(new FutureTask<>(() -> searchShare(search, offset, shares, found), null));
    }
    for (FutureTask<Void> task : tasks) {
      Thread thread = new Thread(task, "clearance");
      thread.setDaemon(true);
      thread.start();
    }
    searchShare(new GridSearch(grid, tracks, closeMm), 0, shares, found);
    for (FutureTask<Void> task : tasks) {
      await(task);
    }
    return found;
  }

  private void searchShare(GridSearch search, int first, int step, GridLeast[] found) {
    for (int k = first; k < found.length; k += step) {
      found[k] = search.search(pairs.get(k));
    }
  }

  private static void await(FutureTask<Void> task) {
    try {
      task.get();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The clearance check was interrupted before its end.", e);
    } catch (ExecutionException e) {
      throw new IllegalStateException(
          "The clearance check failed: " + e.getCause().getMessage(), e.getCause());
    }
  }

  private static Map<String, Body> bodiesByName(List<ClearancePair> pairs) {
    Map<String, Body> bodies = new HashMap<>();
    for (ClearancePair pair : pairs) {
      addBody(pair.first(), bodies);
      addBody(pair.second(), bodies);
    }
    return bodies;
  }

  private static void addBody(Body body, Map<String, Body> bodies) {
    Body known = bodies.putIfAbsent(body.name(), body);
    if (known != null && known != body && !known.equals(body)) {
      throw new IllegalArgumentException(
          "Two different bodies are called '"
              + body.name()
              + "'; every body of a clearance check must have its own name. Rename one.");
    }
  }
}
