package trammel.ledger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** SQLite is unpacked once, whoever starts at the same time, and not where nothing can be kept. */
class NativeLibraryTest {
  private static final int AT_ONCE = 4;

  @TempDir Path folder;

  @Test
  void severalThatStartAtOnceUnpackItOnceAndAllOpenTheLedger() throws Exception {
    // A file where the first folder should be: that one cannot be used, on any system.
    Path unusable = Files.createFile(folder.resolve("file"));
    List<Process> all = new ArrayList<>();
    for (int i = 0; i < AT_ONCE; i++) {
      all.add(
          Child.start(
              Opener.class,
              folder.resolve("ledger.sqlite"),
              unusable.resolve("native"),
              folder.resolve("kept")));
    }
    for (Process one : all) {
      assertEquals("kept", new String(one.getInputStream().readAllBytes()).strip());
      assertEquals(0, one.waitFor());
    }
    try (Stream<Path> files = Files.walk(folder.resolve("kept"))) {
      assertEquals(1, files.filter(Files::isRegularFile).count());
    }
  }

  @Test
  void whereNothingCanBeKeptTheLibraryDoesItItself() throws Exception {
    Path unusable = Files.createFile(folder.resolve("file"));
    Process one =
        Child.start(
            Opener.class,
            folder.resolve("ledger.sqlite"),
            unusable.resolve("native"),
            unusable.resolve("kept"));
    assertEquals("none", new String(one.getInputStream().readAllBytes()).strip());
    assertEquals(0, one.waitFor());
    assertTrue(Files.exists(folder.resolve("ledger.sqlite")));
  }

  /** Opens a ledger and says where SQLite came from. */
  static final class Opener {
    public static void main(String... arguments) {
      Path kept = Path.of(arguments[2]);
      NativeLibrary.keepIn(List.of(Path.of(arguments[1]), kept));
      Ledger.open(Path.of(arguments[0])).close();
      String used = System.getProperty("org.sqlite.lib.path");
      System.out.println(used != null && Path.of(used).startsWith(kept) ? "kept" : "none");
    }
  }
}
