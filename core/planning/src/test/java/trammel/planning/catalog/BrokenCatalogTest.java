package trammel.planning.catalog;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import trammel.reading.tree.BadInputException;
import trammel.reading.tree.Problem;

/** A broken catalog is refused with file, line, field, what is given, allowed, and what to do. */
class BrokenCatalogTest {
  @TempDir private Path folder;

  private List<Problem> problems() {
    return assertThrows(BadInputException.class, () -> CatalogReader.read(folder)).problems();
  }

  private Problem onlyProblem() {
    List<Problem> problems = problems();
    assertEquals(1, problems.size(), problems::toString);
    return problems.get(0);
  }

  /** File, passage whose first occurrence is replaced, replacement, field, part of the message. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "steel.json | 127.50 | -127.50 | bars.dom-1.25x0.120.sticks[0].price | from 0",
        "steel.json | 127.50 | \"127,50\" | bars.dom-1.25x0.120.sticks[0].price | such as 95.00",
        "steel.json | \"20 ft\" | \"20 lb\" | bars.dom-1.25x0.120.sticks[0].length | a length",
        "steel.json | \"wall\" | \"wal\" | bars.dom-1.25x0.120.wal | Did you mean wall?",
        "steel.json | \"0.120 in\" | \"5 in\" | bars.dom-1.25x0.120.wall | a length from",
        "steel.json | \"shape\": \"round\" | \"shape\": \"oval\" | bars.dom-1.25x0.120.shape | round or rectangular",
        "steel.json | \"60 ksi\" | \"60 lb\" | steels.dom-1020.yield | a pressure",
        "steel.json | \"steel\": \"dom-1020\" | \"steel\": \"dom-1026\" | bars.dom-1.25x0.120.steel | a36",
        "steel.json | \"trammel-catalog/1\" | \"trammel-catalog/9\" | format | trammel-catalog/1",
        "steel.json | \"USD\" | \"US$\" | currency | ISO 4217",
        "hardware.json | \"tube_end\": \"tube-end-0.750-16\" | \"tube_end\": \"tube-end-0.75\" | ends.bushed-end-0.750-16.tube_end | Add 'tube-end-0.75' to items",
        "hardware.json | \"grade\": 8 | \"grade\": 6 | bolts.bolt-0.375-24 | give 5 or 8",
        "hardware.json | \"step\": \"1/4 in\", | | bolts.bolt-0.375-24 | needs both to and step",
        "hardware.json | \"bought\": \"part\" | \"bought\": \"piece\" | items.tube-end-0.625-18.bought | part, supply or outside-work",
        "springs.json | \"volume\": 31.7 | \"volume\": 21.7 | air_springs.air-spring-5.0 | larger in each row",
        "springs.json | \"open\": \"15 in\" | \"open\": \"10 in\" | shocks.coil-over-4 | Measure it",
        "labour.json | \"likely\": \"1 h\" | \"likely\": \"3 h\" | operations.intake | low",
        "limits.json | \"at most 2 deg\" | \"at most 2 lb\" | limits.lower-bar-angle.good | at most",
        "limits.json | \"at most 2 deg\" | \"2 deg\" | limits.lower-bar-angle.good | which way it limits",
        "limits.json | \"at most 2 deg\" | \"at most 7 deg\" | limits.lower-bar-angle | inside the stop range",
        "limits.json | \"measure\": \"angle\" | \"measure\": \"length\" | limits.lower-bar-angle.measure | Write measure: angle",
        "limits.json | \"100 mph\" | \"100 in\" | analysis.design_speed | a speed",
        "shop.json | \"4 %\" | \"400 %\" | shop.supplies | a percentage",
        "shop.json | \"labour_rate\": 95.00, | | shop.labour_rate | Add labour_rate",
      })
  void oneFaultIsReportedWhereItIs(
      String file, String passage, String replacement, String field, String words) {
    CatalogFolders.copyOfStandard(folder);
    Path broken = folder.resolve(file);
    String text = CatalogFolders.text(broken);
    int at = text.indexOf(passage);
    assertTrue(at >= 0, () -> passage + " does not stand in " + file);
    String fresh = replacement == null ? "" : replacement;
    String changed = text.substring(0, at) + fresh + text.substring(at + passage.length());
    CatalogFolders.write(broken, changed);

    Problem problem = onlyProblem();

    assertEquals(broken.toString(), problem.file());
    assertEquals(field, problem.field());
    assertTrue(problem.text().contains(words), problem::text);
    assertTrue(problem.line() <= lineOf(changed, at), problem::text);
    assertTrue(problem.line() >= lineOf(changed, entryStart(changed, at)), problem::text);
  }

  private static int lineOf(String text, int at) {
    return 1 + (int) text.substring(0, at).chars().filter(c -> c == '\n').count();
  }

  /** Where the entry round a place opens. */
  private static int entryStart(String text, int at) {
    return Math.max(0, text.lastIndexOf("\": {\n", at));
  }

  @Test
  void nameInTwoFilesIsRefusedByName() {
    CatalogFolders.copyOfStandard(folder);
    Path second =
        CatalogFolders.write(
            folder.resolve("second.json"),
            """
            {
              "format": "trammel-catalog/1",
              "prices": "invented",
              "items": {
                "bump-stop": {"title": "another", "unit": "each", "price": 1, "bought": "part",
                  "supplier": "somebody", "lead_days": 1}
              }
            }
            """);
    Problem problem = onlyProblem();
    assertEquals(second.toString(), problem.file());
    assertEquals(5, problem.line());
    assertEquals("items.bump-stop", problem.field());
    assertTrue(problem.allowed().contains(folder.resolve("hardware.json").toString()));
  }

