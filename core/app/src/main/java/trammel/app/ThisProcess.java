package trammel.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import trammel.app.commandline.ExitCode;
import trammel.app.desk.FaultReport;
import trammel.app.plugins.PluginCalls;

/**
 * The process of a command: how it ends, whoever ends it. The launcher waits for it and cannot tell
 * from the status of Java alone whether Trammel said 1, Java broke down, or a plugin ended the
 * program; so Trammel ends with statuses that nobody else uses, and the launcher puts them right.
 */
final class ThisProcess implements PluginCalls.Overseer {
  /** Process id of the launcher, which it gives. */
  private static final String LAUNCHER_PROPERTY = "trammel.launcher";

  /** What a launcher gives that does not know its own process id. */
  private static final String UNWATCHED = "unwatched";

  /** A file that the launcher reads if this process ends without a word. */
  private static final String RUNNING_PROPERTY = "trammel.running";

  /** What the launcher takes off again. */
  private static final int LAUNCHED = 100;

  private static final int KILLED = 143;
  private static final long LOOK_EVERY_MS = 100;
  private static final long LONGEST_END_MS = 2000;
  private static final int LONGEST_NAME = 200;

  private final PrintWriter err;
  private final List<String> words;
  private final boolean launched;
  private RandomAccessFile running;
  private boolean noted;
  private volatile boolean ending;

  private ThisProcess(PrintWriter err, List<String> words, boolean launched) {
    this.err = err;
    this.words = words;
    this.launched = launched;
  }

  /**
   * This process, seen to from now on.
   *
   * @param err takes what is wrong
   * @param words the words of the command
   */
  static ThisProcess started(PrintWriter err, String... words) {
    String launcher = System.getProperty(LAUNCHER_PROPERTY);
    ThisProcess process = new ThisProcess(err, List.of(words), launcher != null);
    if (launcher != null && !launcher.equals(UNWATCHED)) {
      process.endWith(launcher);
    }
    PluginCalls.overseenBy(process);
    return process;
  }

  /** Ends it as the command says. */
  void end(ExitCode exitCode) {
    ending = true;
    forgetNote();
    System.exit(status(exitCode));
  }

  private int status(ExitCode exitCode) {
    return launched ? LAUNCHED + exitCode.code() : exitCode.code();
  }

  /** Whoever kills the launcher means this process. */
  private void endWith(String launcher) {
    Thread watch =
        new Thread(
            () -> {
              while (isParent(launcher)) {
                try {
                  Thread.sleep(LOOK_EVERY_MS);
                } catch (InterruptedException unwanted) {
                  return;
                }
              }
              ending = true;
              forgetNote();
              System.exit(KILLED);
            },
            "watch over the launcher");
    watch.setDaemon(true);
    watch.start();
  }

  private static boolean isParent(String launcher) {
    return ProcessHandle.current()
        .parent()
        .map(parent -> Long.toString(parent.pid()).equals(launcher))
        .orElse(false);
  }

  @Override
  public synchronized void runs(String plugins) {
    try {
      if (!noted) {
        noted = true;
        openNote();
      }
      if (running != null) {
        running.seek(0);
        running.write(line(plugins));
      }
    } catch (IOException unwritten) {
      // The launcher then says that Java ended, but not at which plugin.
      running = null;
    }
  }

  private static byte[] line(String plugins) {
    String name = plugins.substring(0, Math.min(LONGEST_NAME, plugins.length()));
    byte[] line = new byte[4 * LONGEST_NAME];
    Arrays.fill(line, (byte) ' ');
    byte[] text = name.getBytes(StandardCharsets.UTF_8);
    System.arraycopy(text, 0, line, 0, Math.min(text.length, line.length - 1));
    line[line.length - 1] = '\n';
    return line;
  }

  private void openNote() throws IOException {
    String name = System.getProperty(RUNNING_PROPERTY);
    if (name == null) {
      return;
    }
    Path file = Path.of(name);
    try {
      Files.createFile(file);
    } catch (FileAlreadyExistsException ofOneGone) {
      Files.delete(file);
      Files.createFile(file);
    }
    running = new RandomAccessFile(file.toFile(), "rw");
  }

  private synchronized void forgetNote() {
    if (running != null) {
      running = null;
      try {
        Files.deleteIfExists(Path.of(System.getProperty(RUNNING_PROPERTY)));
      } catch (IOException left) {
        // The launcher takes it away.
        return;
      }
    }
  }

  @Override
  public void isStuck(String message, Thread where) {
    ending = true;
    tell(message, where);
    int status = status(ExitCode.FAULT);
    Thread end = new Thread(() -> System.exit(status), "end");
    end.start();
    try {
      end.join(LONGEST_END_MS);
    } catch (InterruptedException unwanted) {
      Thread.currentThread().interrupt();
    }
    // Something at the end does not come back either.
    Runtime.getRuntime().halt(status);
  }

  @Override
  public void hasEndedIt(String message, Thread where) {
    if (!ending) {
      tell(message, where);
      Runtime.getRuntime().halt(status(ExitCode.FAULT));
    }
  }

  private void tell(String message, Thread where) {
    Throwable fault = new IllegalStateException(message);
    fault.setStackTrace(where.getStackTrace());
    err.println(
        message
            + " No result of this run can be trusted. Take its jar out of the plugins folder, or"
            + " get one that works.\n"
            + new FaultReport(words, fault).write());
    err.flush();
    forgetNote();
  }
}
