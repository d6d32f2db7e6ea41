package trammel.app;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Version;

/** Keeps what is needed to mend a fault inside Trammel, in a file instead of on the screen. */
record FaultReport(List<String> arguments, Throwable fault) {
  FaultReport {
    arguments = List.copyOf(arguments);
  }

  /** Writes the report to the first of the folders that takes it; empty if none does. */
  Optional<Path> write(List<Path> folders) {
    for (Path folder : folders) {
      try {
        Path file = Files.createTempFile(folder, "trammel-fault-", ".txt");
        try (PrintWriter text =
            new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
          print(text);
        }
        return Optional.of(file.toAbsolutePath());
      } catch (IOException tryTheNextFolder) {
        continue;
      }
    }
    return Optional.empty();
  }

  private void print(PrintWriter text) {
    text.println("Trammel " + Version.text() + ", " + Instant.now());
    text.println("Java " + Runtime.version() + ", " + System.getProperty("os.name"));
    text.println("Arguments:");
    for (String argument : arguments) {
      text.println("  " + argument);
    }
    text.println();
    fault.printStackTrace(text);
  }
}
