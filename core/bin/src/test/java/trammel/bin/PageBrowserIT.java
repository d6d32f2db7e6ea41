package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.NumberFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;
import trammel.page.Page;

/**
 * A working day at the page in a real browser. With {@code -Dtrammel.docs.write=true} it also makes
 * the pictures of the documentation.
 */
class PageBrowserIT {
  private static final List<String> TABS =
      List.of(
          "measure", "see", "change", "arrange", "checks", "price", "terms", "tray", "handout",
          "fitup", "close");

  private static final List<String> SHEETS =
      List.of(
          "shop=shop", "shop=prices", "shop=stock", "shop=operations", "order=jobs", "book=jobs");

  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static Path jobs;
  private static Page page;
  private static Chromium browser;

  @BeforeAll
  static void open() throws IOException {
    browser = Chromium.open();
    copy = InstalledCopy.unpackedInto(shop);
    jobs = Files.createDirectory(shop.resolve("jobs"));
    Workbench.copy(copy.home().resolve("catalogs/demo/catalog"), jobs.resolve("catalog"));
    page = serve(jobs, 0);
  }

  private static Page serve(Path folder, int port) throws IOException {
    return ServedPage.of(copy, folder, ServedPage.settings(port, List.of(), false));
  }

  @AfterAll
  static void close() {
    if (browser != null) {
      browser.close();
    }
    if (page != null) {
      page.close();
    }
  }

  @BeforeEach
  void writeJob() throws IOException {
    Files.writeString(jobs.resolve("pickup.yaml"), Files.readString(copy.demoJob("pickup")));
  }

  private static String address(Page page, String at) {
    return "http://127.0.0.1:" + page.port() + "/#key=" + page.key() + at;
  }

  private static Chromium opened(String tab) {
    return browser.go(address(page, "&job=pickup.yaml&at=" + tab));
  }

  private static Chromium drawn(String tab) {
    return opened(tab).is("document.querySelector('.kinds, .points tbody tr, .total')");
  }

  /** As the page writes money, worked out from what quote says. */
  private static String total(Path job, int exitCode) throws Exception {
    BigDecimal total = copy.json(exitCode, "quote", job).amount("price.total");
    return NumberFormat.getCurrencyInstance(Locale.US).format(total);
  }

  private static void sound() {
    assertEquals(List.of(), browser.troubles());
  }

  private static void keepPicture(String name) throws IOException {
    if (Boolean.getBoolean("trammel.docs.write")) {
      Path pictures = Path.of(System.getProperty("launcher")).resolve("../../../docs/pictures");
      Files.createDirectories(pictures.normalize());
      Files.write(pictures.normalize().resolve(name + ".png"), browser.picture());
    }
  }

  // Seeing, judging, pricing

  @Test
  void aJobIsSeenJudgedAndPricedAsQuoteSays() throws Exception {
    browser.go(address(page, "")).says(".jobs", "D-101").click(".card .open");
    browser.says(".verdict .price", total(jobs.resolve("pickup.yaml"), 1));
    browser.says(".verdict .stops", "1");
    browser.is("document.querySelector('.kinds')");
    keepPicture("page-see");
    browser.click(".panel details summary").click(".parts li:nth-child(20) button");
    browser.is("document.querySelector('dl.part')");
    browser.press("Checks").says(".checks", "slip yoke");
    browser.press("Price").click(".total summary").says(".total ol", "sales tax");
    keepPicture("page-price");
    sound();
  }

  @Test
  void theChangeThatWasTriedIsAppliedByOnePressAndTakenBackByAnother() throws Exception {
    String before = Files.readString(jobs.resolve("pickup.yaml"));
    opened("checks").says(".verdict .stops", "1").press("Change it so");
    browser.says(".verdict .stops", "0");
    assertNotEquals(before, Files.readString(jobs.resolve("pickup.yaml")));
    browser.says(".verdict .price", total(jobs.resolve("pickup.yaml"), 0));
    browser.press("Take back").says(".verdict .stops", "1");
    assertEquals(before, Files.readString(jobs.resolve("pickup.yaml")));
    sound();
  }

