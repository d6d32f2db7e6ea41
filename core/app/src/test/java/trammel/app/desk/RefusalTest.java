package trammel.app.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import trammel.app.commandline.ExitCode;
import trammel.planning.extension.PluginFaultException;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.DocumentReader;

/** What is the user's to mend, what is a plugin's fault, and what is our own. */
class RefusalTest {
  @Test
  void aNameThatTheSystemCannotHaveIsTheUsersToMend() {
    Optional<String> message =
        Refusal.message(new InvalidPathException("a\0b", "Nul character not allowed"));
    assertTrue(message.get().contains("give another: Nul character not allowed"), message.get());
  }

  @Test
  void aFileWithoutANameIsRefusedInPlainWords() {
    try {
      DocumentReader.read(Path.of(""));
      throw new AssertionError("it was read");
    } catch (BadInputException refused) {
      assertTrue(refused.getMessage().startsWith("a file without a name"), refused.getMessage());
    }
  }

  @Test
  void aFaultOfAPluginIsThreeWithItsNameAndAReport() {
    PluginFaultException fault =
        new PluginFaultException("x", "Plugin x (x.jar) failed", new Error("worn out"));
    Setback setback = Setback.of(fault, List.of("job.yaml")).get();
    assertEquals(ExitCode.FAULT, setback.exitCode());
    assertTrue(setback.message().startsWith("Plugin x (x.jar) failed"), setback.message());
    assertTrue(setback.message().contains("trammel-fault-"), setback.message());
  }

  @Test
  void whatALibraryThrowsIsNoRefusal() {
    assertEquals(Optional.empty(), Setback.of(new IllegalStateException("worn"), List.of()));
  }
}
