package trammel.cutting.outlines;

import java.util.concurrent.atomic.AtomicReference;

/** Runs workers at the same time: the first on the caller's thread, the others on their own. */
final class SideBySide {
  private SideBySide() {}

  /** Returns when all are done; what one of them throws is thrown on. */
  static void run(StripWorker[] workers) {
    AtomicReference<RuntimeException> failure = new AtomicReference<>();
    Thread[] others = new Thread[workers.length - 1];
    for (int t = 0; t < others.length; t++) {
      StripWorker worker = workers[t + 1];
      others[t] =
          new Thread("nesting " + (t + 1)) {
            @Override
            public void run() {
              try {
                worker.run();
              } catch (RuntimeException failed) {
                failure.set(failed);
              }
            }
          };
      others[t].setDaemon(true);
      others[t].start();
    }
    workers[0].run();
    join(others);
    if (failure.get() != null) {
      throw failure.get();
    }
  }

  private static void join(Thread[] threads) {
    boolean interrupted = false;
    for (Thread thread : threads) {
      while (thread.isAlive()) {
        try {
          thread.join();
        } catch (InterruptedException early) {
          interrupted = true;
        }
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
