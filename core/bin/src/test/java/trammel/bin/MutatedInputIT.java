package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.Main;

/**
 * Spoilt job files, catalogs, tables and words: whatever comes of them keeps what an exit code
 * promises. In this process, so that many can be tried.
 */
class MutatedInputIT {
  private static final String HOME = "trammel.home";

  /** 10,000 with -Dtrammel.mutations=10000. */
  private static final int MUTATIONS = Integer.getInteger("trammel.mutations", 40);

  /** Each mutation has its own seed, counted from here. */
  private static final long FIRST_SEED = Long.getLong("trammel.first.seed", 1);

  private static final int LONGEST_SECONDS = 180;
  private static final int MOST_FAILURES = 20;

  @TempDir static Path shop;
  private static Path home;

  private record Run(int exitCode, String out, String err) {}

  @BeforeAll
  static void unpack() throws IOException {
    home = Workbench.unpack(shop.resolve("copy"));
    System.setProperty(HOME, home.toString());
  }

  @AfterAll
  static void forget() {
    System.clearProperty(HOME);
  }

  @Test
  void whateverIsSpoiltTheExitCodeKeepsItsPromise() throws Exception {
    List<String> failures = new ArrayList<>();
    Map<Integer, Integer> byExitCode = new TreeMap<>();
    for (long seed = FIRST_SEED; seed < FIRST_SEED + MUTATIONS; seed++) {
      Path folder = Files.createDirectory(shop.resolve("seed-" + seed));
      MutatedInput input = MutatedInput.of(seed, home, folder);
      Map<String, Integer> before = contents(folder);
      Run run = run(input.words());
      byExitCode.merge(run.exitCode(), 1, Integer::sum);
      Optional<String> broken = broken(input, run, before, contents(folder));
      if (broken.isPresent()) {
        String failure = "seed " + seed + ": " + broken.get() + ", " + input + "\n" + run.err();
        System.out.println(failure);
        failures.add(failure);
        if (failures.size() == MOST_FAILURES) {
          break;
        }
      }
      delete(folder);
      if (seed % 50 == 0) {
        // The plugins of each run have a class loader of their own, and it keeps their jars open.
        System.gc();
      }
      if (seed % 500 == 0) {
        System.out.println("up to seed " + seed + " by exit code: " + byExitCode);
      }
    }
    System.out.println("Mutations by exit code: " + byExitCode);
    assertEquals(List.of(), failures);
  }

  private static Run run(String... words) throws Exception {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    Callable<Integer> command = () -> Main.run(new PrintWriter(out), new PrintWriter(err), words);
    FutureTask<Integer> task = new FutureTask<>(command);
    Thread thread = new Thread(task, "mutation");
    thread.setDaemon(true);
    thread.start();
    try {
      return new Run(task.get(LONGEST_SECONDS, TimeUnit.SECONDS), out.toString(), err.toString());
    } catch (TimeoutException endless) {
      return new Run(-1, "", "does not end: " + Arrays.toString(thread.getStackTrace()));
    } catch (ExecutionException thrown) {
      return new Run(-2, "", "threw " + thrown.getCause());
    }
  }

  /** What an exit code promises and did not hold. */
  private static Optional<String> broken(
      MutatedInput input, Run run, Map<String, Integer> before, Map<String, Integer> after) {
    String said = run.out() + run.err();
    if (run.exitCode() < 0 || run.exitCode() > 3) {
      return Optional.of("exit code " + run.exitCode());
    }
    if (said.contains("\tat ") || said.contains("Exception")) {
      return Optional.of("an exception on the screen");
    }
    if (said.contains("A problem needs file")) {
      return Optional.of("words for programmers");
    }
    if (run.exitCode() == 3 && !run.err().contains("Cannot write")) {
      return Optional.of("a fault of our own");
    }
    if (run.exitCode() == 2 && run.err().isBlank()) {
      return Optional.of("refused without a word");
    }
    // Of several job files the sound ones are written; a spoilt word may count as one more.
    boolean several = input.hasSpoiltWords() && run.err().contains("Wrote ");
    if (run.exitCode() == 2 && !several && !before.equals(after)) {
      return Optional.of("refused, and yet there is " + after.keySet());
    }
    for (String name : after.keySet()) {
      if (name.endsWith(".part") || name.contains("/new-") || name.contains("/.")) {
        return Optional.of("left " + name);
      }
    }
    return Optional.empty();
  }

  /** Every file and folder with a sum over what is in it. */
  private static Map<String, Integer> contents(Path folder) throws IOException {
    Map<String, Integer> contents = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(folder)) {
      for (Path path : paths.toList()) {
        int sum = Files.isDirectory(path) ? 0 : Arrays.hashCode(Files.readAllBytes(path));
        contents.put(folder.relativize(path).toString(), sum);
      }
    }
    return contents;
  }

  private static void delete(Path folder) throws IOException {
    List<Path> paths;
    try (Stream<Path> all = Files.walk(folder)) {
      paths = new ArrayList<>(all.toList());
    }
    for (int i = paths.size() - 1; i >= 0; i--) {
      Files.delete(paths.get(i));
    }
  }
}
