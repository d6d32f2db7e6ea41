package trammel.page;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import trammel.app.commandline.CommandFailure;
import trammel.app.json.Json;
import trammel.page.folder.JobFolder;
import trammel.page.folder.Refused;

/**
 * Tells every open page when a job file has changed, whoever changed it: the page on another device
 * or another program. One line of JSON a change; an empty line now and then shows that both ends
 * are still there.
 */
final class News implements Closeable {
  private static final long LOOK_EVERY_MS = 400;
  private static final long SIGN_OF_LIFE_MS = 10_000;

  /** Stands for the shop's catalog and ledger, which no job file can be named. */
  private static final String SHOP = "catalog";

  private final JobFolder folder;
  private final Supplier<String> shop;
  private final Map<String, String> revisions = new LinkedHashMap<>();
  private final Map<String, FileTime> written = new HashMap<>();
  private int listeners;
  private boolean closed;

  /**
   * @param folder the jobs
   * @param shop looks at the shop's catalog and ledger, and tells one state of them from another
   */
  News(JobFolder folder, Supplier<String> shop) {
    this.folder = folder;
    this.shop = shop;
    Thread watch = new Thread(this::watch, "watch over the folder");
    watch.setDaemon(true);
    watch.start();
  }

  /** Writes what changes until whoever listens is gone. */
  void tell(OutputStream out) throws IOException {
    Map<String, String> told = new HashMap<>();
    begin();
    try {
      while (true) {
        Map<String, String> now = next(told);
        if (now == null) {
          return;
        }
        StringBuilder lines = new StringBuilder(now.isEmpty() ? "\n" : "");
        now.forEach((file, revision) -> lines.append(line(file, revision)));
        told.putAll(now);
        out.write(lines.toString().getBytes(StandardCharsets.UTF_8));
        out.flush();
      }
    } finally {
      end();
    }
  }

  private static String line(String file, String revision) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("file", file);
    json.put("revision", revision);
    return Json.text(json).replace("\n", " ") + "\n";
  }

  private synchronized void begin() {
    listeners++;
    look();
    notifyAll();
  }

  private synchronized void end() {
    listeners--;
  }

  /** What differs from what was told; empty after a while without news; null at the end. */
  private synchronized Map<String, String> next(Map<String, String> told) {
    long until = System.currentTimeMillis() + SIGN_OF_LIFE_MS;
    while (!closed) {
      Map<String, String> fresh = new LinkedHashMap<>();
      revisions.forEach(
          (file, revision) -> {
            if (!revision.equals(told.get(file))) {
              fresh.put(file, revision);
            }
          });
      long left = until - System.currentTimeMillis();
      if (!fresh.isEmpty() || left <= 0) {
        return fresh;
      }
      try {
        wait(left);
      } catch (InterruptedException end) {
        Thread.currentThread().interrupt();
        return null;
      }
    }
    return null;
  }

  /** Tells at once what this server itself has written. */
  synchronized void changed() {
    look();
  }

  private void watch() {
    while (true) {
      synchronized (this) {
        if (closed) {
          return;
        }
        if (listeners > 0) {
          look();
        }
      }
      try {
        Thread.sleep(LOOK_EVERY_MS);
      } catch (InterruptedException end) {
        return;
      }
    }
  }

  private synchronized void look() {
    String shopNow = shopNow();
    boolean news = !shopNow.equals(revisions.put(SHOP, shopNow));
    Map<String, String> there = new HashMap<>();
    there.put(SHOP, SHOP);
    for (String name : folder.names()) {
      there.put(name, name);
      news |= look(name);
    }
    for (Map.Entry<String, String> known : revisions.entrySet()) {
      if (!there.containsKey(known.getKey()) && !known.getValue().isEmpty()) {
        known.setValue("");
        written.remove(known.getKey());
        news = true;
      }
    }
    if (news) {
      notifyAll();
    }
  }

  private String shopNow() {
    try {
      return shop.get();
    } catch (CommandFailure unusable) {
      // Whoever asks for a price is told why; the jobs are watched all the same.
      return "unusable";
    }
  }

  private boolean look(String name) {
    try {
      Path file = folder.file(name);
      FileTime time = Files.getLastModifiedTime(file);
      if (time.equals(written.get(name)) && isSettled(time)) {
        return false;
      }
      String revision = folder.read(name).revision();
      written.put(name, time);
      return !revision.equals(revisions.put(name, revision));
    } catch (IOException | Refused unread) {
      // It is being written or was taken away; the next look tells.
      return false;
    }
  }

  /** A file may be written twice within the least step of its clock. */
  private static boolean isSettled(FileTime time) {
    return System.currentTimeMillis() - time.toMillis() > 2000;
  }

  @Override
  public synchronized void close() {
    closed = true;
    notifyAll();
  }
}
