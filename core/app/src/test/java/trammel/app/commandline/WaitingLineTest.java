package trammel.app.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.Test;

class WaitingLineTest {
  private final StringWriter err = new StringWriter();

  private Screen screen(boolean watched) {
    return new Screen(
        new PrintWriter(new StringWriter()), new PrintWriter(err, true), false, watched);
  }

  @Test
  void tellsTheTimeAndLeavesTheLineEmpty() throws InterruptedException {
    WaitingLine line = WaitingLine.on(screen(true), () -> "Searching", Duration.ofMillis(5));
    while (err.getBuffer().length() == 0) {
      Thread.sleep(5);
    }
    line.close();
    String text = err.toString();
    assertTrue(text.startsWith("\rSearching: 0 s"), text);
    String last = text.substring(text.lastIndexOf('\r', text.length() - 2));
    assertEquals("\r" + " ".repeat("Searching: 0 s".length()) + "\r", last);
  }

  @Test
  void saysNothingWhereNobodyWatches() throws InterruptedException {
    WaitingLine line = WaitingLine.on(screen(false), () -> "Searching", Duration.ofMillis(1));
    Thread.sleep(20);
    line.close();
    assertEquals("", err.toString());
  }

  @Test
  void aShorterTextLeavesNothingOfTheLongerOneBehind() throws InterruptedException {
    Iterator<String> texts = List.of("10 of 10 jobs", "Nesting").iterator();
    WaitingLine line =
        WaitingLine.on(
            screen(true), () -> texts.hasNext() ? texts.next() : "Nesting", Duration.ofMillis(5));
    while (!err.toString().contains("Nesting: 0 s")) {
      Thread.sleep(5);
    }
    line.close();
    assertTrue(err.toString().contains("\rNesting: 0 s      "), err.toString());
  }
}
