package trammel.app.commandline;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * One line on a terminal that says how long a search has run, gone when it is closed. Where nobody
 * watches it says nothing.
 */
public final class WaitingLine {
  private static final Duration EVERY = Duration.ofMillis(500);
  private static final double NANOS_PER_SECOND = 1e9;

  private final PrintWriter err;
  private final Supplier<String> what;
  private final String most;
  private final long startNanos = System.nanoTime();
  private final Optional<Thread> writer;
  private int width;

  private WaitingLine(
      Screen screen, Supplier<String> what, Optional<Duration> limit, Duration every) {
    err = screen.err();
    this.what = what;
    most = limit.isPresent() ? " of " + limit.get().toMillis() / 1000.0 + " s at most" : "";
    writer = screen.watched() ? Optional.of(start(every)) : Optional.empty();
  }

  /**
   * Starts telling.
   *
   * @param what what is going on, such as searching for a plan
   * @param limit longest time that it may take, if that is known
   */
  public static WaitingLine on(Screen screen, String what, Optional<Duration> limit) {
    return new WaitingLine(screen, () -> what, limit, EVERY);
  }

  /**
   * Starts telling.
   *
   * @param what what is going on and how far it is; asked for on another thread, again and again
   */
  public static WaitingLine on(Screen screen, Supplier<String> what) {
    return new WaitingLine(screen, what, Optional.empty(), EVERY);
  }

  static WaitingLine on(Screen screen, Supplier<String> what, Duration every) {
    return new WaitingLine(screen, what, Optional.empty(), every);
  }

  private Thread start(Duration every) {
    Thread thread =
        new Thread(
            () -> {
              try {
                while (true) {
                  Thread.sleep(every.toMillis());
                  write();
                }
              } catch (InterruptedException closed) {
                wipe();
              }
            },
            "waiting line");
    thread.setDaemon(true);
    thread.start();
    return thread;
  }

  private void write() {
    long seconds = (long) ((System.nanoTime() - startNanos) / NANOS_PER_SECOND);
    String line = what.get() + ": " + seconds + " s" + most;
    // A line that got shorter leaves no rest of the longer one behind.
    err.print("\r" + line + " ".repeat(Math.max(0, width - line.length())));
    err.flush();
    width = line.length();
  }

  private void wipe() {
    if (width > 0) {
      err.print("\r" + " ".repeat(width) + "\r");
      err.flush();
    }
  }

  /** Takes the line away. */
  public void close() {
    if (writer.isEmpty()) {
      return;
    }
    writer.get().interrupt();
    try {
      writer.get().join();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
