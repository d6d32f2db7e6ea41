package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.page.Page;

/** How long one waits for the page; the figures of docs/performance.md. */
@Tag("long")
class PageSpeedIT {
  private static final OperatingSystemMXBean MACHINE =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  private static final Pattern WORK =
      Pattern.compile("server-timing: work;dur=([0-9.]+)", Pattern.CASE_INSENSITIVE);

  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static Page page;

  @BeforeAll
  static void serve() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
    Path jobs = Files.createDirectory(shop.resolve("jobs"));
    Files.copy(copy.demoJob("pickup"), jobs.resolve("pickup.yaml"));
    page = ServedPage.of(copy, jobs);
  }

  @AfterAll
  static void close() {
    page.close();
  }

  private static void tell(String what, double median, double p95, String unit) {
    System.out.printf(
        Locale.ROOT, "%-48s median %6.1f %s, 95th %6.1f %s%n", what, median, unit, p95, unit);
  }

  private static double at(List<Double> sorted, double share) {
    return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(share * sorted.size())));
  }

  /** Processor time of the whole process, so that other work on the machine counts less. */
  private static double processorMs(Runnable work) {
    long before = MACHINE.getProcessCpuTime();
    work.run();
    return (MACHINE.getProcessCpuTime() - before) / 1e6;
  }

  private static void measure(String what, int warmUp, int count, int atOnce, Asking asking) {
    for (int i = 0; i < warmUp; i++) {
      asking.ask(i);
    }
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < count; i += atOnce) {
      int first = i;
      double ms =
          processorMs(
              () -> {
                for (int j = first; j < first + atOnce; j++) {
                  asking.ask(j);
                }
              });
      times.add(ms / atOnce);
    }
    Collections.sort(times);
    tell(what + ", processor time", at(times, 0.5), at(times, 0.95), "ms");
  }

  private interface Asking {
    void ask(int number);
  }

  private static PageRequest.Answered ask(String method, String path, String body) {
    try {
      PageRequest.Answered answer =
          PageRequest.own(page.port(), page.key(), method, path, body).send();
      assertTrue(answer.status() == 200, answer.body());
      return answer;
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }

  private static String up(int step) {
    return "{\"label\": \"x\", \"edits\": [{\"path\": \"chosen.pickups.upper-left.frame.up\", \"to\": \"%s %d/16 in\"}]}"
        .formatted(18, 1 + step % 15);
  }

  @Test
  void whatTheServerTakes() {
    measure(
        "a look while dragging",
        300,
        200,
        10,
        i -> ask("POST", "/api/jobs/pickup.yaml/look", up(i)));
    measure(
        "a pose of the axle",
        100,
        200,
        10,
        i -> ask("GET", "/api/jobs/pickup.yaml/pose?roll_deg=1&heave_mm=" + i % 50, ""));
  }

  /**
   * By the clock, as the server itself says it: neither the compiler's threads nor the asking are
   * in it, but whatever else keeps the processors busy is.
   */
  @Test
  void whatTheServerSaysItTakes() {
    List<Double> times = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      String head = ask("POST", "/api/jobs/pickup.yaml/look", up(i)).head();
      Matcher said = WORK.matcher(head);
      assertTrue(said.find(), head);
      if (i >= 300) {
        times.add(Double.parseDouble(said.group(1)));
      }
    }
    Collections.sort(times);
    tell("a look while dragging, the server by the clock", at(times, 0.5), at(times, 0.95), "ms");
  }

  @Test
  void whatTheBrowserTakesFromADragToItsVerdicts() {
    try (Chromium browser = Chromium.open()) {
      browser.go(
          "http://127.0.0.1:" + page.port() + "/#key=" + page.key() + "&job=pickup.yaml&at=change");
      browser.is("document.querySelector('.points tbody tr')").press("Side");
      List<Double> all = new ArrayList<>();
      for (int round = 0; round < 4; round++) {
        browser.script("performance.clearMeasures()");
        browser.drag("[data-point='upper-left.frame'] .dot", round % 2 == 0 ? 60 : -60, 10, 30);
        browser.is("performance.getEntriesByName('trammel look').length > 5").letGo();
        browser.is("!document.querySelector('.verdict.live')");
        if (round > 0) {
          Object found =
              browser.script(
                  "return performance.getEntriesByName('trammel look').map((e) => e.duration)");
          ((List<?>) found).forEach(one -> all.add(((Number) one).doubleValue()));
        }
      }
      Collections.sort(all);
      tell("from the drag to the redrawn verdicts", at(all, 0.5), at(all, 0.95), "ms");
    }
  }
}
