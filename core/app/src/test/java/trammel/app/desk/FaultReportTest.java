package trammel.app.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultReportTest {
  private static final FaultReport REPORT =
      new FaultReport(List.of("quote", "Größe 7.yaml"), new IllegalStateException("worn out"));

  @Test
  void aFolderThatCannotBeWrittenIsPassedOver(@TempDir Path folder) throws IOException {
    Path missing = folder.resolve("missing");
    Path file = REPORT.write(List.of(missing, folder)).orElseThrow();
    assertEquals(folder.toAbsolutePath(), file.getParent());
    assertTrue(Files.readString(file).contains("Größe 7.yaml"));
    assertTrue(Files.readString(file).contains("worn out"));
  }

  @Test
  void withNoFolderToWriteThereIsNoReport(@TempDir Path folder) {
    assertEquals(Optional.empty(), REPORT.write(List.of(folder.resolve("missing"))));
  }
}
