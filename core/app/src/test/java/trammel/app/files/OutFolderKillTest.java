package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes that write an out folder are killed while they write. */
class OutFolderKillTest {
  /** 1,000 with -Dtrammel.kills=1000; every kill costs a start of Java. */
  private static final int KILLS = Integer.getInteger("trammel.kills", 12);

  private static final int LONGEST_WAIT_MS = 40;

  @TempDir Path folder;

  @Test
  void aFolderWhoseWriterIsKilledHoldsWholeFilesAndIsWrittenAgainWithoutAWord() throws Exception {
    Path out = folder.resolve("out");
    Random random = new Random(11);
    for (int i = 0; i < KILLS; i++) {
      Process writer = start(out);
      assertEquals('s', writer.getInputStream().read(), "kill " + i + ": it has not started");
      TimeUnit.MICROSECONDS.sleep(random.nextInt(1000 * LONGEST_WAIT_MS));
      writer.destroyForcibly().waitFor();

      for (Path file : files(out)) {
        if (isOfTheJob(file)) {
          List<String> lines = Files.readAllLines(file);
          int told = Integer.parseInt(lines.get(0).substring("lines ".length()));
          assertEquals(KilledWriter.text(told), Files.readString(file), "kill " + i + ": " + file);
        }
      }
    }

    // What was killed is not taken for somebody else's: nothing refuses, and nothing is left over.
    KilledFolderWriter.write(out, 3);
    for (Path file : files(folder)) {
      assertTrue(isOfTheJob(file) || file.endsWith(WrittenList.NAME), "left over: " + file);
    }
  }

  private static boolean isOfTheJob(Path file) {
    return file.getFileName().toString().matches("part-\\d+\\.txt");
  }

  private static List<Path> files(Path in) throws IOException {
    try (Stream<Path> all = Files.walk(in)) {
      return all.filter(Files::isRegularFile).toList();
    }
  }

  private static Process start(Path out) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            KilledFolderWriter.class.getName(),
            out.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }
}
