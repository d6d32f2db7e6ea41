package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import trammel.engine.checks.StandardChecks;

/** The page on the checks names each of them as it is, with its limit and the limit's source. */
class CheckReferenceTest {
  private static final Path ROOT = Path.of("..", "..");
  private static final int COLUMNS = 6;
  private static final String LISTED = "### What is judged, and what is not";

  /** Parts of the page on the checks that hold checks of the tool itself. */
  private static final List<String> GROUPS =
      List.of(
          "## The measurements, first in the list",
          "## The layout",
          "## The work that it asks for");

  private static Map<String, List<String>> rows() throws IOException {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (String line : Files.readAllLines(ROOT.resolve("docs").resolve("checks.md"))) {
      List<String> cells =
          Arrays.stream(line.split("\\|", -1))
              .map(String::strip)
              .filter(c -> !c.isEmpty())
              .toList();
      if (cells.size() == COLUMNS && cells.get(0).startsWith("`")) {
        assertFalse(
            rows.containsKey(cells.get(0).replace("`", "")), cells.get(0) + " stands there twice");
        rows.put(cells.get(0).replace("`", ""), cells);
      }
    }
    return rows;
  }

  private static Map<String, String> titles() {
    Map<String, String> titles = new LinkedHashMap<>();
    StandardChecks.all().forEach(check -> titles.put(check.id(), check.title()));
    for (PlanCheck check : PlanCheck.values()) {
      titles.put(check.id(), check.title());
    }
    return titles;
  }

  @Test
  void everyCheckHasItsLine() throws IOException {
    Map<String, List<String>> rows = rows();

    assertEquals(titles().keySet(), Map.copyOf(rows).keySet());
    titles().forEach((id, title) -> assertEquals(title, rows.get(id).get(1), id));
  }

  @Test
  void limitsAndSourcesAreThoseOfTheCatalog() throws IOException {
    String catalog =
        Files.readString(ROOT.resolve("catalogs").resolve("standard").resolve("limits.json"));
    for (Map.Entry<String, List<String>> row : rows().entrySet()) {
      Matcher entry =
          Pattern.compile(
                  "\""
                      + row.getKey()
                      + "\": \\{[^}]*\"good\": \"([^\"]*)\"[^}]*\"stop\": \"([^\"]*)\""
                      + "[^}]*\"source\": \"([^\"]*)\"")
              .matcher(catalog);
      assertTrue(entry.find(), row.getKey());
      assertEquals(entry.group(1), row.getValue().get(2), row.getKey());
      assertEquals(entry.group(2), row.getValue().get(3), row.getKey());
      assertEquals(entry.group(3), row.getValue().get(4), row.getKey());
    }
  }

  /** A list of what is not judged must not deny a check that has come in since. */
  @Test
  void whatIsNotJudgedOfWeldsNamesTheCheckThatLeavesItOut() throws IOException {
    String notJudged = section("checks.md", "## Not judged").split("\n\n\\[")[0];
    for (String entry : notJudged.split("\n\\* ")) {
      if (entry.contains("weld")) {
        assertTrue(
            titles().keySet().stream().anyMatch(id -> entry.contains("`" + id + "`")), entry);
      }
    }
  }

  /** One list of what is not judged: the guide points to it and keeps none of its own. */
  @Test
  void theGuideLeavesWhatIsNotJudgedToThePageOnTheChecks() throws IOException {
    String guide = section("user-guide.md", "## What Trammel does not do");

    assertTrue(guide.contains("[checks.md](checks.md)"), guide);
    assertFalse(guide.contains("not judged"), guide);
  }

  /**
   * The guide lists in short what is judged, by the checks' own titles, and what is not, as the
   * page on the checks has it. Run with {@code -Dtrammel.docs.write=true} to write the list anew.
   */
  @Test
  void theGuideListsWhatIsJudgedAndWhatIsNot() throws IOException {
    Path page = ROOT.resolve("docs").resolve("user-guide.md");
    String guide = Files.readString(page);
    int start = guide.indexOf(LISTED + "\n");
    int end = guide.indexOf("\n## ", start);
    assertTrue(start >= 0 && end > start, "user-guide.md has no " + LISTED);
    String anew = guide.substring(0, start) + listed() + guide.substring(end);
    if (Boolean.getBoolean("trammel.docs.write")) {
      Files.writeString(page, anew);
    }
    assertEquals(
        anew, guide, "docs/user-guide.md is out of date: run once with -Dtrammel.docs.write=true");
  }

  private static String listed() throws IOException {
    Map<String, String> titles = titles();
    StringBuilder list =
        new StringBuilder(LISTED).append("\n\nJudged are, by the checks' titles:\n");
    for (String heading : GROUPS) {
      list.append("\n* ").append(heading.substring("## ".length())).append(": ");
      list.append(
          section("checks.md", heading)
              .lines()
              .filter(line -> line.startsWith("| `"))
              .map(line -> titles.get(line.substring("| `".length(), line.indexOf('`', 3))))
              .collect(Collectors.joining("; ")));
      list.append('.');
    }
    String not = section("checks.md", "## Not judged");
    return list.append("\n\nNot judged, so that you see to it yourself, is:\n\n")
        .append(not, not.indexOf("* "), not.indexOf("\n\n["))
        .append('\n')
        .toString();
  }

  private static String section(String page, String heading) throws IOException {
    String text = Files.readString(ROOT.resolve("docs").resolve(page));
    int start = text.indexOf(heading + "\n");
    assertTrue(start >= 0, page + " has no " + heading);
    int end = text.indexOf("\n## ", start);
    return text.substring(start, end < 0 ? text.length() : end);
  }
}