  /**
   * Where moving a point would bring a stop, options that upset nothing are offered, as by check.
   */
  @Test
  void optionsThatWereTriedAreAppliedByOnePress() throws Exception {
    opened("checks").says("ol.checks li:nth-child(4)", "axle_end");
    browser.click("ol.checks li:nth-child(4) button.main").says(".verdict .stops", "1");
    browser.is("!document.querySelector('ol.checks').innerText.includes('carry in service')");
    String job = Files.readString(jobs.resolve("pickup.yaml"));
    assertTrue(job.contains("axle_end: bushing-2.63"), job);
    browser.says(".verdict .price", total(jobs.resolve("pickup.yaml"), 1));
    sound();
  }

  // Changing by hand

  @Test
  void aPointIsDraggedTheVerdictsFollowAndTheFileHasItWhenItIsLetGo() throws Exception {
    String before = Files.readString(jobs.resolve("pickup.yaml"));
    drawn("change").press("Side");
    browser.drag("[data-point='upper-left.frame'] .dot", 0, -60, 6);
    browser.is("document.querySelector('.verdict.live')").says(".reading", "upper-left");
    browser.is("Number(document.querySelector('.verdict .stops strong').innerText) > 1");
    keepPicture("page-drag");
    assertEquals(before, Files.readString(jobs.resolve("pickup.yaml")), "not before it is let go");
    browser.letGo().is("!document.querySelector('.verdict.live')");
    Tree job = Tree.ofYaml(Files.readString(jobs.resolve("pickup.yaml")));
    String left = job.text("chosen.pickups.upper-left.frame.up");
    assertEquals(left, job.text("chosen.pickups.upper-right.frame.up"), "the other side too");
    assertTrue(left.matches("\\d+( \\d+/(2|4|8|16))? in"), left);
    browser.press("Take back").is("!document.querySelector('.points .own')");
    assertFalse(Files.readString(jobs.resolve("pickup.yaml")).contains("pickups"));
    sound();
  }

  @Test
  void arrowKeysMoveAPointBySixteenthsAndOneUndoTakesTheRunBack() throws Exception {
    drawn("change").press("Side");
    browser.keys("[data-point='lateral-bar.frame']", Keys.ARROW_UP, Keys.ARROW_UP, Keys.ARROW_UP);
    browser.is("document.querySelector('.points .own')");
    Tree job = Tree.ofYaml(Files.readString(jobs.resolve("pickup.yaml")));
    assertEquals("16 11/16 in", job.text("chosen.pickups.lateral-bar.frame.up"), "16 1/2 and 3/16");
    browser.press("Take back").is("!document.querySelector('.points .own')");
    sound();
  }

  // Measuring

  @Test
  void aJobIsMeasuredFromNothingAndPricedToTheCentAsQuoteSays() throws Exception {
    browser.go(address(page, "")).press("New job").keys("#file", "tape");
    browser.press("Begin").says(".progress", "still needed");
    keepPicture("page-measure");
    for (Map.Entry<String, String> answer : answers().entrySet()) {
      fill(answer.getKey(), answer.getValue());
    }
    browser.click("[data-way='four-link-lateral']").click("[data-way='coil-spring']");
    browser.says(".progress", "Everything that is needed is there");
    Path file = jobs.resolve("tape.yaml");
    int exitCode = copy.run("check", file.toString()).exitCode();
    browser.says(".verdict .price", total(file, exitCode));
    assertTrue(Files.readString(file).contains("flange: 2 1/2\n"), "as it was typed");
    browser.press("Hand out").press("Make the papers").click("[aria-label='See Quote']");
    String quote = (String) browser.script("return document.querySelector('iframe').src");
    PageRequest.Answered paper =
        PageRequest.own(page.port(), "", "GET", quote.replaceAll("^http://[^/]+", ""), "").send();
    assertTrue(paper.body().contains(total(file, exitCode)), "the quote has the same price");
    assertTrue(paper.body().contains("O&#39;Neil &amp; &quot;Sons&quot; &lt;b&gt;: #1"));
    keepPicture("page-hand-out");
    sound();
    Files.delete(file);
  }

