package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.app.commandline.CommandFailure;

class FileSetTest {
  @TempDir Path folder;

  @Test
  void filesOfASetStandInTheirFoldersAndNothingElseIsLeft() throws IOException {
    new FileSet().add("a.txt", "one").add("sub/b.txt", "two").write(folder);
    assertEquals("one", Files.readString(folder.resolve("a.txt")));
    assertEquals("two", Files.readString(folder.resolve("sub/b.txt")));
    assertEquals(List.of("a.txt", "b.txt"), names());
  }

  /** The second file cannot be written, because a folder of that name is in its way. */
  @Test
  void whenOneCannotBeWrittenNoneTakesItsPlace() throws IOException {
    Files.writeString(folder.resolve("a.txt"), "old");
    Files.writeString(folder.resolve("sub"), "a file where a folder should be");
    FileSet files = new FileSet().add("a.txt", "new").add("sub/b.txt", "two");
    assertThrows(CommandFailure.class, () -> files.write(folder));
    assertEquals("old", Files.readString(folder.resolve("a.txt")));
    assertEquals(List.of("a.txt", "sub"), names());
  }

  @Test
  void namesThatLeadOutOfTheFolderAreRefused() {
    FileSet files = new FileSet();
    assertThrows(IllegalArgumentException.class, () -> files.add("../a.txt", "x"));
    assertThrows(IllegalArgumentException.class, () -> files.add("/tmp/a.txt", "x"));
  }

  @ParameterizedTest
  @CsvSource({
    "'lower-left frame bracket side', lower-left-frame-bracket-side",
    "'../../etc/passwd', etc-passwd",
    "'  ', part",
    "'\u05d0\u05d1', part",
    "'=SUM(A1)', sum-a1"
  })
  void anyNameBecomesAFileNameThatEverySystemTakes(String name, String safe) {
    assertEquals(safe, FileSet.safeName(name));
  }

  @Property(tries = 500)
  void safeNamesHoldNothingButLettersDigitsAndHyphens(@ForAll String name) {
    assertTrue(FileSet.safeName(name).matches("[a-z0-9][a-z0-9-]{0,59}"), name);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .map(file -> file.getFileName().toString())
          .sorted()
          .toList();
    }
  }
}
