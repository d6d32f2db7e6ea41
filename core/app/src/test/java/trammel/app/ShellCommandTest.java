package trammel.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ShellCommandTest {
  @TempDir Path folder;

  private static String printed(String command) {
    StringWriter out = new StringWriter();
    assertEquals(0, Main.run(new PrintWriter(out), new PrintWriter(out), command));
    return out.toString();
  }

  @Test
  void everyCommandWithItsOptionsIsInTheManual() {
    String manual = printed("manual");
    for (String name : new TrammelCommands().names()) {
      assertTrue(manual.contains(".SS trammel " + name), name);
    }
    assertTrue(manual.contains(".B \\-\\-date DAY"), manual);
    assertTrue(manual.contains(".SH EXIT STATUS"), manual);
    for (String line : manual.split("\n")) {
      assertTrue(
          !line.startsWith(".") || line.matches("\\.(TH|SH|SS|TP|B|I)( .*)?"), "request: " + line);
    }
  }

  /** The script is read by bash itself and completes the start of a command. */
  @Test
  void bashCompletesACommandByTheScript() throws Exception {
    String script = printed("completion");
    assumeTrue(bash("true").isEmpty(), "skipped: there is no bash");
    Path file = Files.writeString(folder.resolve("completion"), script);
    String completed =
        bash(
            "source "
                + file
                + "; COMP_WORDS=(trammel ta); COMP_CWORD=1; COMP_LINE='trammel ta'; COMP_POINT=10;"
                + " _complete_trammel; echo \"${COMPREPLY[@]}\"");
    assertEquals("tacked", completed);
  }

  private static String bash(String command) throws IOException, InterruptedException {
    Process bash = new ProcessBuilder("bash", "-c", command).redirectErrorStream(true).start();
    bash.getOutputStream().close();
    String out = new String(bash.getInputStream().readAllBytes()).strip();
    assertTrue(bash.waitFor(20, TimeUnit.SECONDS));
    return out;
  }
}
