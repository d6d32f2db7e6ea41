package trammel.cutting.background;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/**
 * Work done on another core while the caller goes on. Whoever asks for a quote waits for nothing
 * else, so what does not depend on each other runs side by side.
 *
 * @param <T> what it yields
 */
public final class Background<T> {
  private final FutureTask<T> task;

  private Background(Callable<T> work) {
    task = new FutureTask<>(work);
    Thread thread = new Thread(task, "background");
    thread.setDaemon(true);
    thread.start();
  }

  /** Starts the work. */
  public static <T> Background<T> start(Callable<T> work) {
    return new Background<>(work);
  }

  /** What the work yields, waited for; what it throws, it throws here. */
  public T get() {
    try {
      return task.get();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException unchecked) {
        throw unchecked;
      }
      if (failed.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("stopped while waiting for work in the background", stopped);
    }
  }
}
