package trammel.cutting.internal;

import java.time.Duration;
import java.util.function.Supplier;

/**
 * The moment at which a search must hand over the best it has: after a time, or after an effort
 * that is counted, so that the answer is the same on every machine.
 *
 * <p>Effort is counted in looks at the deadline or, finer, in steps that the search says it has
 * taken. A deadline that counts is asked by one thread.
 */
public final class Deadline {
  private static final double NANOS_PER_SECOND = 1e9;

  /** A time so far off that only the effort counts (ns). */
  private static final long FAR_NANOS = Duration.ofHours(1).toNanos();

  /** Steps that count for a second of a search whose effort is counted, whatever the machine. */
  private static final double STEPS_PER_SECOND = 5e8;

  /** The most effort of a deadline by the clock. */
  private static final long NOT_COUNTED = Long.MAX_VALUE;

  private final long startNanos;
  private final long endNanos;

  /** Looks and, where they count, steps so far: one number for a deadline and all its parts. */
  private final long[] spent;

  private final long most;
  private final boolean countsSteps;

  private Deadline(long startNanos, long endNanos, long[] spent, long most, boolean countsSteps) {
    this.startNanos = startNanos;
    this.endNanos = endNanos;
    this.spent = spent;
    this.most = most;
    this.countsSteps = countsSteps;
  }

  /** A deadline that does not come. */
  public static Deadline never() {
    return afterSteps(Long.MAX_VALUE / 2);
  }

  /** A deadline after a number of steps of the search, looks at it included; above 0. */
  public static Deadline afterSteps(long steps) {
    return after(steps, "steps", true);
  }

  /** A deadline after the steps that count for a time, whatever the machine; zero is refused. */
  public static Deadline counted(Duration limit) {
    requireTime(limit);
    return afterSteps((long) Math.ceil(limit.toNanos() / NANOS_PER_SECOND * STEPS_PER_SECOND));
  }

  private static Deadline after(long effort, String unit, boolean countsSteps) {
    if (effort <= 0) {
      throw new IllegalArgumentException(
          "the effort of a search is " + effort + " " + unit + "; it must be above 0.");
    }
    long now = System.nanoTime();
    return new Deadline(now, now + FAR_NANOS, new long[1], effort, countsSteps);
  }

  /** A deadline the given time from now; zero or less is refused. */
  public static Deadline in(Duration limit) {
    requireTime(limit);
    long now = System.nanoTime();
    return new Deadline(now, now + limit.toNanos(), new long[1], NOT_COUNTED, false);
  }

  private static void requireTime(Duration limit) {
    if (limit.isNegative() || limit.isZero()) {
      throw new IllegalArgumentException(
          "the time limit is "
              + limit.toMillis()
              + " ms; it must be above 0. Give at least a tenth of a second.");
    }
  }

  /** A deadline for each problem, the given time from its start; zero or less is refused. */
  public static Supplier<Deadline> eachIn(Duration limit) {
    requireTime(limit);
    return () -> in(limit);
  }

  /** A deadline for each problem after the steps that count for a time; zero is refused. */
  public static Supplier<Deadline> eachCounted(Duration limit) {
    requireTime(limit);
    return () -> counted(limit);
  }

  /** A deadline for each problem after a number of looks at it, which must be above 0. */
  public static Supplier<Deadline> eachAfterLooks(long looks) {
    return () -> after(looks, "looks", false);
  }

  /** A deadline for each problem after a number of steps, which must be above 0. */
  public static Supplier<Deadline> eachAfterSteps(long steps) {
    return () -> afterSteps(steps);
  }

  /** An earlier deadline: the given part of what is still left, from now. */
  public Deadline part(double fraction) {
    long now = System.nanoTime();
    long partOfMost =
        isCounted() ? spent[0] + (long) Math.ceil((most - spent[0]) * fraction) : NOT_COUNTED;
    return new Deadline(
        startNanos, now + (long) ((endNanos - now) * fraction), spent, partOfMost, countsSteps);
  }

  /** Whether effort ends the search, and not the clock. */
  public boolean isCounted() {
    return most != NOT_COUNTED;
  }

  /**
   * Counts steps of a search; a deadline by the clock or by looks alone does not mind. Long steps
   * between two looks count by what they cost.
   */
  public void spend(long steps) {
    if (countsSteps) {
      spent[0] += steps;
    }
  }

  /** This deadline for work too fine for looks: one that counts looks alone does not mind it. */
  public Deadline forSteps() {
    return isCounted() && !countsSteps ? never() : this;
  }

  /** An earlier deadline: the given time, or the steps that count for it, from now. */
  public Deadline within(double seconds) {
    if (isCounted()) {
      long after = spent[0] + (long) (seconds * STEPS_PER_SECOND);
      return new Deadline(startNanos, endNanos, spent, Math.min(after, most), countsSteps);
    }
    long end = System.nanoTime() + (long) (seconds * NANOS_PER_SECOND);
    return new Deadline(
        startNanos, end - endNanos < 0 ? end : endNanos, spent, NOT_COUNTED, countsSteps);
  }

  /** True once the time is up or the effort is spent; counts as a look. */
  public boolean isPast() {
    if (isCounted()) {
      return spent[0]++ >= most;
    }
    return System.nanoTime() - endNanos >= 0;
  }

  /** Seconds since the start. */
  public double elapsedSeconds() {
    return (System.nanoTime() - startNanos) / NANOS_PER_SECOND;
  }
}
