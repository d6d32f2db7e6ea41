package trammel.app.desk;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import trammel.app.commandline.Version;

/**
 * Keeps what is needed to mend a fault inside Trammel or a plugin, in a file instead of on the
 * screen.
 *
 * @param arguments the words of the command, or the job file
 * @param fault what was thrown
 */
public record FaultReport(List<String> arguments, Throwable fault) {
  public FaultReport {
    arguments = List.copyOf(arguments);
  }

  /**
   * Writes the report to the temporary folder, or else to the current one, and says where it is.
   */
  public String write() {
    Optional<Path> file =
        write(List.of(Path.of(System.getProperty("java.io.tmpdir")), Path.of("")));
    return file.isPresent()
        ? "The report to send to its makers, with the job file, is " + file.get()
        : "No report could be written, neither to the temporary folder nor here.";
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
    try {
      fault.printStackTrace(text);
    } catch (RuntimeException | Error unprintable) {
      // An exception of a plugin may fail even at telling what it is.
      text.println(fault.getClass().getName() + ", which cannot be printed");
    }
  }
}
