package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import trammel.page.Page;

/** What the page's server answers, with the plugins and the catalog of an installed copy. */
class PageIT {
  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static Path jobs;
  private static Page page;

  @BeforeAll
  static void serve() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
    jobs = Files.createDirectory(shop.resolve("jobs"));
    Workbench.copy(copy.home().resolve("catalogs/demo/catalog"), jobs.resolve("catalog"));
    Files.writeString(shop.resolve("secret.yaml"), "secret: yes\n");
    page = ServedPage.of(copy, jobs);
  }

  @AfterAll
  static void close() {
    page.close();
  }

  @BeforeEach
  void writeJobs() throws IOException {
    Files.writeString(jobs.resolve("pickup.yaml"), Files.readString(copy.demoJob("pickup")));
  }

  private static PageRequest get(String path) {
    return ServedPage.get(page, path);
  }

  private static PageRequest post(String path, String body) {
    return ServedPage.post(page, path, body);
  }

  private static Tree answered(PageRequest request) throws IOException {
    PageRequest.Answered answer = request.send();
    assertEquals(200, answer.status(), answer.body());
    return answer.json();
  }

  private static String edit(String path, String from, String to) {
    return "{\"label\": \"test\", \"edits\": [{\"path\": \"%s\", \"from\": %s, \"to\": %s}]}"
        .formatted(path, from, to);
  }

  // The same as the commands

  @Test
  void aJobHasThePriceToTheCentAndTheChecksThatQuoteSays() throws Exception {
    Tree said = answered(get("/api/jobs/pickup.yaml/judge"));
    Tree quoted = copy.json(1, "quote", jobs.resolve("pickup.yaml"));
    assertEquals(quoted.at("price").value(), said.at("price").value());
    assertEquals(quoted.at("hours").value(), said.at("hours").value());
    assertEquals(quoted.at("stops").value(), said.at("stops").value());
    List<?> checks = (List<?>) quoted.at("checks").value();
    List<?> shown = (List<?>) said.at("checks").value();
    assertEquals(checks.size(), shown.size());
    for (int i = 0; i < checks.size(); i++) {
      Map<?, ?> one = (Map<?, ?>) shown.get(i);
      ((Map<?, ?>) checks.get(i)).forEach((key, value) -> assertEquals(value, one.get(key)));
    }
  }

  @Test
  void everyFigureOfThePriceOpensToHowItCameAbout() throws Exception {
    Tree why = answered(get("/api/jobs/pickup.yaml/why?line=tax"));
    assertEquals(
        copy.json(0, "quote", jobs.resolve("pickup.yaml"), "--why", "tax").at("why").value(),
        why.at("why").value());
  }

  // Drawing

  @Test
  void theDrawingHasTheAssemblyOfThePlanAndSendsAFormOnlyOnce() throws Exception {
    Tree scene = answered(post("/api/jobs/pickup.yaml/scene", "{\"known\": []}"));
    List<?> planned =
        (List<?>) copy.json(1, "plan", jobs.resolve("pickup.yaml")).at("assembly.parts").value();
    List<?> drawn = (List<?>) scene.at("parts").value();
    assertEquals(planned.size(), drawn.size());
    Map<?, ?> shapes = (Map<?, ?>) scene.at("shapes").value();
    List<String> known = new ArrayList<>();
    shapes.keySet().forEach(key -> known.add("\"" + key + "\""));
    for (Object part : drawn) {
      assertTrue(shapes.containsKey(((Map<?, ?>) part).get("shape")));
    }
    Tree again =
        answered(
            post("/api/jobs/pickup.yaml/scene", "{\"known\": [" + String.join(",", known) + "]}"));
    assertEquals(Map.of(), again.at("shapes").value());
    assertEquals(scene.at("parts").value(), again.at("parts").value());
  }

  /** Four bars of length 24 in and 18 in swing about fixed ends: their ends keep their distance. */
  @Test
  void aPoseMovesTheAxleByItsHeaveAndKeepsTheBarsAsLongAsTheyAre() throws Exception {
    Tree scene = answered(post("/api/jobs/pickup.yaml/scene", "{\"known\": []}"));
    Tree pose = answered(get("/api/jobs/pickup.yaml/pose?heave_mm=50&roll_deg=0"));
    List<?> axle = (List<?>) pose.at("bodies.axle").value();
    Map<?, ?> lower = (Map<?, ?>) ((List<?>) scene.at("points").value()).get(0);
    double[] frame =
        moved((List<?>) pose.at("bodies.lower-left").value(), (List<?>) lower.get("frame"));
    double[] end =
        moved((List<?>) pose.at("bodies.lower-left").value(), (List<?>) lower.get("axle"));
    double[] onAxle = moved(axle, (List<?>) lower.get("axle"));
    assertEquals(24 * 25.4, distance(frame, end), 0.5);
    assertEquals(0, distance(end, onAxle), 1e-6, "the bar goes where the axle takes its joint");
    assertEquals(0, distance(frame, point((List<?>) lower.get("frame"))), 1e-6);
    double[] centre = moved(axle, List.of(0.0, 0.0, 14.5 * 25.4));
    assertEquals(14.5 * 25.4 + 50, centre[2], 1e-6, "the axle's middle rises by the heave");
  }

  private static double[] point(List<?> three) {
    return new double[] {number(three.get(0)), number(three.get(1)), number(three.get(2))};
  }

  private static double number(Object value) {
    return ((Number) value).doubleValue();
  }

  private static double[] moved(List<?> sixteen, List<?> at) {
    double[] moved = new double[3];
    for (int i = 0; i < 3; i++) {
      moved[i] =
          number(sixteen.get(i)) * number(at.get(0))
              + number(sixteen.get(4 + i)) * number(at.get(1))
              + number(sixteen.get(8 + i)) * number(at.get(2))
              + number(sixteen.get(12 + i));
    }
    return moved;
  }

  private static double distance(double[] a, double[] b) {
    return Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
  }

  // Changing

  @Test
  void aChangeIsInTheFileAndTheJobIsAsTheCommandSeesItThen() throws Exception {
    Path file = jobs.resolve("pickup.yaml");
    String before = Files.readString(file);
    answered(
        post(
            "/api/jobs/pickup.yaml/edit",
            edit("measured.driveshaft.slip_room", "\"1/8 in\"", "\"1 3/16 in\"")));
    assertEquals(
        before.replace("slip_room: 1/8 in", "slip_room: 1 3/16 in"), Files.readString(file));
    assertEquals(
        copy.json(0, "quote", file).at("price.total").value(),
        answered(get("/api/jobs/pickup.yaml/judge")).at("price.total").value());
    answered(post("/api/jobs/pickup.yaml/undo", "{}"));
    assertEquals(before, Files.readString(file));
  }

  @Test
  void aLookTellsWhatAChangeWouldComeToAndWritesNothing() throws Exception {
    String before = Files.readString(jobs.resolve("pickup.yaml"));
    Tree looked =
        answered(
            post(
                "/api/jobs/pickup.yaml/look",
                edit("chosen.pickups.upper-left.frame.up", "null", "\"21 in\"")));
    assertTrue(((List<?>) looked.at("stops").value()).size() > 1, "such a bar is far from level");
    Tree bad =
        answered(
            post(
                "/api/jobs/pickup.yaml/look",
                edit("measured.rails.depth", "\"6 in\"", "\"60 ft\"")));
    assertEquals("measured.rails.depth", bad.list("problems").get(0).text("field"));
    assertEquals(before, Files.readString(jobs.resolve("pickup.yaml")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "measured.rails.depth|\"6 in\"|\"oops\"",
        "measured.rails.depth|\"6 in\"|{\"a\": \"b\"}",
        "measured.nothing|null|\"1 in\"",
        "nothing|null|\"1\"",
        "chosen.linkage_options.nothing|null|\"1 in\"",
        "chosen.linkage_options.mounting|\"inboard\"|\"upside down\"",
        "chosen.pickups.upper-left.frame.sideways|null|\"1 in\"",
        "job.units|\"us\"|\"cubits\"",
        "measured.obstacles[0].box.left|null|\"1 in\"",
        "|null|\"1\"",
        "a..b|null|\"1\""
      })
  void whatNoFieldCanHoldIsRefusedAndTheFileStays(String line) throws Exception {
    String before = Files.readString(jobs.resolve("pickup.yaml"));
    String[] parts = line.split("\\|");
    PageRequest.Answered answer =
        post("/api/jobs/pickup.yaml/edit", edit(parts[0], parts[1], parts[2])).send();
    assertTrue(answer.status() == 422 || answer.status() == 409, answer.body());
    assertEquals(before, Files.readString(jobs.resolve("pickup.yaml")));
  }

  /** The text is kept as it was typed, and is a text to YAML whatever stands in it. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "'; rm -rf / #",
        "{{7*7}}",
        "&x *x !!js/function",
        "a: b",
        "%00"
      })
  void textFieldsTakeAnyTextAndKeepItAsText(String text) throws Exception {
    String typed = "\"" + text.replace("\"", "\\\"") + "\"";
    answered(
        post(
            "/api/jobs/pickup.yaml/edit",
            edit("job.customer", "\"Example Customer (invented)\"", typed)));
    assertEquals(text, answered(get("/api/jobs/pickup.yaml")).at("document.job.customer").value());
    PageRequest.Answered answer = get("/api/jobs/pickup.yaml").send();
    assertTrue(answer.head().contains("application/json"), answer.head());
    assertTrue(answer.head().contains("nosniff"), answer.head());
  }

  @Test
  void aNewJobBeginsEmptyAndIsAskedForFieldByField() throws Exception {
    answered(post("/api/jobs", "{\"file\": \"smith.yaml\"}"));
    Tree job = answered(get("/api/jobs/smith.yaml"));
    assertEquals("nothing", job.list("problems").get(0).text("given"));
    answered(post("/api/jobs/smith.yaml/edit", edit("job.number", "null", "\"S-1\"")));
    answered(post("/api/jobs/smith.yaml/edit", edit("measured.rails.depth", "null", "\"5 1/2\"")));
    Tree now = answered(get("/api/jobs/smith.yaml"));
    assertEquals("5 1/2", now.at("document.measured.rails.depth").value());
    assertEquals(422, get("/api/jobs/smith.yaml/judge").send().status());
    assertEquals(409, post("/api/jobs", "{\"file\": \"smith.yaml\"}").send().status());
    Files.delete(jobs.resolve("smith.yaml"));
  }

  @Test
  void aBrokenFileIsListedWithWhatIsWrongAndTheOthersGoOn() throws Exception {
    Files.writeString(jobs.resolve("broken.yaml"), "job: [1, 2\n");
    Files.writeString(jobs.resolve("other.json"), "{\"somebody\": \"else's\"}");
    Tree shop = answered(get("/api/shop"));
    List<?> rows = (List<?>) shop.at("jobs").value();
    assertEquals(2, rows.size(), "another program's file is no job");
    assertEquals("broken", ((Map<?, ?>) rows.get(0)).get("state"));
    assertEquals("ready", ((Map<?, ?>) rows.get(1)).get("state"));
    assertEquals(422, get("/api/jobs/broken.yaml").send().status());
    Files.delete(jobs.resolve("broken.yaml"));
    Files.delete(jobs.resolve("other.json"));
  }

  /** With little effort, so that it is over soon: what it finds need not pass. */
  @Test
  void aSearchIsBegunWatchedAndItsAnswerTakenComesToThePriceThatItSaid() throws Exception {
    Tree now = answered(post("/api/jobs/pickup.yaml/arrange", "{\"effort\": 20}"));
    while (Boolean.TRUE.equals(now.at("running").value())) {
      Thread.sleep(50);
      now = answered(get("/api/jobs/pickup.yaml/arrange"));
    }
    Tree first = now.list("found.layouts").get(0);
    String edits = trammel.app.json.Json.text(now.list("edits").get(0).value());
    answered(post("/api/jobs/pickup.yaml/edit", "{\"label\": \"take\", \"edits\": " + edits + "}"));
    assertEquals(
        first.amount("total"), answered(get("/api/jobs/pickup.yaml/judge")).amount("price.total"));
    assertEquals(400, post("/api/jobs/pickup.yaml/arrange", "{\"effort\": 1}").send().status());
    assertEquals(400, post("/api/jobs/pickup.yaml/arrange", "{\"for\": \"fun\"}").send().status());
  }

  /** Java takes such a name in a module path only, where the server's module has to be named. */
  @Test
  void aCopyInAFolderWithAnEmojiInItsNameServesThePageToo(@TempDir Path folder) throws Exception {
    Path home = Workbench.unpack(folder.resolve("shop 🔧"));
    Path out = folder.resolve("out");
    Process served =
        Launch.of(home.resolve("bin/trammel"))
            .with("TRAMMEL_CLASS_ARCHIVE", "off")
            .start(out, folder.resolve("err"), "page", jobs.toString(), "--no-browser");
    try {
      while (served.isAlive() && !Files.readString(out).contains("Every change")) {
        Thread.sleep(50);
      }
      assertTrue(
          Files.readString(out).startsWith("The page is at http://127.0.0.1:"),
          Files.readString(folder.resolve("err")));
    } finally {
      served.destroy();
      served.waitFor();
    }
  }

  // Attacks

  @Test
  void anotherSiteCanNeitherReadNorChangeAnything() throws Exception {
    String before = Files.readString(jobs.resolve("pickup.yaml"));
    PageRequest write =
        post("/api/jobs/pickup.yaml/edit", edit("measured.rails.depth", "\"6 in\"", "\"7 in\""));
    assertEquals(421, write.with("Host", "evil.example").send().status());
    assertEquals(421, write.with("Host", "evil.example:" + page.port()).send().status());
    assertEquals(403, write.with("Origin", "http://evil.example").send().status());
    assertEquals(403, write.with("Origin", "null").send().status());
    assertEquals(403, write.with("Sec-Fetch-Site", "cross-site").send().status());
    assertEquals(415, write.with("Content-Type", "text/plain").send().status());
    assertEquals(401, write.without("X-Trammel-Key").send().status());
    assertEquals(401, write.with("X-Trammel-Key", "AAAA").send().status());
    assertEquals(401, get("/api/events").without("X-Trammel-Key").send().status());
    PageRequest.Answered read =
        get("/api/jobs/pickup.yaml").with("Origin", "http://a.example").send();
    assertEquals(403, read.status());
    assertFalse(read.head().contains("Access-Control"), "no other site may read an answer");
    assertEquals(before, Files.readString(jobs.resolve("pickup.yaml")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/api/jobs/..%2Fsecret.yaml",
        "/api/jobs/%2e%2e%2fsecret.yaml",
        "/api/jobs/../secret.yaml",
        "/api/jobs/..%5Csecret.yaml",
        "/api/jobs/%252e%252e%252fsecret.yaml",
        "/api/jobs/catalog%2Fshop.json",
        "/web/..%2f..%2fPage.class",
        "/web/../Page.class",
        "/web/%2e%2e/Page.class",
        "/../secret.yaml",
        "/api/jobs/%00.yaml",
        "/api/jobs/%FF%FE.yaml",
        "/api/jobs/.yaml",
        "/api//jobs",
        "/etc/passwd",
        "/api/pictures/..%2f..%2fsecret"
      })
  void noPathLeavesTheFolder(String path) throws Exception {
    PageRequest.Answered answer = get(path).send();
    assertTrue(answer.status() == 404 || answer.status() == 400, answer.status() + answer.body());
    assertFalse(answer.body().contains("secret: yes"), answer.body());
  }

  @Test
  void hugeDeepAndBrokenBodiesAreRefusedAndTheServerGoesOn() throws Exception {
    String path = "/api/jobs/pickup.yaml/look";
    assertEquals(413, post(path, "{}").with("Content-Length", "2000000000").send().status());
    assertEquals(413, post(path, "x".repeat(1_000_001)).chunked().send().status());
    assertEquals(422, post(path, "[".repeat(100_000)).send().status());
    assertEquals(422, post(path, "{\"edits\": [").send().status());
    assertEquals(422, post(path, "").send().status());
    assertEquals(400, post(path, "{\"edits\": [7]}").send().status());
    assertEquals(400, post(path, "{\"edits\": [{\"path\": 7}]}").send().status());
    assertEquals(400, get("/api/jobs/pickup.yaml/pose?heave_mm=1e99").send().status());
    assertEquals(200, get("/api/shop").send().status());
  }

  @Test
  void everyAnswerCarriesThePolicyAndIsKeptNowhere() throws Exception {
    for (PageRequest request :
        List.of(get("/"), get("/web/main.js"), get("/api/shop"), get("/no"))) {
      String head = request.send().head();
      assertTrue(head.contains("script-src 'self' 'sha256-"), head);
      assertTrue(head.contains("default-src 'none'"), head);
      assertTrue(head.contains("no-store"), head);
      assertTrue(head.contains("no-referrer"), head);
    }
  }

  @Test
  void aDeviceWithoutTheCodeStaysOut() throws Exception {
    PageRequest enter = post("/api/enter", "{\"code\": \"000000\"}").without("X-Trammel-Key");
    assertEquals(403, enter.send().status(), "no other device is let in unless that was asked for");
    try (Page lan = ServedPage.of(copy, jobs, ServedPage.settings(0, List.of("10.0.0.9"), true))) {
      PageRequest tablet =
          PageRequest.own(
                  lan.port(), "", "POST", "/api/enter", "{\"code\": \"" + lan.code() + "\"}")
              .with("Host", "10.0.0.9:" + lan.port())
              .with("Origin", "http://10.0.0.9:" + lan.port());
      String key = (String) tablet.send().json().at("key").value();
      PageRequest read = PageRequest.own(lan.port(), key, "GET", "/api/shop", "");
      assertEquals(200, read.send().status());
      assertEquals(401, read.with("X-Trammel-Key", key + "x").send().status());
      assertEquals(403, tablet.send().status(), "a code lets one device in");
    }
  }
}
