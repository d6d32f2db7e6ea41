package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
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
import trammel.app.commandline.CommandFailure;

class SafeFileTest {
  private static final int KILLS = Integer.getInteger("trammel.kills", 20);
  private static final int LONGEST_WAIT_MS = 25;

  @TempDir Path folder;

  @Test
  void aFileIsReplacedWhole() throws IOException {
    Path file = folder.resolve("rack.csv");
    SafeFile.write(file, "old");
    SafeFile.write(file, "new");
    assertEquals("new", Files.readString(file));
    assertEquals(1, count());
  }

  @Test
  void aFileThatCannotBeWrittenStaysAsItWas() throws IOException {
    Path file = Files.createDirectories(folder.resolve("rack.csv/in")).getParent();
    assertThrows(CommandFailure.class, () -> SafeFile.write(file, "new"));
    assertTrue(Files.isDirectory(file));
    assertEquals(1, count());
  }

  /** Killed at any moment, hundreds of times: the file is always one whole text. */
  @Test
  void aWriterThatIsKilledNeverLeavesATornFile() throws Exception {
    Path file = folder.resolve("rack.csv");
    Random random = new Random(4);
    for (int i = 0; i < KILLS; i++) {
      Process writer = start(file);
      assertEquals('s', writer.getInputStream().read(), "the writer has not started");
      TimeUnit.MICROSECONDS.sleep(random.nextInt(1000 * LONGEST_WAIT_MS));
      writer.destroyForcibly().waitFor();
      List<String> lines = Files.readAllLines(file);
      int told = Integer.parseInt(lines.get(0).substring("lines ".length()));
      assertEquals(KilledWriter.text(told), Files.readString(file));
    }
    SafeFile.write(file, "the end");
    assertEquals(1, count(), "parts that killed writers left are cleared away");
  }

  private static Process start(Path file) throws IOException {
    return new ProcessBuilder(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            KilledWriter.class.getName(),
            file.toString())
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }

  private long count() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.count();
    }
  }
}
