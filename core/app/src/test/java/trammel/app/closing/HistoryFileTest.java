package trammel.app.closing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.planning.learning.ClosedJob;

class HistoryFileTest {
  private static final int KILLS = 200;
  private static final int LONGEST_WAIT_MS = 15;

  @TempDir Path folder;

  private HistoryFile history() {
    return HistoryFile.in(folder);
  }

  @Test
  void whatIsAddedIsReadBackInItsOrder() {
    List<ClosedJob> jobs =
        List.of(
            KilledCloser.job("D-101"),
            KilledCloser.job("a, \"quoted\" one"),
            KilledCloser.job("=1+1 \u05d0"));
    for (ClosedJob job : jobs) {
      history().add(job);
    }
    List<String> numbers =
        history().read().jobs().stream().map(ClosedJob::number).collect(Collectors.toList());
    // The formula sign is kept harmless in the file.
    assertEquals(List.of("D-101", "a, \"quoted\" one", "'=1+1 \u05d0"), numbers);
    assertEquals(jobs.get(0), history().read().jobs().get(0));
  }

  @Test
  void aFileThatIsNotThereIsAnEmptyHistory() {
    assertFalse(history().exists());
    assertEquals(List.of(), history().read().jobs());
  }

  @Test
  void aJobClosedAgainCountsOnceWithItsLaterLine() {
    history().add(KilledCloser.job("A"));
    history().add(KilledCloser.job("B"));
    history().add(KilledCloser.job("A"));
    assertEquals(
        List.of("B", "A"), history().read().jobs().stream().map(ClosedJob::number).toList());
  }

  /** Cut anywhere, the last line is left out, the rest stays, and the next job mends the file. */
  @Test
  void aTornLastLineIsLeftOutAndMendedByTheNextJob() throws IOException {
    history().add(KilledCloser.job("A"));
    long whole = Files.size(history().file());
    history().add(KilledCloser.job("B"));
    byte[] bytes = Files.readAllBytes(history().file());
    for (int cut = (int) whole + 1; cut < bytes.length; cut++) {
      Files.write(history().file(), java.util.Arrays.copyOf(bytes, cut));
      HistoryFile.Content content = history().read();
      assertTrue(content.torn());
      assertEquals(1, content.jobs().size(), "cut at " + cut);
    }
    history().add(KilledCloser.job("C"));
    assertEquals(
        List.of("A", "C"), history().read().jobs().stream().map(ClosedJob::number).toList());
  }

  @Test
  void aDamagedLineInTheMiddleIsNamed() throws IOException {
    history().add(KilledCloser.job("A"));
    history().add(KilledCloser.job("B"));
    String text = Files.readString(history().file());
    Files.writeString(history().file(), text.replaceFirst("140.5", "14.5"));
    CommandFailure refused = assertThrows(CommandFailure.class, () -> history().read());
    assertTrue(refused.getMessage().contains("line 1 is damaged"), refused.getMessage());
  }

  /** Killed at any moment, hundreds of times: what was said to be kept is kept. */
  @Test
  void noClosedJobIsLostHoweverOftenTheCommandIsKilled() throws Exception {
    Random random = new Random(9);
    Set<String> told = new HashSet<>();
    int next = 0;
    for (int i = 0; i < KILLS; i++) {
      Path out = folder.resolve("out");
      Process closer = start(next, out);
      while (Files.size(out) == 0) {
        assertTrue(closer.isAlive(), "the closer has ended by itself");
        TimeUnit.MILLISECONDS.sleep(1);
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(1000 * LONGEST_WAIT_MS));
      closer.destroyForcibly().waitFor();
      String lines = Files.readString(out);
      // A number without its line's end may be half a number.
      for (String line : lines.substring(0, lines.lastIndexOf('\n') + 1).split("\n")) {
        told.add("J" + line);
      }
      HistoryFile.Content content = history().read();
      Set<String> kept = content.jobs().stream().map(ClosedJob::number).collect(Collectors.toSet());
      assertTrue(kept.containsAll(told), () -> "lost: " + missing(told, kept));
      next = kept.size();
      if (next > 200) {
        // A new file now and then keeps the reading short.
        Files.delete(history().file());
        told.clear();
        next = 0;
      }
    }
  }

  private static Set<String> missing(Set<String> told, Set<String> kept) {
    Set<String> missing = new HashSet<>(told);
    missing.removeAll(kept);
    return missing;
  }

  private Process start(int first, Path out) throws IOException {
    Files.write(out, new byte[0]);
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            KilledCloser.class.getName(),
            history().file().toString(),
            Integer.toString(first))
        .redirectOutput(out.toFile())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  @Test
  void aHistoryThatCannotBeWrittenIsSaidSo() throws IOException {
    Files.createDirectories(history().file());
    assertThrows(CommandFailure.class, () -> history().add(KilledCloser.job("A")));
    assertTrue(Files.isDirectory(history().file()));
  }
}
