package trammel.planning.arrange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/**
 * Does the same work on many things, some threads side by side. What each does must not depend on
 * the others.
 *
 * @param workers how many threads
 */
record SideBySide(int workers) {

  /** Works on each; what failed is given back in its place. */
  <T> List<Optional<RuntimeException>> each(List<T> things, Consumer<T> work) {
    List<FutureTask<Void>> tasks = new ArrayList<>();
    for (T thing : things) {
      tasks.add(new FutureTask<>(() -> work.accept(thing), null));
    }
    AtomicInteger next = new AtomicInteger();
    Runnable worker =
        () -> {
          for (int i = next.getAndIncrement(); i < tasks.size(); i = next.getAndIncrement()) {
            tasks.get(i).run();
          }
        };
    for (int i = 1; i < Math.min(workers, tasks.size()); i++) {
      Thread thread = new Thread(worker, "arrange-" + i);
      thread.setDaemon(true);
      thread.start();
    }
    worker.run();
    return tasks.stream().map(SideBySide::failure).toList();
  }

  private static Optional<RuntimeException> failure(FutureTask<Void> task) {
    try {
      task.get();
      return Optional.empty();
    } catch (ExecutionException failed) {
      if (failed.getCause() instanceof RuntimeException unchecked) {
        return Optional.of(unchecked);
      }
      if (failed.getCause() instanceof Error error) {
        throw error;
      }
      throw new IllegalStateException(failed.getCause());
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("The search was interrupted before its end.", stopped);
    }
  }
}
