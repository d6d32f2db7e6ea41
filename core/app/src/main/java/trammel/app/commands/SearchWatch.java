package trammel.app.commands;

import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import trammel.planning.arrange.ArrangeListener;

/**
 * Ends a search when its time is up or Ctrl-C is pressed, so that the best so far is still told.
 */
final class SearchWatch implements ArrangeListener, AutoCloseable {
  private static final long PATIENCE_SECONDS = 30;

  private final long endNanos;
  private final CountDownLatch done = new CountDownLatch(1);
  private final Thread atCtrlC = new Thread(this::interrupted, "search watch");
  private volatile boolean stopped;
  private volatile Progress progress = new Progress(0, 0, 0);

  private SearchWatch(long endNanos) {
    this.endNanos = endNanos;
  }

  static SearchWatch start(Optional<Long> seconds) {
    long most = seconds.map(TimeUnit.SECONDS::toNanos).orElse(Long.MAX_VALUE / 2);
    SearchWatch watch = new SearchWatch(System.nanoTime() + most);
    Runtime.getRuntime().addShutdownHook(watch.atCtrlC);
    return watch;
  }

  /** Java ends when this returns, so it waits until the best so far is told. */
  private void interrupted() {
    stopped = true;
    try {
      done.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException impatient) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void progress(Progress now) {
    progress = now;
  }

  @Override
  public boolean isStopped() {
    return stopped || System.nanoTime() - endNanos > 0;
  }

  /** How far it is, in words. */
  String line() {
    return "searching, "
        + progress.tried()
        + " of "
        + progress.effort()
        + " layouts tried, "
        + progress.passing()
        + " kinds pass";
  }

  @Override
  public void close() {
    done.countDown();
    try {
      Runtime.getRuntime().removeShutdownHook(atCtrlC);
    } catch (IllegalStateException endingAlready) {
      // Ctrl-C was pressed: the hook is at work and lets Java go when the result is told.
      Thread.yield();
    }
  }
}
