package trammel.planning.cutting;

import java.time.Duration;

/** The moment at which a search must hand over the best it has. */
public final class Deadline {
  private static final double NANOS_PER_SECOND = 1e9;

  private final long startNanos;
  private final long endNanos;

  private Deadline(long startNanos, long endNanos) {
    this.startNanos = startNanos;
    this.endNanos = endNanos;
  }

  /** A deadline the given time from now; zero or less is refused. */
  public static Deadline in(Duration limit) {
    if (limit.isNegative() || limit.isZero()) {
      throw new IllegalArgumentException(
          "the time limit is "
              + limit.toMillis()
              + " ms; it must be above 0. Give at least a tenth of a second.");
    }
    long now = System.nanoTime();
    return new Deadline(now, now + limit.toNanos());
  }

  /** An earlier deadline: the given part of the time still left, from now. */
  public Deadline part(double fraction) {
    long now = System.nanoTime();
    return new Deadline(startNanos, now + (long) ((endNanos - now) * fraction));
  }

  /** An earlier deadline: the given time from now, if that comes first. */
  public Deadline within(double seconds) {
    long end = System.nanoTime() + (long) (seconds * NANOS_PER_SECOND);
    return new Deadline(startNanos, end - endNanos < 0 ? end : endNanos);
  }

  /** True once the time is up. */
  public boolean isPast() {
    return System.nanoTime() - endNanos >= 0;
  }

  /** Seconds since the start. */
  public double elapsedSeconds() {
    return (System.nanoTime() - startNanos) / NANOS_PER_SECOND;
  }

  /** Seconds left; negative when the time is up. */
  public double secondsLeft() {
    return (endNanos - System.nanoTime()) / NANOS_PER_SECOND;
  }
}
