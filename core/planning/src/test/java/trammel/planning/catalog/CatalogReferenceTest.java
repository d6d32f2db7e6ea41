package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.reading.fields.Field;

class CatalogReferenceTest {
  private static final Path PAGE = Path.of("..", "..", "docs", "catalog.md");

  @Test
  void everyFieldStandsInTheReferenceWithItsHelp() {
    assertStands(CatalogFields.all(), CatalogReference.markdown());
  }

  private static void assertStands(List<Field<?>> fields, String page) {
    for (Field<?> field : fields) {
      assertTrue(page.contains("| `" + field.key() + "` | " + field.help()), field.key());
      assertStands(field.children(), page);
    }
  }

  /** Run with {@code -Dtrammel.docs.write=true} to write the page anew. */
  @Test
  void pageInTheRepositoryIsThatOfTheFields() throws IOException {
    String wanted = CatalogReference.markdown();
    if (Boolean.getBoolean("trammel.docs.write")) {
      Files.writeString(PAGE, wanted);
    }
    assertEquals(
        wanted,
        Files.readString(PAGE),
        "docs/catalog.md is out of date: run the tests once with -Dtrammel.docs.write=true");
  }
}
