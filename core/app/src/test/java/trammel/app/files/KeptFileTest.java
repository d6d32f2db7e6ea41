package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;

/** What is asked of a rewrite follows from rename() of POSIX.1-2017: old or new, never a part. */
class KeptFileTest {
  private static final int LINES = 2_000;

  @TempDir Path folder;

  @Test
  void aFileIsReadAndReplaced() {
    Path file = folder.resolve("rack.yaml");
    try (KeptFile safe = KeptFile.open(file)) {
      assertEquals(Optional.empty(), safe.text());
      safe.replace("one\n");
      safe.replace("two: ü\n");
    }
    try (KeptFile safe = KeptFile.open(file)) {
      assertEquals(Optional.of("two: ü\n"), safe.text());
    }
  }

  @Test
  void anEditInBetweenIsNotOverwritten() throws IOException {
    Path file = Files.writeString(folder.resolve("rack.yaml"), "old\n");
    try (KeptFile safe = KeptFile.open(file)) {
      Files.writeString(file, "typed in an editor\n");
      CommandFailure refused = assertThrows(CommandFailure.class, () -> safe.replace("new\n"));
      assertEquals(ExitCode.BAD_INPUT, refused.exitCode());
    }
    assertEquals("typed in an editor\n", Files.readString(file));
  }

  @Test
  void aLinkStaysALinkAndPermissionsStay() throws IOException {
    Path file = Files.writeString(folder.resolve("real.yaml"), "old\n");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
    Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
    try (KeptFile safe = KeptFile.open(link)) {
      safe.replace("new\n");
    }
    assertTrue(Files.isSymbolicLink(link));
    assertEquals("new\n", Files.readString(file));
    assertEquals("rw-r-----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
  }

  @Test
  void aFolderIsRefusedAndAMissingFolderCannotBeWritten() {
    assertEquals(
        ExitCode.BAD_INPUT,
        assertThrows(CommandFailure.class, () -> KeptFile.open(folder)).exitCode());
    assertEquals(
        ExitCode.FAULT,
        assertThrows(CommandFailure.class, () -> SafeFile.write(folder.resolve("no/a.txt"), "text"))
            .exitCode());
    assertFalse(Files.exists(folder.resolve("no")));
  }

  @Test
  void aRefusedWriteLeavesNoTemporaryFile() throws IOException {
    Path nested = Files.createDirectories(folder.resolve("name/inside"));
    assertThrows(CommandFailure.class, () -> SafeFile.write(nested.getParent(), "text"));
    try (var left = Files.list(folder)) {
      assertEquals(List.of(nested.getParent()), left.toList());
    }
  }

  @Test
  void twoWhoAddAtOnceLoseNothing() throws Exception {
    Path file = folder.resolve("count.txt");
    List<Thread> threads = new ArrayList<>();
    for (int t = 0; t < 4; t++) {
      Thread thread = new Thread(() -> addLines(file, 25));
      threads.add(thread);
      thread.start();
    }
    for (Thread thread : threads) {
      thread.join();
    }
    assertEquals(100, Files.readAllLines(file).size());
  }

  private static void addLines(Path file, int count) {
    for (int i = 0; i < count; i++) {
      try (KeptFile safe = KeptFile.open(file)) {
        safe.replace(safe.text().orElse("") + "line\n");
      }
    }
  }

  @Test
  void aRewriterKilledAtAnyMomentLeavesAWholeFile() throws Exception {
    killOften(150);
  }

  /**
   * Starts a process that rewrites without end, kills it at a random moment, reads what is left.
   */
  private void killOften(int times) throws Exception {
    Path file = folder.resolve("rack.yaml");
    Random random = new Random(20_261);
    long last = 0;
    for (int i = 0; i < times; i++) {
      Path started = folder.resolve("started");
      Files.deleteIfExists(started);
      Process child = rewriter(file, started);
      while (!Files.exists(started)) {
        assertTrue(child.isAlive(), "the rewriting process ended by itself");
        Thread.sleep(1);
      }
      TimeUnit.MICROSECONDS.sleep(random.nextInt(30_000));
      child.destroyForcibly().waitFor();
      long generation = wholeGeneration(file);
      assertTrue(generation >= last, "generation " + generation + " after " + last);
      last = generation;
    }
    assertTrue(last > times, "only " + last + " rewrites in " + times + " runs");
  }

  private static Process rewriter(Path file, Path started) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-Xshare:auto",
            "-cp",
            System.getProperty("java.class.path"),
            Rewriter.class.getName(),
            file.toString(),
            started.toString())
        .redirectErrorStream(true)
        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
        .start();
  }

  /** Every line of a whole file carries the same number. */
  private static long wholeGeneration(Path file) throws IOException {
    if (!Files.exists(file)) {
      return 0;
    }
    List<String> lines = Files.readAllLines(file);
    assertEquals(LINES, lines.size(), "lines of the file");
    String first = lines.get(0);
    for (String line : lines) {
      assertEquals(first, line);
    }
    return Long.parseLong(first);
  }

  /** The process that is killed: it reads the number in the file and writes the next, for ever. */
  static final class Rewriter {
    public static void main(String[] arguments) throws IOException {
      Path file = Path.of(arguments[0]);
      Files.createFile(Path.of(arguments[1]));
      while (true) {
        try (KeptFile safe = KeptFile.open(file)) {
          long next =
              safe.text().map(text -> Long.parseLong(text.lines().findFirst().get())).orElse(0L)
                  + 1;
          safe.replace((next + "\n").repeat(LINES));
        }
      }
    }
  }
}
