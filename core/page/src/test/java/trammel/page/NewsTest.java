package trammel.page;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.commandline.CommandFailure;
import trammel.page.folder.JobFolder;

/** What pages hear of the folder. */
class NewsTest {
  @TempDir Path folder;

  /** As where somebody put a file in the place of the catalog's folder. */
  @Test
  void jobs_are_told_of_while_the_shops_catalog_cannot_be_used() throws IOException {
    Files.writeString(folder.resolve("pickup.yaml"), "job: {}\n");
    News news =
        new News(
            new JobFolder(folder),
            () -> {
              throw CommandFailure.badInput("catalog is a file");
            });
    ByteArrayOutputStream told =
        new ByteArrayOutputStream() {
          @Override
          public void flush() {
            news.close();
          }
        };
    news.tell(told);
    assertTrue(told.toString(StandardCharsets.UTF_8).contains("pickup.yaml"), told.toString());
  }
}