  // On the floor

  @Test
  void readingsTypedOnAPhoneAreJudgedAtOnceAsTackedSays() throws Exception {
    browser.wide(390, 844);
    opened("fitup").find(".target input");
    fillTarget("lower-left-frame-forward", "24 1/4");
    fillTarget("lower-left-frame-left", "13 1/16; 13 1/16");
    browser.says(".tacked .answer", "MEASURE");
    keepPicture("page-floor");
    Path form = jobs.resolve("pickup.fitup.csv");
    Tree tacked =
        Tree.ofJson(
            copy.run("tacked", "--json", jobs.resolve("pickup.yaml").toString(), form.toString())
                .out());
    assertEquals(tacked.text("answer").toUpperCase(Locale.ROOT), browser.text(".tacked .answer"));
    fillTarget("lower-left-frame-up", "thirty");
    browser.says(".target.wrong .problem", "thirty");
    assertFalse(Files.readString(form).contains("thirty"), "it is not kept");
    browser.wide(1440, 900);
    sound();
    Files.delete(form);
  }

  private static void fillTarget(String target, String reading) {
    browser.type("#t-" + target, reading);
  }

  @Test
  void aVariantIsPutOnTheTrayHeldAgainstTheJobAndTaken() throws Exception {
    opened("tray").keys("#variant", "air").press("Put on the tray").says(".variants", "air");
    String air = browser.text(".verdict .price strong");
    browser.press("Change").click("[data-way='coil-spring']");
    browser.is("document.querySelector('.verdict .price strong')?.innerText !== '" + air + "'");
    browser.press("Tray").says(".variants", air);
    keepPicture("page-tray");
    browser.press("Take it").says(".verdict .price", air);
    assertEquals(
        "air-spring",
        Tree.ofYaml(Files.readString(jobs.resolve("pickup.yaml"))).text("chosen.spring"));
    browser.press("Off the tray").is("!document.querySelector('.variants')");
    sound();
  }

  private static void fill(String field, String value) {
    String at = "[data-field='" + field + "'] ";
    boolean choice =
        Boolean.TRUE.equals(
            browser.script("return !!document.querySelector(arguments[0])", at + "select"));
    if (choice) {
      browser.keys(at + "select", value);
    } else {
      browser.type(at + "input", value);
    }
  }

