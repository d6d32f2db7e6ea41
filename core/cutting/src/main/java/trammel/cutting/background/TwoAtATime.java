package trammel.cutting.background;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Many pieces of work of one kind, two at a time. What each yields must not depend on the others:
 * then all together is the same on any number of processors.
 */
public final class TwoAtATime {
  private static final int MOST_WORKERS = 2;

  private TwoAtATime() {}

  /** Threads that this machine has processors for: one or two. */
  public static int workers() {
    return Math.min(MOST_WORKERS, Runtime.getRuntime().availableProcessors());
  }

  /**
   * Does all the work; the caller's own thread does its share.
   *
   * @return what each piece of work yields, in the order given
   */
  public static <T> List<T> all(List<Callable<T>> work) {
    return all(work, workers());
  }

  /**
   * Does all the work on so many threads; the caller's own is one of them.
   *
   * @return what each piece of work yields, in the order given, whatever the number of threads
   */
  public static <T> List<T> all(List<Callable<T>> work, int workers) {
    List<T> results = new ArrayList<>(work.size());
    for (int i = 0; i < work.size(); i++) {
      results.add(null);
    }
    AtomicInteger next = new AtomicInteger();
    List<Background<Void>> others = new ArrayList<>();
    for (int w = 1; w < Math.min(workers, work.size()); w++) {
      others.add(
          Background.start(
              () -> {
                deal(work, results, next);
                return null;
              }));
    }
    try {
      deal(work, results, next);
    } finally {
      next.set(work.size());
      others.forEach(Background::get);
    }
    return results;
  }

  /** Each place of the results is written by one thread and read when all are done. */
  private static <T> void deal(List<Callable<T>> work, List<T> results, AtomicInteger next) {
    int i = next.getAndIncrement();
    while (i < work.size()) {
      try {
        results.set(i, work.get(i).call());
      } catch (RuntimeException thrown) {
        throw thrown;
      } catch (Exception checked) {
        throw new IllegalStateException(checked);
      }
      i = next.getAndIncrement();
    }
  }
}