  @Test
  void nameTwiceInOneFileIsRefused() {
    CatalogFolders.copyOfStandard(folder);
    Path file = folder.resolve("hardware.json");
    String text = CatalogFolders.text(file);
    CatalogFolders.write(file, text.replace("\"brake-hose\"", "\"bump-stop\""));
    Problem problem = onlyProblem();
    assertEquals("items.bump-stop", problem.field());
    assertTrue(problem.line() > 1);
  }

  @Test
  void partWithTheNameOfAnItemIsRefused() {
    CatalogFolders.copyOfStandard(folder);
    Path file = folder.resolve("springs.json");
    CatalogFolders.write(
        file, CatalogFolders.text(file).replace("\"coil-over-4\"", "\"bump-stop\""));
    Problem problem = onlyProblem();
    assertEquals("shocks.bump-stop", problem.field());
    assertTrue(problem.remedy().contains("another name"));
  }

  @Test
  void limitThatIsMissingIsNamed() {
    CatalogFolders.copyOfStandard(folder);
    Path file = folder.resolve("limits.json");
    String text = CatalogFolders.text(file);
    CatalogFolders.write(file, text.replace("\"slip-engagement\"", "\"slip-grip\""));
    List<Problem> problems = problems();
    assertEquals(2, problems.size());
    assertTrue(problems.toString().contains("Add the limit of slip-engagement"));
    assertTrue(problems.toString().contains("a limit for 'slip-grip'"));
  }

  @Test
  void boltThatNoBoltFitsIsNamed() {
    CatalogFolders.copyOfStandard(folder);
    Path file = folder.resolve("hardware.json");
    String text = CatalogFolders.text(file);
    CatalogFolders.write(file, text.replace("\"bolt\": \"9/16 in\"", "\"bolt\": \"7/16 in\""));
    Problem problem = onlyProblem();
    assertEquals("ends.bushed-end-0.750-16.bolt", problem.field());
    assertTrue(problem.allowed().contains("9/16-18 grade 8"));
  }

  @Test
  void currencyIsTheSameInAllFiles() {
    CatalogFolders.copyOfStandard(folder);
    Path file = folder.resolve("springs.json");
    CatalogFolders.write(file, CatalogFolders.text(file).replace("\"USD\"", "\"EUR\""));
    Problem problem = onlyProblem();
    assertEquals("currency", problem.field());
    assertEquals("EUR", problem.given());
    assertTrue(problem.allowed().contains("USD"));
  }

  @Test
  void fileWithPricesSaysWhereTheyComeFrom() {
    CatalogFolders.copyOfStandard(folder);
    Path file = folder.resolve("springs.json");
    CatalogFolders.write(file, CatalogFolders.text(file).replaceFirst("\"prices\".*\n", "\n"));
    assertEquals("prices", onlyProblem().field());
  }

  @Test
  void supplierStandsAtTheTopOrInTheEntry() {
    CatalogFolders.copyOfStandard(folder);
    Path file = folder.resolve("springs.json");
    CatalogFolders.write(file, CatalogFolders.text(file).replaceFirst("\"supplier\".*\n", "\n"));
    List<Problem> problems = problems();
    // Eleven families of coils, six air springs, seventeen shocks.
    assertEquals(34, problems.size());
    assertTrue(problems.get(0).remedy().contains("Add it, such as supplier:"));
  }

  @Test
  void everythingWrongWithAllFilesIsReportedAtOnce() {
    CatalogFolders.copyOfStandard(folder);
    for (String name : List.of("steel.json", "springs.json", "labour.json")) {
      Path file = folder.resolve(name);
      CatalogFolders.write(file, CatalogFolders.text(file).replaceFirst("\"title\"", "\"titel\""));
    }
    List<Problem> problems = problems();
    assertEquals(
        List.of("labour.json", "springs.json", "steel.json"),
        problems.stream()
            .filter(problem -> problem.remedy().equals("Did you mean title?"))
            .map(problem -> Path.of(problem.file()).getFileName().toString())
            .toList());
  }

  @Test
  void sectionThatIsNowhereIsNamed() {
    CatalogFolders.write(
        folder.resolve("empty.json"), "{\"format\": \"trammel-catalog/1\", \"currency\": \"USD\"}");
    String text = problems().toString();
    for (String section : List.of("bars", "operations", "welding", "shop")) {
      assertTrue(text.contains("Add " + section + " ("), section);
    }
  }

  @Test
  void folderThatIsMissingOrEmptyIsRefused() {
    assertTrue(problems().get(0).given().contains("a folder without a catalog file"));
    Path nowhere = folder.resolve("nowhere");
    BadInputException refused =
        assertThrows(BadInputException.class, () -> CatalogReader.read(nowhere));
    assertEquals("no such folder", refused.problems().get(0).given());
  }

  @Test
  void syntaxErrorIsReportedWithItsLine() {
    CatalogFolders.copyOfStandard(folder);
    Path file = CatalogFolders.write(folder.resolve("extra.json"), "{\n  \"format\" \"x\"\n}\n");
    Problem problem = onlyProblem();
    assertEquals(file.toString(), problem.file());
    assertEquals(2, problem.line());
  }
}