  /** A sedan with boxed rails, written as one reads it off the tape; all figures are invented. */
  private static Map<String, String> answers() {
    Map<String, String> answers = new LinkedHashMap<>();
    answers.put("job.number", "T-1");
    answers.put("job.date", "2026-11-25");
    answers.put("job.customer", "O'Neil & \"Sons\" <b>: #1");
    answers.put("job.vehicle", "Two-door sedan (invented)");
    answers.put("measured.wheelbase.left", "112; 112 1/32");
    answers.put("measured.wheelbase.right", "112");
    answers.put("measured.rake.on_stands", "0 deg from level");
    answers.put("measured.rake.at_ride", "0.4 deg from level");
    answers.put("measured.rails.shape", "box");
    answers.put("measured.rails.outside_at_axle", "43");
    answers.put("measured.rails.between_at_axle", "38");
    answers.put("measured.rails.outside_at_front_mounts", "45");
    answers.put("measured.rails.between_at_front_mounts", "40");
    answers.put("measured.rails.depth", "4");
    answers.put("measured.rails.flange", "2 1/2");
    answers.put("measured.rails.wall", "0.12");
    answers.put("measured.rails.underside_at_axle", "22");
    answers.put("measured.rails.underside_at_front_mounts", "22");
    answers.put("measured.rails.front_mounts_forward", "27");
    answers.put("measured.axle.tube_diameter", "3");
    answers.put("measured.axle.tube_wall", "1/4");
    answers.put("measured.axle.flange_to_flange", "60");
    answers.put("measured.axle.inner_limit", "6");
    answers.put("measured.axle.outer_limit", "25");
    answers.put("measured.axle.pinion.forward", "10 1/2");
    answers.put("measured.axle.pinion.left", "0");
    answers.put("measured.axle.pinion.up", "-1 1/4");
    answers.put("measured.axle.pinion_angle", "2.5 deg from level");
    answers.put("measured.tyre.size", "225/70R15");
    answers.put("measured.tyre.wheel_offset", "0");
    answers.put("measured.tyre.loaded_radius", "13 1/4");
    answers.put("measured.transmission.joint.forward", "56");
    answers.put("measured.transmission.joint.left", "0");
    answers.put("measured.transmission.joint.up", "19 1/4");
    answers.put("measured.transmission.angle", "2.9 deg from level");
    answers.put("measured.weights.front_left", "1000");
    answers.put("measured.weights.front_right", "1010");
    answers.put("measured.weights.rear_left", "850");
    answers.put("measured.weights.rear_right", "840");
    answers.put("measured.weights.unsprung_rear", "360");
    answers.put("measured.weights.centre_of_gravity_height", "22");
    answers.put("measured.weights.centre_of_gravity_from", "estimated");
    answers.put("measured.tyre_grip", "0.95");
    answers.put("chosen.ride.rail_underside_at_axle", "18 1/2");
    answers.put("chosen.ride.bump", "3");
    answers.put("chosen.ride.droop", "3");
    return answers;
  }

  // The shop

  @Test
  void cellsPastedFromASpreadsheetAreWrittenToldWhereTheyAreWrongAndTakenBack() throws Exception {
    Path own = jobs.resolve("catalog/shop.json");
    String before = Files.readString(own);
    browser.go(address(page, "")).press("The shop").find("[data-cell='shop.labour_rate']");
    paste("shop.labour_rate", "$112.50\n30\nin-rate\n<b>forty</b>");
    browser.says(".grid .wrong .problem", "<b>forty</b>");
    assertEquals(before, Files.readString(own), "not one of them while one cannot be");
    assertEquals(List.of(), browser.barriers());
    keepPicture("page-shop");
    browser.type("[data-cell='shop.wage_rate']", "43.75");
    browser.is("!document.querySelector('.grid .draft, .grid .wrong')");
    assertEquals(
        before
            .replace("\"labour_rate\": 105.00", "\"labour_rate\": 112.50")
            .replace("\"overhead_rate\": 28.00", "\"overhead_rate\": 30")
            .replace("\"wage_rate\": 41.50", "\"wage_rate\": 43.75"),
        Files.readString(own));
    browser.press("Take back");
    browser.is("document.querySelector(\"[data-cell='shop.labour_rate']\").value === '105.00'");
    assertEquals(before, Files.readString(own));
    browser.press("Stock").find("[data-cell='stock[0].kind']");
    paste("stock[0].kind", "stick\tdom-1.50x0.120\tS1\t61 1/2 in\n");
    browser.is("document.querySelector(\"[data-cell='stock[1].kind']\") !== null");
    browser.press("Take back").is("!document.querySelector(\"[data-cell='stock[1].kind']\")");
    sound();
  }

