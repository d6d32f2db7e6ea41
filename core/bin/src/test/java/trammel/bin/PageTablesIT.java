package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
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
    page = ServedPage.of(copy, jobs);
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
    Path demo = copy.home().resolve("catalogs/demo/catalog");
    Files.writeString(terms, Files.readString(demo.resolve("shop.json")));
    if (!Files.exists(jobs.resolve("catalog/logo.png"))) {
      Files.copy(demo.resolve("logo.png"), jobs.resolve("catalog/logo.png"));
    }
  }

  private static PageRequest.Answered post(String path, String body) throws IOException {
    return ServedPage.post(page, path, body).send();
  }

  private static Tree get(String path) throws IOException {
    PageRequest.Answered answer = ServedPage.get(page, path).send();
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
  void aDeviceTakesBackItsOwnChangesAndNoneThatAnotherHasMadeSince() throws Exception {
    String before = Files.readString(terms);
    done(change(edit("shop.labour_rate", "\"105.00\"", "\"112.50\"")));
    done(other("edit", "{\"edits\": [" + edit("shop.wage_rate", "\"41.50\"", "\"43\"") + "]}"));
    done(other("undo", "{}"));
    String mine = before.replace("105.00", "112.50");
    assertEquals(mine, Files.readString(terms), "its own, and no more");
    done(other("undo", "{}"));
    assertEquals(mine, Files.readString(terms), "it has no other");
    String twice = edit("shop.labour_rate", "\"112.50\"", "\"120.00\"");
    done(other("edit", "{\"edits\": [" + twice + "]}"));
    done(post("/api/tables/undo", "{}"));
    assertEquals(before.replace("105.00", "120.00"), Files.readString(terms));
  }

  private static PageRequest.Answered other(String what, String body) throws IOException {
    return ServedPage.post(page, "/api/tables/" + what, body)
        .with("X-Trammel-Device", "another")
        .send();
  }

  // Nonsense

  private static void refused(int status, String path, String body) throws IOException {
    PageRequest.Answered answer = post(path, body);
    String told = path + " " + body.substring(0, Math.min(200, body.length()));
    assertEquals(status, answer.status(), told + ": " + answer.body());
    assertFalse(answer.body().contains("Exception"), answer.body());
  }

  @Test
  void nonsenseInATableIsRefusedInWordsAndNothingIsWritten() throws Exception {
    String before = Files.readString(terms);
    Files.copy(jobs.resolve("catalog/logo.png"), jobs.resolve("away.png"));
    for (String one :
        List.of(
            "7",
            edit("stock", "[]", "\"all\""),
            edit("stock", "[]", "[7]"),
            edit("stock", "7", "[]"),
            edit("shop.wage_rate", "\"41.50\"", "1") + ", " + edit("stock", "[]", "[]"))) {
      refused(400, "/api/tables/edit", "{\"edits\": [" + one + "]}");
    }
    for (String one :
        List.of(
            edit("", "null", "1"),
            edit("../shop.labour_rate", "null", "1"),
            edit("no.such", "null", "1"),
            edit("shop.labour_rate", "\"105.00\"", "[[[1]]]"),
            edit("shop.logo", "\"logo.png\"", "\"../away.png\""),
            edit("shop.logo", "\"logo.png\"", "\"" + jobs.resolve("away.png") + "\""),
            edit("shop.change_rule", "null", "\"" + "x".repeat(100_000) + "\""),
            edit("items.jam-nut-0.750-16.price", "null", "1"),
            edit("stock[0].length", "[]", "[]"),
            edit("stock", "[]", "[[\"stick\", \"../../x\", \"S\", \"1 in\", \"\", \"\"]]"),
            edit("stock", "[]", "[[\"bin\", \"jam-nut-0.750-16\", \"\", \"\", \"\", \"1e9\"]]"),
            edit("prices", "null", "\"1\""),
            edit("prices.\\\"../x\\\"", "null", "\"1\""),
            String.join(", ", Collections.nCopies(2001, edit("shop.name", "null", "1"))))) {
      refused(422, "/api/tables/edit", "{\"edits\": [" + one + "]}");
    }
    Files.delete(jobs.resolve("away.png"));
    assertEquals(before, Files.readString(terms));
    assertFalse(Files.exists(jobs.resolve("catalog/page.yaml")));
    assertEquals("[]", get("/api/tables/stock").at("lines").value().toString());
  }

  @Test
  void aPriceOrListThatNoCatalogTakesIsRefusedAndThePricesStay() throws Exception {
    String path = "prices.\"jam-nut-0.750-16\"";
    String now = (String) cell(get("/api/tables/prices"), path).get("value");
    for (String price :
        List.of("", "-1", "1e3", "10000001", "<b>7</b>", "\\u202e7", "9".repeat(400))) {
      refused(
          422,
          "/api/tables/edit",
          "{\"edits\": ["
              + edit(path.replace("\"", "\\\""), "\"" + now + "\"", "\"" + price + "\"")
              + "]}");
    }
    String list = "{\"lines\": %s, \"source\": \"%s\", \"write\": true}";
    String line = "[[\"Item\", \"Price\"], [\"jam-nut-0.750-16\", \"%s\"]]";
    String list6 = line.formatted("6.95");
    refused(400, "/api/tables/prices/list", list.formatted("\"Item\"", "list"));
    refused(400, "/api/tables/prices/list", list.formatted("[\"Item\"]", "list"));
    refused(422, "/api/tables/prices/list", list.formatted("[]", "list"));
    refused(422, "/api/tables/prices/list", list.formatted(line.formatted("99999999999"), "list"));
    refused(422, "/api/tables/prices/list", list.formatted(list6, ""));
    refused(422, "/api/tables/prices/list", list.formatted(list6, "x".repeat(201)));
    refused(422, "/api/tables/prices/list", list.formatted(list6, "a\\u0007b"));
    assertFalse(Files.exists(jobs.resolve("catalog/prices.json")));
    assertEquals(now, cell(get("/api/tables/prices"), path).get("value"));
  }

  @Test
  void anOrderOfNonsenseIsRefusedAndOneWithAJobThatCannotBeUsedIsNotPlaced() throws Exception {
    Files.writeString(shop.resolve("secret.yaml"), "secret: yes\n");
    for (String names :
        List.of("[]", "7", "[7]", "[\"../secret.yaml\"]", "[\"sedan.yaml\", \"sedan.yaml\"]")) {
      refused(400, "/api/order", "{\"jobs\": " + names + "}");
    }
    refused(404, "/api/order", "{\"jobs\": [\"none.yaml\"]}");
    refused(
        400, "/api/order", "{\"jobs\": [" + "\"sedan.yaml\", ".repeat(5000) + "\"sedan.yaml\"]}");
    Path broken = Files.writeString(jobs.resolve("broken.yaml"), "job: 7\n");
    Tree held =
        post(
                "/api/order",
                "{\"jobs\": [\"sedan.yaml\", \"broken.yaml\"], \"place\": true, \"anyway\": true}")
            .json();
    assertEquals("false", held.at("placed").value().toString());
    assertTrue(held.at("remarks").value().toString().contains("left out"));
    assertFalse(Files.exists(jobs.resolve(held.text("folder"))));
    Files.delete(broken);
  }

  // Ordering over jobs, and the floor

  @Test
  void anOrderOverTwoJobsIsTheCommandsAndOnlyWhenItIsPlacedTakesFromTheRack() throws Exception {
    Path second = jobs.resolve("second.yaml");
    String sedan = Files.readString(jobs.resolve("sedan.yaml"));
    Files.writeString(second, sedan.replace("number: D-102", "number: D-202"));
    done(change(edit("stock", "[]", "[[\"bin\", \"jam-nut-0.750-16\", \"\", \"\", \"\", \"2\"]]")));
    String asked = "{\"jobs\": [\"sedan.yaml\", \"second.yaml\"], \"rack\": true%s}";
    Tree shown = post("/api/order", asked.formatted("")).json();
    Tree said =
        copy.json(1, "order", jobs.resolve("sedan.yaml"), second.toString(), "--rack", "--dry-run");
    assertEquals(
        said.amount("total"), new BigDecimal(String.valueOf(shown.at("order.total").value())));
    assertEquals("[D-102, D-202]", shown.at("order.jobs").value().toString());
    Object rack = get("/api/tables/stock").at("lines").value();
    Tree placed = post("/api/order", asked.formatted(", \"place\": true, \"anyway\": true")).json();
    Path papers = jobs.resolve(placed.text("folder"));
    assertEquals("true", placed.at("placed").value().toString());
    assertTrue(Files.size(papers.resolve("material-order.pdf")) > 1000);
    assertNotEquals(rack, get("/api/tables/stock").at("lines").value());
    Files.delete(second);
    done(change(edit("stock", lines(get("/api/tables/stock").at("lines").value()), "[]")));
  }

  private static String lines(Object lines) {
    List<String> rows = new ArrayList<>();
    for (Object line : (List<?>) lines) {
      rows.add(
          "[\""
              + String.join("\", \"", ((List<?>) line).stream().map(String::valueOf).toList())
              + "\"]");
    }
    return "[" + String.join(", ", rows) + "]";
  }

  @Test
  void aBracketIsSignedOffOnReadingsThatAreInPlaceAndNoLongerHoldsWhenTheyChange()
      throws Exception {
    String sedan = Files.readString(jobs.resolve("sedan.yaml"));
    Files.writeString(
        jobs.resolve("straight.yaml"),
        sedan.replaceAll(
            "wheelbase: \\{left: ([^,]+), right: [^}]+}", "wheelbase: {left: $1, right: $1}"));
    String floor = "/api/jobs/straight.yaml/fitup";
    Tree sheet = get(floor);
    Map<?, ?> first = (Map<?, ?>) ((List<?>) sheet.at("targets").value()).get(0);
    String bracket = (String) first.get("bracket");
    String sign = "{\"bracket\": \"" + bracket + "\", \"by\": \"J. Example\"}";
    PageRequest.Answered early = post(floor + "/sign", sign);
    assertEquals(422, early.status());
    assertTrue(early.body().contains("missing"), early.body());
    for (Object each : (List<?>) sheet.at("targets").value()) {
      Map<?, ?> target = (Map<?, ?>) each;
      if (!bracket.equals(target.get("bracket"))) {
        continue;
      }
      done(
          post(
              floor,
              "{\"target\": \"%s\", \"from\": [], \"readings\": [\"%s\"]}"
                  .formatted(target.get("target"), target.get("set_to_text"))));
    }
    String by = "{\"bracket\": \"%s\", \"by\": \"%s\"}";
    refused(404, floor + "/sign", by.formatted("../" + bracket, "J. Example"));
    refused(422, floor + "/sign", by.formatted(bracket, "x".repeat(61)));
    refused(422, floor + "/sign", by.formatted(bracket, "\\u202eJ"));
    String reading = "{\"target\": \"%s\", \"from\": [\"%s\"], \"readings\": [\"%s\"]}";
    refused(
        422,
        floor,
        reading.formatted(first.get("target"), first.get("set_to_text"), "\\u202e24 in"));
    Tree signed = post(floor + "/sign", sign).json();
    assertEquals(
        "J. Example",
        signed.list("signed").get(0).text("by"),
        signed.at("signed").value().toString());
    assertTrue(
        Files.readString(jobs.resolve("straight.signed.csv")).contains(bracket), "beside the job");
    Tree other =
        post(floor, reading.formatted(first.get("target"), first.get("set_to_text"), "23 7/8 in"))
            .json();
    assertEquals("false", other.list("signed").get(0).at("holds").value().toString());
    assertTrue(
        other.list("signed").get(0).text("not_yet").contains("again")
            || other.list("signed").get(0).text("not_yet").contains("out of place"));
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
