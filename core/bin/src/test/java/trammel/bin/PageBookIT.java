package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import trammel.page.Page;

/**
 * The shop's book on the page: what {@code trammel book}, {@code order} and {@code prices} have
 * written into the ledger, and what is entered there. All figures invented.
 */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class PageBookIT {
  private static final String JOB = "D-102";

  @TempDir static Path shop;
  private static InstalledCopy copy;
  private static Path jobs;
  private static Page page;

  @BeforeAll
  static void serve() throws IOException {
    copy = InstalledCopy.unpackedInto(shop);
    jobs = Files.createDirectory(shop.resolve("jobs"));
    Files.createDirectory(jobs.resolve("catalog"));
    for (String file : List.of("sedan.yaml", "catalog/shop.json", "catalog/logo.png")) {
      Files.copy(copy.home().resolve("catalogs/demo").resolve(file), jobs.resolve(file));
    }
    page = ServedPage.of(copy, jobs);
  }

  @AfterAll
  static void close() {
    page.close();
  }

  private static void command(int exitCode, Object... words) {
    Launch.Ended ended =
        copy.run(Arrays.stream(words).map(Object::toString).toArray(String[]::new));
    assertEquals(exitCode, ended.exitCode(), ended.out() + ended.err());
  }

  private static Tree get(String path) throws IOException {
    PageRequest.Answered answer = ServedPage.get(page, path).send();
    assertEquals(200, answer.status(), answer.body());
    return answer.json();
  }

  private static Tree course() throws IOException {
    return get("/api/book/job?number=" + JOB);
  }

  private static PageRequest.Answered post(String path, String body) throws IOException {
    return ServedPage.post(page, path, body.replace('\'', '"')).send();
  }

  private static PageRequest.Answered pay(String amount, String on, int seen) throws IOException {
    return post(
        "/api/book/paid",
        "{'job': 'D-102', 'amount': '%s', 'on': '%s', 'note': 'bank transfer', 'seen': %d}"
            .formatted(amount, on, seen));
  }

  private static void assertWritten(Tree row) {
    assertTrue(Instant.parse(row.text("written")).isBefore(Instant.now().plusSeconds(2)));
  }

  private static void addExtra() throws IOException {
    Path job = jobs.resolve("sedan.yaml");
    Files.writeString(
        job,
        Files.readString(job)
            .replace(
                "terms:\n",
                "terms:\n  extras:\n    - {title: Powder coat, kind: outside-work, price: 250,"
                    + " why: asked for}\n"));
  }

  /** No ledger is made by looking. */
  @Test
  @Order(1)
  void aShopThatHasWrittenNothingDownHasAnEmptyBook() throws Exception {
    assertEquals(0, get("/api/book").list("jobs").size());
    assertEquals(0, get("/api/book/prices").list("prices").size());
    assertEquals(404, ServedPage.get(page, "/api/book/job?number=D-102").send().status());
    assertEquals(404, pay("100", "2026-12-01", 0).status());
    assertFalse(Files.exists(jobs.resolve("ledger.sqlite")));
  }

  /** Powder coat of 250.00 with 15 % on it, not taxed, is 287.50: all that the revision changes. */
  @Test
  @Order(2)
  void aRevisionSaysWhatItChangedAndAStageWhyItWasMoved() throws Exception {
    Path job = jobs.resolve("sedan.yaml");
    command(1, "book", "quote", job, "--date", "2026-11-26");
    addExtra();
    command(1, "book", "quote", job, "--date", "2026-11-27", "--why", "powder coat");
    promise("2026-12-10", "");
    promise("2026-12-14", "late tubes");
    Tree course = course();
    Tree first = course.list("offers").get(0);
    Tree second = course.list("offers").get(1);
    assertWritten(first);
    assertEquals("D-102, revision 2", second.text("number"));
    assertEquals("D-102, revision 1", second.text("before"));
    assertEquals("powder coat", second.text("why"));
    assertEquals(new BigDecimal("287.50"), second.amount("changes.total"));
    assertEquals(new BigDecimal("287.50"), second.amount("total").subtract(first.amount("total")));
    List<String> titles = new ArrayList<>();
    second.list("changes.lines").forEach(line -> titles.add(line.text("title")));
    assertTrue(titles.contains("Powder coat"), titles.toString());
    List<Tree> said = course.list("said");
    assertEquals("2026-12-10", said.get(0).text("day"));
    assertEquals("late tubes", said.get(1).text("why"));
    assertWritten(said.get(1));
    Launch.Ended shown = copy.run("book", "show", JOB, "--json", "--shop", jobs.toString());
    assertEquals(
        Tree.ofJson(shown.out()).list("offers").get(1).amount("total"), second.amount("total"));
  }

  private void promise(String day, String why) throws Exception {
    String stage = "back on its wheels";
    command(0, "book", "stage", JOB, stage, "--date", day, "--why", why, "--shop", jobs.toString());
  }

  @Test
  @Order(3)
  void aPaymentIsEnteredOnceAndByWhoHasSeenTheOthers() throws Exception {
    assertEquals(422, pay("100", "2026-12-01", 0).status(), "nothing is agreed yet");
    command(0, "book", "accept", JOB, "--date", "2026-11-28", "--shop", jobs);
    BigDecimal agreed = course().amount("agreed");
    for (String wrong : List.of("a lot", "1,5", "0", "10.001")) {
      assertEquals(422, pay(wrong, "2026-12-01", 0).status(), wrong);
    }
    assertEquals(422, pay("100", "tomorrow", 0).status());
    PageRequest.Answered paid = pay("5000.01", "2026-12-01", 0);
    assertEquals(200, paid.status(), paid.body());
    assertEquals(409, pay("5000.01", "2026-12-01", 0).status(), "pressed twice");
    Tree course = course();
    assertEquals(1, course.list("payments").size());
    assertEquals("bank transfer", course.list("payments").get(0).text("note"));
    assertWritten(course.list("payments").get(0));
    assertEquals("the page", course.list("payments").get(0).text("who"), "no name was given");
    String account = System.getProperty("user.name");
    assertEquals(account, course.list("offers").get(0).text("who"), "written by a command");
    assertEquals(agreed.subtract(new BigDecimal("5000.01")), course.amount("left"));
    assertEquals(agreed, get("/api/book").list("jobs").get(0).amount("total"));
  }

  /** Of two bump stops one comes: one is to come. */
  @Test
  @Order(4)
  void goodsAreWrittenDownLineByLine() throws Exception {
    command(1, "order", "--placed", jobs.resolve("sedan.yaml"));
    Tree order = null;
    int line = 0;
    for (Tree one : get("/api/book").list("orders")) {
      for (int i = 0; i < one.list("lines").size(); i++) {
        if (one.list("lines").get(i).text("item").equals("bump-stop")) {
          order = one;
          line = i + 1;
        }
      }
    }
    String came =
        "{'order': '%s', 'on': '2026-12-05', 'lines': [{'line': %d, 'quantity': '%s', 'seen': %d,"
            + " 'note': 'dented box'}]}";
    String number = order.text("order");
    assertEquals(422, post("/api/book/received", came.formatted(number, line, "some", 0)).status());
    assertEquals(400, post("/api/book/received", came.formatted(number, 99, "1", 0)).status());
    assertEquals(404, post("/api/book/received", came.formatted("D-9-9", line, "1", 0)).status());
    PageRequest.Answered done =
        ServedPage.post(
                page, "/api/book/received", came.formatted(number, line, "1", 0).replace('\'', '"'))
            .with("X-Trammel-Name", "B%C3%A4nk%202%0A%3Cb%3E")
            .send();
    assertEquals(200, done.status(), done.body());
    assertEquals(409, post("/api/book/received", came.formatted(number, line, "1", 0)).status());
    Tree now = done.json().list("orders").get(0);
    BigDecimal toCome = now.list("lines").get(line - 1).amount("to_come");
    assertEquals(0, BigDecimal.ONE.compareTo(toCome), "to come: " + toCome);
    Tree receipt = now.list("receipts").get(0);
    assertEquals("dented box", receipt.text("note"));
    assertEquals("2026-12-05", receipt.text("on"));
    assertEquals("Bänk 2<b>", receipt.text("who"), "one line, as it was meant");
    assertWritten(receipt);
  }

  @Test
  @Order(5)
  void aPriceThatChangedIsFoundWithItsDayAndSource() throws Exception {
    Path list = jobs.resolve("list.csv");
    Files.writeString(list, "item;length;price\nbump-stop;;19.75\ndom-1.50x0.120;72 in;61.10\n");
    command(0, "prices", list, "--source", "invented parts house", "--write", "--shop", jobs);
    Tree found = get("/api/book/prices?find=BUMP").list("prices").get(0);
    assertEquals("bump-stop", found.text("item"));
    assertEquals("bump stop with stud", found.text("title"));
    Tree tube = get("/api/book/prices?find=round%20tube").list("prices").get(0);
    assertEquals("DOM 1020 round tube 1 1/2 x .120 in, 72 in", tube.text("title"));
    assertEquals(new BigDecimal("61.10"), tube.amount("price"));
    assertEquals(new BigDecimal("19.75"), found.amount("price"));
    assertEquals("invented parts house", found.text("source"));
    assertTrue(LocalDate.parse(found.text("priced_on")).getYear() >= 2026);
    assertWritten(found);
    assertEquals(0, get("/api/book/prices?find=unobtainium").list("prices").size());
  }

  /** One reading as planned, then one that is 3/4 in off: each stands in the book once. */
  @Test
  @Order(6)
  void aReadingAfterTackingIsKeptWithWhoReadIt() throws Exception {
    String path = "/api/jobs/sedan.yaml/fitup";
    List<Tree> targets = get(path).list("targets");
    Tree near = targets.get(0);
    read(path, near, near.text("set_to_text"));
    Tree far = targets.get(1);
    read(path, far, far.number("set_to") + 19 + " mm");
    List<Tree> tackings = course().list("tackings");
    assertEquals(2, tackings.size());
    Tree first = tackings.get(0);
    assertEquals("Bench 2", first.text("who"));
    assertEquals("measure again", first.text("answer"), "the others are not read yet");
    assertWritten(first);
    assertEquals(near.text("target"), first.list("readings").get(0).text("target"));
    assertEquals(far.text("target"), tackings.get(1).list("readings").get(0).text("target"));
    assertEquals(1, tackings.get(1).list("readings").size());
  }

  private static void read(String path, Tree target, String reading) throws IOException {
    PageRequest.Answered answer =
        ServedPage.post(
                page,
                path,
                "{\"target\": \"%s\", \"from\": [], \"readings\": [\"%s\"]}"
                    .formatted(target.text("target"), reading))
            .with("X-Trammel-Name", "Bench 2")
            .send();
    assertEquals(200, answer.status(), answer.body());
    assertFalse(answer.body().contains("not_kept"), answer.body());
  }
}