  /**
   * A price is sought, typed and taken back; a supplier's list is looked at before it is taken in.
   */
  @Test
  void aPriceIsTypedAndASuppliersListIsTakenInOnceItWasSeen() throws Exception {
    Path folder = Files.createDirectories(shop.resolve("prices"));
    Workbench.copy(copy.home().resolve("catalogs/demo/catalog"), folder.resolve("catalog"));
    Path own = folder.resolve("catalog/prices.json");
    String nut = "[data-cell='prices.\"jam-nut-0.750-16\"']";
    String value = "document.querySelector(`" + nut + "`)?.value";
    try (Page prices = serve(folder, 0)) {
      browser.go(address(prices, "&shop=prices")).keys("#seek", "jam nut").find(nut);
      browser.type(nut, "seven").says(".grid .wrong .problem", "seven");
      assertFalse(Files.exists(own), "what is no price is not written");
      browser.type(nut, "7.35").is("!document.querySelector('.grid .draft, .grid .wrong')");
      assertTrue(Files.readString(own).contains("7.35"), Files.readString(own));
      browser.press("Take back").is(value + " !== '7.35'");
      browser.click(".list summary");
      browser.script(
          "const list = document.querySelector('#list-text'); list.value = arguments[0];"
              + " list.dispatchEvent(new Event('input', {bubbles: true}))",
          "Item\tPrice\njam-nut-0.750-16\t2.95\n");
      browser.keys("#list-source", "list of the hardware house").press("See what changes");
      browser.says(".list pre", "2.95");
      assertFalse(Files.exists(own) && Files.readString(own).contains("2.95"), "only looked at");
      browser.press("Take it in").says(".list [role=status]", "Taken in");
      assertTrue(Files.readString(own).contains("2.95"), Files.readString(own));
      browser.is(value + " === '2.95'");
      assertEquals(List.of(), browser.barriers());
      sound();
    }
  }

  /** As a spreadsheet's cells come from the clipboard. */
  private static void paste(String cell, String text) {
    browser.script(
        "const data = new DataTransfer(); data.setData('text/plain', arguments[1]);"
            + " document.querySelector(`[data-cell='${arguments[0]}']`).dispatchEvent(new"
            + " ClipboardEvent('paste', {clipboardData: data, bubbles: true, cancelable: true}))",
        cell,
        text);
  }

  // Two at one job, and an end in the middle

  @Test
  void twoBrowsersAtOneJobSeeEachOthersChangesAndNoneIsLost() throws Exception {
    opened("measure").find("[data-field='measured.tyre_grip']");
    try (Chromium tablet = Chromium.open()) {
      tablet.wide(390, 800).go(address(page, "&job=pickup.yaml&at=measure"));
      tablet.type("[data-field='measured.tyre_grip'] input", "0.8");
      browser.is(
          "document.querySelector(\"[data-field='measured.tyre_grip'] input\").value === '0.8'");
      browser.type("[data-field='measured.rails.wall'] input", "0.16 in");
      tablet.is(
          "document.querySelector(\"[data-field='measured.rails.wall'] input\").value === '0.16"
              + " in'");
      assertEquals(List.of(), tablet.barriers());
      assertEquals(List.of(), tablet.troubles());
    }
    Tree job = Tree.ofYaml(Files.readString(jobs.resolve("pickup.yaml")));
    assertEquals(0.8, job.number("measured.tyre_grip"));
    assertEquals("0.16 in", job.text("measured.rails.wall"));
    sound();
  }

  @Test
  void afterTheServerWasEndedAndStartedAgainNothingIsLost() throws Exception {
    Path folder = Files.createDirectories(shop.resolve("other jobs"));
    Files.copy(copy.demoJob("pickup"), folder.resolve("pickup.yaml"));
    Page first = serve(folder, 0);
    int port = first.port();
    browser.go(address(first, "&job=pickup.yaml&at=measure"));
    browser.type("[data-field='measured.tyre_grip'] input", "0.7").says(".steps", "Take back");
    browser.is("!document.querySelector('.steps button:first-child').disabled");
    first.close();
    browser.says(".offline", "cannot be reached");
    try (Page second = serve(folder, port)) {
      browser.says(".enter", "trammel page");
      browser.go(address(second, "&job=pickup.yaml&at=measure"));
      browser.is(
          "document.querySelector(\"[data-field='measured.tyre_grip'] input\").value === '0.7'");
      browser.press("Take back");
      browser.is(
          "document.querySelector(\"[data-field='measured.tyre_grip'] input\").value === '0.9'");
    }
  }

