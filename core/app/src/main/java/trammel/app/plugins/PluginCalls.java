package trammel.app.plugins;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Knows at every moment which plugin is running, on which thread and since when. A plugin that does
 * not return, or that ends the process, cannot be caught where it was called: whoever ends the
 * process for it asks here who it was.
 */
public final class PluginCalls {
  /** Seconds after which a plugin counts as one that does not return, unless set otherwise. */
  public static final int PATIENCE_SECONDS = 60;

  private static final String PATIENCE_VARIABLE = "TRAMMEL_PLUGIN_SECONDS";
  private static final long LOOK_EVERY_MS = 250;
  private static final long NANOS_PER_SECOND = 1_000_000_000L;

  private static final Map<Thread, Call> RUNNING = new ConcurrentHashMap<>();
  private static volatile Overseer overseer;
  private static volatile Call latest;
  private static boolean overseen;

  /**
   * A call that has not come back.
   *
   * @param plugin the plugin, by id and jar
   * @param asked what it was asked for
   * @param sinceNanos when it was called, by {@link System#nanoTime}
   */
  record Call(String plugin, String asked, long sinceNanos) {}

  /** Ends the process for a plugin. Without one, as in tests, nothing is overseen. */
  public interface Overseer {
    /** Another plugin runs, or none any more. */
    void runs(String plugins);

    /**
     * A plugin does not return; the process is to end.
     *
     * @param message which plugin, at what
     * @param where the thread that it runs on
     */
    void isStuck(String message, Thread where);

    /**
     * A plugin has called for the end of the process.
     *
     * @param message which plugin, at what
     * @param where the thread that called for it
     */
    void hasEndedIt(String message, Thread where);
  }

  private PluginCalls() {}

  /** Has the process overseen from the first call of a plugin on. */
  public static void overseenBy(Overseer one) {
    overseer = one;
  }

  /** Notes that a plugin is called; gives what the thread was at before, null if nothing. */
  static Call enter(String plugin, String asked) {
    if (overseer != null) {
      startOverseeing();
    }
    Thread thread = Thread.currentThread();
    Call before = RUNNING.get(thread);
    if (before == null) {
      latest = new Call(plugin, asked, System.nanoTime());
      RUNNING.put(thread, latest);
      tell();
    }
    return before;
  }

  /** Notes that a call has come back. */
  static void leave(Call before) {
    if (before == null) {
      RUNNING.remove(Thread.currentThread());
      tell();
    }
  }

  private static void tell() {
    Overseer one = overseer;
    if (one != null) {
      StringBuilder plugins = new StringBuilder();
      for (Call call : RUNNING.values()) {
        plugins.append(plugins.isEmpty() ? "" : " or ").append(call.plugin());
      }
      one.runs(plugins.toString());
    }
  }

  private static synchronized void startOverseeing() {
    if (!overseen) {
      overseen = true;
      Runtime.getRuntime().addShutdownHook(new Thread(PluginCalls::atTheEnd, "plugins at the end"));
      Thread watch = new Thread(PluginCalls::watch, "watch over plugins");
      watch.setDaemon(true);
      watch.start();
    }
  }

  private static void watch() {
    int patienceSeconds = patienceSeconds();
    while (true) {
      try {
        Thread.sleep(LOOK_EVERY_MS);
      } catch (InterruptedException unwanted) {
        return;
      }
      for (Map.Entry<Thread, Call> entry : RUNNING.entrySet()) {
        Call call = entry.getValue();
        if (System.nanoTime() - call.sinceNanos() > patienceSeconds * NANOS_PER_SECOND) {
          overseer.isStuck(
              "Plugin "
                  + call.plugin()
                  + " did not come back within "
                  + patienceSeconds
                  + " seconds when it was asked for "
                  + call.asked()
                  + ".",
              entry.getKey());
          return;
        }
      }
    }
  }

  private static int patienceSeconds() {
    String given = System.getenv(PATIENCE_VARIABLE);
    try {
      return given == null ? PATIENCE_SECONDS : Math.max(1, Integer.parseInt(given.strip()));
    } catch (NumberFormatException noNumber) {
      return PATIENCE_SECONDS;
    }
  }

  /** Whoever called for the end stands in {@link Runtime#exit} now; at a signal, nobody does. */
  private static void atTheEnd() {
    for (Map.Entry<Thread, StackTraceElement[]> entry : Thread.getAllStackTraces().entrySet()) {
      for (StackTraceElement frame : entry.getValue()) {
        if (frame.getMethodName().equals("exit")
            && frame.getClassName().equals("java.lang.Runtime")) {
          tellEnder(entry.getKey());
          return;
        }
      }
    }
  }

  private static void tellEnder(Thread thread) {
    // A thread that the plugin started itself is in no call; then it is whoever was called last.
    Call call = Optional.ofNullable(RUNNING.get(thread)).orElse(latest);
    overseer.hasEndedIt(
        "Plugin "
            + call.plugin()
            + " ended the program when it was asked for "
            + call.asked()
            + ".",
        thread);
  }
}
