package trammel.app.commandline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import trammel.testsupport.Draw;
import trammel.testsupport.Seeds;

class HelpPageTest {
  private final StringWriter text = new StringWriter();
  private final HelpPage page = new HelpPage(new PrintWriter(text));

  @Test
  void aCommandShowsHowItIsCalledAndWhatItTakes() {
    page.command(
        "trammel compare",
        Syntax.of("Variants side by side.")
            .argument("JOB", "The job file.")
            .arguments("MORE", 0, 2, "Further job files.")
            .repeatableOption("--vary", "FIELD=A,B", "What to vary.")
            .flag("--json", "For a machine."));
    assertEquals(
        """
        Usage: trammel compare [--vary FIELD=A,B]... [--json] JOB [MORE...]
        Variants side by side.

          JOB               The job file.
          MORE              Further job files.
          --vary FIELD=A,B  What to vary.
          --json            For a machine.
          -h, --help        Show this help and end.
        """,
        text.toString());
  }

  @Test
  void longTextContinuesInItsOwnColumn() {
    page.table(List.of(new HelpPage.Row("--out DIR", "word ".repeat(30).strip())));
    List<String> lines = text.toString().lines().toList();
    assertEquals(2, lines.size());
    assertTrue(lines.get(0).startsWith("  --out DIR  word word"));
    assertTrue(lines.get(1).startsWith("             word word"));
  }

  @Seeds(1000)
  void noLineIsWiderThanThePageAndNoWordIsLost(Draw draw) {
    List<Integer> lengths = draw.listOf(1, 60, d -> d.whole(1, 70));
    StringBuilder words = new StringBuilder();
    for (int length : lengths) {
      words.append("x".repeat(length)).append(' ');
    }
    StringWriter paper = new StringWriter();
    new HelpPage(new PrintWriter(paper))
        .table(List.of(new HelpPage.Row("--name VALUE", words.toString().strip())));
    assertTrue(paper.toString().lines().allMatch(line -> line.length() <= HelpPage.WIDTH));
    assertEquals(
        "--name VALUE " + words.toString().strip(),
        paper.toString().strip().replaceAll("\\s+", " "));
  }
}