  @Test
  void aFieldThatAnotherProgramChangedIsAskedAboutAndNotOverwritten() throws Exception {
    opened("measure").find("[data-field='measured.rails.wall'] input");
    browser.script(
        "window.fetchBefore = window.fetch; window.fetch = (path, how) =>"
            + " String(path).endsWith('/edit') ? new Promise((go) => setTimeout(() =>"
            + " go(fetchBefore(path, how)), 900)) : fetchBefore(path, how);");
    browser.type("[data-field='measured.rails.wall'] input", "0.18 in");
    Path file = jobs.resolve("pickup.yaml");
    Files.writeString(file, Files.readString(file).replace("wall: 0.15 in", "wall: 0.14 in"));
    browser.says(".question", "0.14 in").says(".question", "0.18 in");
    assertEquals(List.of(), browser.barriers());
    browser.press("Put mine in its place").is("!document.querySelector('.question')");
    browser.is(
        "document.querySelector(\"[data-field='measured.rails.wall'] input\").value === '0.18 in'");
    assertTrue(Files.readString(file).contains("wall: 0.18 in"));
  }

  /** From a job whose driveshaft is all that is left to mend, so that the search soon has one. */
  @Test
  void aSearchIsEndedWithTheBestSoFarLookedAtAndTaken() throws Exception {
    Path file = jobs.resolve("pickup.yaml");
    String job = Files.readString(file);
    Files.writeString(
        file,
        job.replace("rail_gap: 1 in}", "rail_gap: 1 in, axle_end: bushing-2.63}")
            .replace("spring_options: {legs: tube}", "spring_options: {placement: ahead-of-axle}")
            .replace("bump: 3 1/2 in, droop: 3 in}", "bump: 3 in, droop: 2 1/2 in}")
            .replace(
                "\n  pinion_angle:", "\n  moved_away: [tail pipe, bed floor]\n  pinion_angle:"));
    drawn("see").press("Arrange").press("Search");
    browser.is("Number(document.querySelector('.progress strong')?.innerText) > 20");
    browser.press("End it with the best so far");
    String total = browser.text(".layout .figures strong");
    browser.click(".layout .answers button").says(".previewed", "not the job");
    keepPicture("page-arrange");
    browser.click(".layout .answers .main").says(".verdict .price", total);
    assertTrue(Files.readString(jobs.resolve("pickup.yaml")).startsWith("# A demonstration job."));
    browser.press("Take back").is("!document.querySelector('.steps button').disabled === false");
    sound();
  }

