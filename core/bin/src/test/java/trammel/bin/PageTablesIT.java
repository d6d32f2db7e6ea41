package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import trammel.app.desk.EarlyReading;
import trammel.app.desk.Installation;
import trammel.page.Page;

/** The shop's own figures as tables: what is entered stands in its own catalog and its ledger. */
class PageTablesIT {
  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static Path jobs;
  private static Path terms;
  private static Page page;

  @BeforeAll
  static void serve() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
    jobs = Files.createDirectory(shop.resolve("jobs"));
    Files.copy(copy.demoJob("sedan"), jobs.resolve("sedan.yaml"));
    terms = jobs.resolve("catalog/shop.json");
    Files.createDirectory(jobs.resolve("catalog"));
    writeCatalog();
    page =
        new Page(
            jobs,
            EarlyReading.start(new Installation(copy.home())),
            new Page.Settings(InetAddress.getLoopbackAddress(), 0, List.of(), false));
  }

  @AfterAll
  static void close() {
    page.close();
  }

  @BeforeEach
  void asItWas() throws IOException {
    writeCatalog();
    Files.deleteIfExists(jobs.resolve("catalog/page.yaml"));
    Files.deleteIfExists(jobs.resolve("catalog/prices.json"));
  }

  private static void writeCatalog() throws IOException {
    for (String file : List.of("shop.json", "logo.png")) {
      Files.write(
          jobs.resolve("catalog").resolve(file),
          Files.readAllBytes(copy.home().resolve("catalogs/demo/catalog").resolve(file)));
    }
  }

  private static PageRequest.Answered post(String path, String body) throws IOException {
    return PageRequest.own(page.port(), page.key(), "POST", path, body).send();
  }

  private static Tree get(String path) throws IOException {
    PageRequest.Answered answer = PageRequest.own(page.port(), page.key(), "GET", path, "").send();
    assertEquals(200, answer.status(), answer.body());
    return answer.json();
  }

  private static String edit(String path, String from, String to) {
    return "{\"path\": \"%s\", \"from\": %s, \"to\": %s}".formatted(path, from, to);
  }

  private static PageRequest.Answered change(String... edits) throws IOException {
    return post(
        "/api/tables/edit", "{\"label\": \"test\", \"edits\": [" + String.join(", ", edits) + "]}");
  }

  private static void done(PageRequest.Answered answer) {
    assertEquals(200, answer.status(), answer.body());
  }

  private static String total() throws Exception {
    return copy.json(1, "quote", jobs.resolve("sedan.yaml")).amount("price.total").toPlainString();
  }

  /** A cell of a table, by its path. */
  private static Map<?, ?> cell(Tree answer, String path) {
    for (Object table : (List<?>) answer.at("tables").value()) {
      for (Object row : (List<?>) ((Map<?, ?>) table).get("rows")) {
        for (Object cell : (List<?>) ((Map<?, ?>) row).get("cells")) {
          if (path.equals(((Map<?, ?>) cell).get("path"))) {
            return (Map<?, ?>) cell;
          }
        }
      }
    }
    throw new AssertionError("no cell " + path);
  }

  @Test
  void aRateIsWrittenIntoTheShopsOwnFileAndNothingElseOfItChanges() throws Exception {
    String before = Files.readString(terms);
    String totalBefore = total();
    assertEquals("105.00", cell(get("/api/tables"), "shop.labour_rate").get("value"));
    done(change(edit("shop.labour_rate", "\"105.00\"", "\"$112.50\"")));
    assertEquals(
        before.replace("\"labour_rate\": 105.00", "\"labour_rate\": 112.50"),
        Files.readString(terms));
    assertNotEquals(totalBefore, total());
    assertEquals(
        total(),
        get("/api/jobs/sedan.yaml/judge").amount("price.total").toPlainString(),
        "the page prices with it at once");
    done(post("/api/tables/undo", "{}"));
    assertEquals(before, Files.readString(terms));
    done(post("/api/tables/redo", "{}"));
    assertTrue(Files.readString(terms).contains("\"labour_rate\": 112.50,"));
  }

  @Test
  void ofPastedCellsNoneIsWrittenWhileOneCannotBeAndItIsNamed() throws Exception {
    String before = Files.readString(terms);
    PageRequest.Answered refused =
        change(
            edit("shop.labour_rate", "\"105.00\"", "\"99.00\""),
            edit("shop.tax.rate", "\"7.25 %\"", "\"seven\""),
            edit("operations.design.low", "\"1.5 h\"", "\"9 h\""));
    assertEquals(422, refused.status());
    String problems = refused.json().at("problems").value().toString();
    assertTrue(problems.contains("shop.tax.rate") && problems.contains("seven"), problems);
    assertTrue(problems.contains("operations.design"), problems);
    assertEquals(before, Files.readString(terms));
    assertFalse(Files.exists(jobs.resolve("catalog/page.yaml")));
  }

  @Test
  void aCellThatAnotherProgramChangedIsAskedAboutAndNotOverwritten() throws Exception {
    String other = Files.readString(terms).replace("105.00", "108.00");
    Files.writeString(terms, other);
    PageRequest.Answered conflict = change(edit("shop.labour_rate", "\"105.00\"", "\"112.50\""));
    assertEquals(409, conflict.status());
    assertTrue(conflict.body().contains("108.00"), conflict.body());
    assertEquals(other, Files.readString(terms));
    done(change(edit("shop.labour_rate", "\"108.00\"", "\"112.50\"")));
    assertEquals(other.replace("108.00", "112.50"), Files.readString(terms));
  }

  @Test
  void aStandardFigureGoesIntoAFileOfTheShopAndComesBackWhenItsCellIsEmptied() throws Exception {
    String totalBefore = total();
    done(change(edit("operations.strip-out.likely", "\"4 h\"", "\"5 1/2 h\"")));
    Path own = jobs.resolve("catalog/page.yaml");
    assertEquals("5 1/2 h", Tree.ofYaml(Files.readString(own)).text("operations.strip-out.likely"));
    assertEquals(true, cell(get("/api/tables"), "operations.strip-out.likely").get("own"));
    assertNotEquals(totalBefore, total());
    done(change(edit("operations.strip-out.likely", "\"5 1/2 h\"", "null")));
    assertEquals("4 h", cell(get("/api/tables"), "operations.strip-out.likely").get("value"));
    assertEquals(totalBefore, total());
  }

  @Test
  void aSupplierWithADotInItsNameAndAPaymentAreAddedAndTakenOut() throws Exception {
    String before = Files.readString(terms);
    String supplier = "suppliers.\\\"Example Bros. Steel\\\"";
    done(change(edit(supplier, "null", "{\"freight\": \"1,050.00\", \"address\": \"3 Road\"}")));
    assertTrue(
        Files.readString(jobs.resolve("catalog/page.yaml")).contains("freight: 1050.00"),
        Files.readString(jobs.resolve("catalog/page.yaml")));
    done(change(edit("shop.progress[0]", "null", "{\"at\": \"axle hung\", \"share\": \"20 %\"}")));
    assertEquals("20 %", cell(get("/api/tables"), "shop.progress[0].share").get("value"));
    done(change(edit("shop.progress[0]", "null", "null")));
    done(change(edit(supplier, "null", "null")));
    assertFalse(get("/api/tables").at("tables").value().toString().contains("Example Bros."));
    for (int i = 0; i < 4; i++) {
      done(post("/api/tables/undo", "{}"));
    }
    assertEquals(before, Files.readString(terms));
  }

  @Test
  void aPriceThatIsEnteredIsInTheCatalogAndWhatItWasInTheLedger() throws Exception {
    String path = "prices.\"jam-nut-0.750-16\"";
    String before = (String) cell(get("/api/tables/prices"), path).get("value");
    done(change(edit(path.replace("\"", "\\\""), "\"" + before + "\"", "\"7.35\"")));
    assertEquals("7.35", cell(get("/api/tables/prices"), path).get("value"));
    Path tables = shop.resolve("tables");
    copy.run("ledger", "tables", "--shop", jobs.toString(), "--out", tables.toString());
    String history = Files.readString(tables.resolve("prices.csv"));
    assertTrue(history.contains("jam-nut-0.750-16") && history.contains("7.35"), history);
    done(post("/api/tables/undo", "{}"));
    assertEquals(before, cell(get("/api/tables/prices"), path).get("value"));
    PageRequest.Answered refused =
        change(edit(path.replace("\"", "\\\""), "\"" + before + "\"", "\"cheap\""));
    assertEquals(422, refused.status());
    assertTrue(refused.body().contains("jam-nut-0.750-16"), refused.body());
  }

  @Test
  void aPastedListIsLookedAtFirstAndTakenInThen() throws Exception {
    String list =
        "{\"lines\": [[\"Item\", \"Price\"], [\"jam-nut-0.750-16\", \"6.95\"]], \"source\": \"list\","
            + " \"write\": %s}";
    Tree seen = post("/api/tables/prices/list", list.formatted("false")).json();
    assertTrue(seen.text("words").contains("6.95"), seen.text("words"));
    assertFalse(Files.exists(jobs.resolve("catalog/prices.json")));
    done(post("/api/tables/prices/list", list.formatted("true")));
    assertTrue(Files.readString(jobs.resolve("catalog/prices.json")).contains("6.95"));
  }

  @Test
  void theRackIsCountedAnewAndAWrongLineIsToldByItsCell() throws Exception {
    String lines =
        "[[\"stick\", \"dom-1.50x0.120\", \"S1\", \"%s\", \"\", \"\"],"
            + " [\"bin\", \"jam-nut-0.750-16\", \"\", \"\", \"\", \"6\"]]";
    PageRequest.Answered refused = change(edit("stock", "[]", lines.formatted("long")));
    assertEquals(422, refused.status());
    assertTrue(refused.body().contains("stock[0].length"), refused.body());
    done(change(edit("stock", "[]", lines.formatted("61 1/2 in"))));
    assertTrue(get("/api/tables/stock").at("lines").value().toString().contains("61 1/2 in"));
    assertTrue(
        copy.run("ledger", "--shop", jobs.toString()).out().contains("S1"), "the ledger has it");
    done(post("/api/tables/undo", "{}"));
    assertEquals("[]", get("/api/tables/stock").at("lines").value().toString());
  }
}
