package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Commands that write folders are killed in the midst of it: every file is whole and known, a new
 * folder is there with all of its files or not at all, the shop's own files are as they were, and
 * the next command leaves nothing behind. The long form is in docs/reliability.md.
 */
class FolderKillTest {
  private static final int KILLS = Integer.getInteger("trammel.kills", 12);
  private static final long SEED = Long.getLong("trammel.seed", 31);
  private static final int LONGEST_WAIT_MICROS = 25_000;
  private static final String MINE = "what the shop keeps here";

  @TempDir Path temporary;
  private Path shop;
  private int unfinished;
  private int whole;

  @Test
  void whateverIsKilledNothingIsTornAndNothingIsLost() throws Exception {
    shop = temporary.toRealPath();
    Path again = Files.createDirectories(shop.resolve("again"));
    Files.writeString(again.resolve("mine.txt"), MINE);
    KilledFolderWriter.write(again, 1);
    Random random = new Random(SEED);
    for (int kill = 0; kill < KILLS; kill++) {
      String where = "seed " + SEED + ", kill " + kill;
      kill("new-" + kill, kill % 2 == 0, random);
      checkAgain(again, where);
      checkNew("new-" + kill, where);
      KilledFolderWriter.write(again, kill);
      assertEquals(
          List.of("files.sha256", "fitup.csv", "floor", "mine.txt", "plates"), names(again), where);
      assertEquals(MINE, Files.readString(again.resolve("mine.txt")), where);
    }
    System.out.println(
        KILLS + " kills, " + unfinished + " while files changed places, " + whole + " new folders");
  }

  /** Every other one is killed as soon as files change places, the others once a folder is made. */
  private void kill(String start, boolean aimed, Random random) throws Exception {
    Process writer =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                KilledFolderWriter.class.getName(),
                shop.toString(),
                start)
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    assertEquals('s', writer.getInputStream().read(), "the writer has not started");
    Path mark =
        aimed
            ? shop.resolve("again").resolve(FolderWriter.UNFINISHED)
            : shop.resolve("." + start + "-1.trammel-new");
    Path done = shop.resolve(start + "-1");
    long last = System.nanoTime() + TimeUnit.SECONDS.toNanos(10);
    while (!Files.exists(mark) && !Files.exists(done) && System.nanoTime() < last) {
      Thread.onSpinWait();
    }
    if (!aimed) {
      TimeUnit.MICROSECONDS.sleep(random.nextInt(LONGEST_WAIT_MICROS));
    }
    writer.destroyForcibly().waitFor();
  }

  private void checkAgain(Path again, String where) throws IOException {
    Set<String> numbers = new HashSet<>();
    for (String name : KilledFolderWriter.NAMES) {
      numbers.add(wholeText(again.resolve(name), where));
    }
    boolean marked = Files.exists(again.resolve(FolderWriter.UNFINISHED));
    unfinished += marked ? 1 : 0;
    assertTrue(marked || numbers.size() == 1, where + ": old and new without a word: " + numbers);
  }

  private void checkNew(String start, String where) throws IOException {
    List<String> left = new ArrayList<>();
    for (String name : names(shop)) {
      if (name.startsWith(start)) {
        whole++;
        Path folder = shop.resolve(name);
        assertEquals(List.of("files.sha256", "fitup.csv", "floor", "plates"), names(folder), where);
        for (String file : KilledFolderWriter.NAMES) {
          wholeText(folder.resolve(file), where);
        }
      } else if (name.startsWith("." + start)) {
        left.add(name);
      }
    }
    for (String name : left) {
      String folder = name.substring(1, name.length() - (name.endsWith(".lock") ? 5 : 12));
      KilledFolderWriter.write(shop.resolve(folder), 7);
    }
    assertTrue(names(shop).stream().noneMatch(name -> name.startsWith(".")), where);
  }

  private static String wholeText(Path file, String where) throws IOException {
    String text = Files.readString(file);
    String first = text.lines().findFirst().orElse("");
    int told = Integer.parseInt(first.substring("lines ".length()));
    assertEquals(KilledWriter.text(told), text, where + ": " + file);
    return first;
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
