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
import org.junit.jupiter.api.Test;
import trammel.engine.checks.StandardChecks;

/** The page on the checks names each of them as it is, with its limit and the limit's source. */
class CheckReferenceTest {
  private static final Path ROOT = Path.of("..", "..");
  private static final int COLUMNS = 6;

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

  private static String section(String page, String heading) throws IOException {
    String text = Files.readString(ROOT.resolve("docs").resolve(page));
    int start = text.indexOf(heading + "\n");
    assertTrue(start >= 0, page + " has no " + heading);
    int end = text.indexOf("\n## ", start);
    return text.substring(start, end < 0 ? text.length() : end);
  }
}
