package trammel.app.files;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class FileSetTest {
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

  @Seeds(500)
  void safeNamesHoldNothingButLettersDigitsAndHyphens(Draw draw) {
    String name = draw.text(0, 60);
    assertTrue(FileSet.safeName(name).matches("[a-z0-9][a-z0-9-]{0,59}"), name);
  }
}