  /** From the list of jobs into the course of one; the ledger has what was entered, once. */
  @Test
  void aPaymentAndGoodsThatCameAreEnteredInTheBook() throws Exception {
    Path folder = Files.createDirectories(shop.resolve("book"));
    Workbench.copy(copy.home().resolve("catalogs/demo/catalog"), folder.resolve("catalog"));
    String job = Files.copy(copy.demoJob("sedan"), folder.resolve("sedan.yaml")).toString();
    copy.run("book", "quote", job, "--date", "2026-11-26");
    String extra = "{title: Wiring, kind: hours, hours: 2 h, why: in the way}";
    String terms = Files.readString(Path.of(job));
    Files.writeString(
        Path.of(job), terms.replace("\nterms:\n", "\nterms:\n  extras: [" + extra + "]\n"));
    copy.run("book", "quote", job, "--date", "2026-11-27");
    copy.run("book", "accept", job, "--date", "2026-11-28");
    copy.run("order", "--placed", job);
    try (Page book = serve(folder, 0)) {
      browser.go(address(book, "")).press("The book").says("main", "D-102");
      browser.press("D-102").says("main", "agreed on 2026-11-28");
      browser.says("main", "given on 2026-11-26, replaced by a later revision");
      browser.press("Enter a payment");
      // Enter without an amount sends nothing; with one it does.
      browser.type("input[name=note]", "cash");
      browser.type("input[name=amount]", "250").says("main", "$250.00").says("main", "cash");
      assertEquals(List.of(), browser.barriers(), "the course of a job");
      browser.press("Goods").press("Goods came");
      browser.type("input[name=came-0]", "1").says(".order-kept .plain", "came on");
      browser.is("document.querySelectorAll('.order-kept input').length === 0");
      assertEquals(List.of(), browser.barriers(), "goods");
      browser.wide(360, 800);
      fits("goods", 360);
      browser.wide(1440, 900);
      sound();
    }
    Tree course = Tree.ofJson(copy.run("book", job, "--json").out());
    assertEquals(1, course.list("payments").size());
    assertEquals(new BigDecimal("250.00"), course.list("payments").get(0).amount("amount"));
    assertTrue(
        course.list("orders").stream()
            .flatMap(order -> order.list("lines").stream())
            .anyMatch(line -> line.amount("received").compareTo(BigDecimal.ONE) == 0));
  }

  // States, barriers, sizes

  private static void turnTo(String hash, String what) {
    browser.script("location.hash = arguments[0]", hash);
    browser.is("document.querySelector('" + what + "').innerText.length > 60");
    browser.is("!/Working out|Looking it up/.test(document.querySelector('main').innerText)");
  }

  private static void fits(String what, int width) {
    Object over = browser.script("return document.documentElement.scrollWidth - innerWidth");
    assertTrue(((Number) over).intValue() <= 0, what + ": " + over + " px over " + width);
  }

  @Test
  void everyStateCanBeReadAndReachedByAll() throws Exception {
    Path folder = Files.createDirectories(shop.resolve("states"));
    try (Page states = serve(folder, 0)) {
      browser.go(address(states, "")).says(".empty", "No job is in this folder yet");
      assertEquals(List.of(), browser.barriers(), "an empty folder");
      String pickup = Files.readString(copy.demoJob("pickup"));
      Files.writeString(folder.resolve("broken.yaml"), "job: [1, 2\n");
      String name = "Very long name ".repeat(7).strip();
      Files.writeString(
          folder.resolve("long.yaml"), pickup.replace("Example Customer (invented)", name));
      Files.writeString(
          folder.resolve("no fit.yaml"), pickup.replace("bump: 3 1/2 in", "bump: 11 in"));
      browser.says(".card.broken", "well-formed").says(".jobs", "Very long name");
      assertEquals(List.of(), browser.barriers(), "a folder");
      browser.go(address(states, "&job=long.yaml&at=measure")).says(".verdict", "STOP");
      for (String tab : TABS) {
        turnTo("job=long.yaml&at=" + tab, ".at-" + tab + " .panel");
        assertEquals(List.of(), browser.barriers(), tab);
      }
      for (String sheet : SHEETS) {
        turnTo(sheet, "main");
        assertEquals(List.of(), browser.barriers(), sheet);
      }
      for (int width : List.of(1024, 390, 360)) {
        browser.wide(width, 800);
        for (String sheet : SHEETS) {
          turnTo(sheet, "main");
          fits(sheet, width);
        }
        for (String tab : TABS) {
          turnTo("job=long.yaml&at=" + tab, ".at-" + tab + " .panel");
          fits(tab, width);
        }
      }
      browser.wide(1440, 900);
      browser.go(address(states, "&job=no%20fit.yaml&at=checks"));
      browser.is("document.querySelector('.refusal, .check.stop')");
      assertEquals(List.of(), browser.barriers(), "a layout that does not fit");
      sound();
    }
  }
}
