package trammel.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;

class MainTest {
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private int run(String... arguments) {
    return Main.run(new PrintWriter(out), new PrintWriter(err), arguments);
  }

  @Test
  void theVersionIsOneLine() {
    assertEquals(0, run("--version"));
    assertTrue(out.toString().matches("trammel \\S.*\\R"), out.toString());
  }

  @Test
  void helpCarriesNoColourCodes() {
    assertEquals(0, run("--help"));
    assertEquals(-1, out.toString().indexOf('\u001b'));
  }

  @Test
  void anUnknownCommandIsBadUsage() {
    assertEquals(2, run("no-such-command"));
    assertEquals("", out.toString());
  }

  @Test
  void everyCommandOfTheListCanBeCreatedAndAnswersForHelp() {
    for (CommandTable.Entry entry : new TrammelCommands().entries()) {
      assertEquals(0, run(entry.name(), "--help"), entry.name() + ": " + err);
    }
  }

  @Test
  void noTwoCommandsShareAName() {
    List<String> names = new ArrayList<>();
    for (CommandTable.Entry entry : new TrammelCommands().entries()) {
      names.add(entry.name());
    }
    assertEquals(new HashSet<>(names).size(), names.size(), names.toString());
  }
}
