package trammel.planning.arrange;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is asked of a search.
 *
 * @param keep fields of the job file that stay as they are, each with all that stands under it,
 *     such as {@code chosen.spring} or {@code chosen.ride}
 * @param vary fields with the range that they may take, such as {@code chosen.ride.bump} with
 *     {@code 3 in..4 in}, or with the values to choose from, such as {@code 3 in,3 1/2 in}
 * @param goal what the best layout is best at
 * @param layouts how many layouts at most, 1 to 8
 * @param effort how many layouts may be tried, 20 or more; the same effort gives the same answer on
 *     every machine
 * @param seed any number; the same one gives the same answer
 * @param workers threads that search side by side, 1 to 16; the answer is the same for any number
 */
public record Wishes(
    List<String> keep,
    Map<String, String> vary,
    Goal goal,
    int layouts,
    int effort,
    long seed,
    int workers) {
  /** Layouts that are tried unless more or fewer are asked for. */
  public static final int USUAL_EFFORT = 900;

  /** How many layouts are given unless more or fewer are asked for. */
  public static final int USUAL_LAYOUTS = 4;

  private static final int MOST_LAYOUTS = 8;
  private static final int LEAST_EFFORT = 20;
  private static final int MOST_WORKERS = 16;

  /** Copies the collections and refuses numbers outside their ranges. */
  public Wishes {
    keep = List.copyOf(keep);
    vary = Map.copyOf(new LinkedHashMap<>(vary));
    within("number of layouts", layouts, 1, MOST_LAYOUTS);
    within("effort", effort, LEAST_EFFORT, Integer.MAX_VALUE);
    within("number of workers", workers, 1, MOST_WORKERS);
  }

  /** The usual search: nothing kept beyond the job's own points, the cheapest layouts. */
  public static Wishes usual() {
    return new Wishes(
        List.of(),
        Map.of(),
        Goal.PRICE,
        USUAL_LAYOUTS,
        USUAL_EFFORT,
        1,
        Math.min(2, Runtime.getRuntime().availableProcessors()));
  }

  /** The same with fields kept. */
  public Wishes keeping(List<String> fields) {
    return new Wishes(fields, vary, goal, layouts, effort, seed, workers);
  }

  /** The same with fields that may take other values. */
  public Wishes varying(Map<String, String> ranges) {
    return new Wishes(keep, ranges, goal, layouts, effort, seed, workers);
  }

  /** The same for another goal. */
  public Wishes aimingAt(Goal other) {
    return new Wishes(keep, vary, other, layouts, effort, seed, workers);
  }

  /** The same with so many layouts at most. */
  public Wishes giving(int most) {
    return new Wishes(keep, vary, goal, most, effort, seed, workers);
  }

  /** The same with so many layouts tried. */
  public Wishes trying(int tries) {
    return new Wishes(keep, vary, goal, layouts, tries, seed, workers);
  }

  /** The same from another seed. */
  public Wishes from(long other) {
    return new Wishes(keep, vary, goal, layouts, effort, other, workers);
  }

  /** The same on so many threads. */
  public Wishes on(int threads) {
    return new Wishes(keep, vary, goal, layouts, effort, seed, threads);
  }

  /** Whether a field is kept, by itself or with the group that it stands in. */
  boolean keeps(String path) {
    return keep.stream().anyMatch(kept -> path.equals(kept) || path.startsWith(kept + "."));
  }

  private static void within(String what, int given, int least, int most) {
    if (given < least || given > most) {
      throw new IllegalArgumentException(
          "The " + what + " is " + given + "; give " + least + " to " + most + ".");
    }
  }
}
