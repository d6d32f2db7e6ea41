package trammel.bin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A job from its quote to the last payment, through an installed copy. All figures invented. */
class BookIT {
  private static final int DONE = 0;
  private static final int STOP = 1;
  private static final int BAD_INPUT = 2;
  private static final String JOB = "D-102";

  @TempDir static Path installed;
  private static InstalledCopy copy;

  @TempDir Path folder;
  private Path job;

  @BeforeAll
  static void unpack() throws IOException {
    copy = InstalledCopy.unpackedInto(installed);
  }

  @BeforeEach
  void aShop() throws IOException {
    Files.createDirectories(folder.resolve("catalog"));
    for (String file : List.of("sedan.yaml", "catalog/shop.json", "catalog/logo.png")) {
      Files.copy(copy.home().resolve("catalogs/demo").resolve(file), folder.resolve(file));
    }
    job = folder.resolve("sedan.yaml");
  }

  private Launch.Ended book(int exitCode, Object... words) {
    List<String> all = new ArrayList<>(List.of("book"));
    Arrays.stream(words).map(Object::toString).forEach(all::add);
    all.addAll(List.of("--shop", folder.toString()));
    Launch.Ended ended = copy.run(all.toArray(new String[0]));
    assertEquals(exitCode, ended.exitCode(), ended.out() + ended.err());
    return ended;
  }

  private Tree course() {
    try {
      return Tree.ofJson(book(DONE, "show", JOB, "--json").out());
    } catch (Exception unread) {
      throw new AssertionError(unread);
    }
  }

  private void addExtra(String extra) throws IOException {
    String text = Files.readString(job);
    String section = text.contains("  extras:") ? "  extras:\n" : "terms:\n";
    String start = text.contains("  extras:") ? section : section + "  extras:\n";
    Files.writeString(job, text.replace(section, start + "    - {" + extra + "}\n"));
  }

  private static BigDecimal dollars(String amount) {
    return new BigDecimal(amount);
  }

  /**
   * Two hours at 105.00 are 210.00, shop supplies of 4 % on them 8.40, neither taxed: 218.40.
   * Powder coat of 250.00 with 15 % on it is 287.50.
   */
  @Test
  void fromQuoteToPaid() throws Exception {
    book(STOP, "quote", job, "--date", "2026-11-26");
    assertEquals(BAD_INPUT, copy.run("book", "quote", job.toString()).exitCode());
    Launch.Ended elsewhere =
        copy.run("book", "quote", job.toString(), "--shop", installed.toString());
    assertTrue(elsewhere.err().contains("beside the job file"), elsewhere.err());
    addExtra("title: Wiring loom moved, kind: hours, hours: 2 h, why: it is in the way");
    Path papers = folder.resolve("papers");
    String revised = book(STOP, "quote", job, "--date", "2026-11-27", "--out", papers).out();
    assertTrue(revised.contains("+$218.40"), revised);
    book(BAD_INPUT, "change", job);
    book(BAD_INPUT, "paid", JOB, "100");
    book(DONE, "accept", JOB, "--date", "2026-11-28");
    book(BAD_INPUT, "accept", JOB);
    BigDecimal quoted = course().amount("agreed");

    addExtra("title: Powder coat, kind: outside-work, price: 250, why: asked for");
    book(BAD_INPUT, "quote", job);
    Launch.Ended change =
        book(STOP, "change", job, "--why", "powder coat", "--out", papers, "--date", "2026-12-02");
    assertTrue(change.out().contains("CHANGE ORDER D-102-C1"), change.out());
    assertEquals(quoted, course().amount("agreed"));
    book(BAD_INPUT, "change", job);
    book(DONE, "accept", JOB, "C1", "--date", "2026-12-03");
    assertEquals(quoted.add(dollars("287.50")), course().amount("agreed"));

    Path form = Files.createDirectories(folder.resolve("close")).resolve("actuals.csv");
    copy.run("close", job.toString(), "--out", form.getParent().toString());
    book(BAD_INPUT, "invoice", JOB);
    String text = Files.readString(form);
    Files.writeString(form, text.replaceAll("(hours,whole job,[^\r\n]*),h,", "$1,h,70"));
    assertEquals(DONE, copy.run("close", job.toString(), form.toString()).exitCode());

    book(DONE, "paid", JOB, "5000.01", "--why", "bank transfer", "--date", "2026-11-29");
    Launch.Ended invoice =
        book(DONE, "invoice", JOB, "--out", papers, "--date", "2026-12-15", "--json");
    Tree told = Tree.ofJson(invoice.out());
    assertEquals("0001", told.text("invoice.number"));
    assertEquals(quoted.add(dollars("287.50")), told.amount("invoice.total"));
    BigDecimal balance = quoted.add(dollars("287.50")).subtract(dollars("5000.01"));
    assertEquals(balance, told.amount("invoice.balance"));
    book(DONE, "paid", JOB, balance.toPlainString(), "--date", "2026-12-20");
    assertEquals("paid", course().text("state"));

    for (String paper : List.of("revision-2", "change-order-C1", "invoice", "office/account")) {
      assertTrue(Files.size(papers.resolve(paper + ".pdf")) > 0, paper);
    }
    String signed = Files.readString(papers.resolve("change-order-C1.html"));
    assertTrue(signed.contains("customer: name, date, signature"));
    assertTrue(signed.contains("Change order D-102-C1"));
    assertFalse(signed.contains("Contingency"));
    assertTrue(Files.readString(papers.resolve("invoice.html")).contains("powder coat"));
    assertEquals(DONE, copy.run("ledger", "check", "--shop", folder.toString()).exitCode());
  }

  /** Of four bump stops two came: the other two are on back-order. */
  @Test
  void goodsAreHeldAgainstTheOrder() throws Exception {
    book(STOP, "quote", job);
    assertEquals(STOP, copy.run("order", "--placed", job.toString()).exitCode());
    Launch.Ended twice = copy.run("order", "--placed", job.toString());
    assertEquals(BAD_INPUT, twice.exitCode());
    assertTrue(twice.err().contains("placed on"), twice.err());
    String number = "";
    for (Tree order : course().list("orders")) {
      number =
          order.text("supplier").equals("suspension parts house") ? order.text("order") : number;
    }
    Path form = folder.resolve("goods/received.csv");
    book(DONE, "received", number, "--out", folder.resolve("goods"));
    StringBuilder filled = new StringBuilder();
    for (String line : Files.readString(form).split("\r\n")) {
      filled.append(line.contains(",bump-stop,") ? line.replaceAll(",,$", ",1,dented box") : line);
      filled.append("\r\n");
    }
    Files.writeString(form, filled);
    Launch.Ended came = book(DONE, "received", number, form);
    assertTrue(came.out().contains("bump stop with stud (1 of 2 there)"), came.out());
    book(BAD_INPUT, "received", number, folder.resolve("sedan.yaml"));
    book(DONE, "received", number, "--all");
    book(BAD_INPUT, "received", number, "--all");
    Optional<Tree> order = Optional.empty();
    for (Tree one : course().list("orders")) {
      order = one.text("order").equals(number) ? Optional.of(one) : order;
    }
    assertEquals(true, order.orElseThrow().at("all_there").value());
    book(DONE, "unplace", number);
  }

  @Test
  void aJobWithoutAWordIsShown() {
    book(STOP, "quote", job);
    String shown = book(DONE, "show", JOB).out();
    assertEquals(shown, book(DONE, JOB).out());
    assertEquals(shown, book(DONE, job).out());
    String misspelt = book(BAD_INPUT, "acept").err();
    assertTrue(misspelt.contains("no quote of job acept"), misspelt);
    assertTrue(misspelt.contains("quote, change, accept"), misspelt);
    book(BAD_INPUT, "acept", JOB);
  }

  @Test
  void stagesArePromisedForADay() {
    book(STOP, "quote", job);
    book(BAD_INPUT, "stage", JOB, "on its wheels");
    book(DONE, "stage", JOB, "on its wheels", "--date", "2026-12-10");
    String told = book(DONE, "done", job, "on its wheels", "--date", "2026-12-12").out();
    assertTrue(told.contains("promised 2026-12-10  done 2026-12-12, 2 days late"), told);
  }

  /** The old file stays byte for byte, comments are kept, and the new job is priced. */
  @Test
  void anOldJobMakesANewOne() throws Exception {
    String before = Files.readString(job);
    Path next = folder.resolve("next.yaml");
    book(DONE, "again", job, next, "--number", "D-200", "--customer", "Somebody Else (invented)");
    assertEquals(before, Files.readString(job));
    assertEquals("D-200", copy.json(STOP, "quote", next).text("job"));
    assertFalse(Files.readString(next).contains("Example Customer"));
    book(BAD_INPUT, "again", job, next, "--number", "D-201", "--customer", "x");
  }

  @Test
  void aCustomersDataAreDeletedOnRequest() throws Exception {
    book(STOP, "quote", job);
    Path papers = folder.resolve("papers");
    copy.run("fitup", job.toString(), "--out", papers.toString());
    Files.writeString(papers.resolve("mine.txt"), "of the shop");
    Path signed = Files.writeString(folder.resolve("sedan.signed.csv"), "bracket,by,on\n");
    Path unnamed = folder.resolve("unnamed.yaml");
    Files.writeString(unnamed, "format: trammel-job/1\njob: {number: D-103}\n");
    book(BAD_INPUT, "forget", "", "--apply");
    assertTrue(Files.exists(unnamed));
    String shown = book(DONE, "forget", "example customer (invented)").out();
    assertTrue(shown.contains("Nothing is deleted yet"), shown);
    assertTrue(Files.exists(job));
    book(DONE, "forget", "example customer (invented)", "--apply");
    assertFalse(Files.exists(job));
    assertFalse(Files.exists(signed));
    assertFalse(Files.exists(papers.resolve("fitup.csv")));
    assertTrue(Files.exists(papers.resolve("mine.txt")));
    assertEquals("", course().text("customer"));
    assertEquals(dollars("10440.93"), course().list("offers").get(0).amount("total"));
    book(BAD_INPUT, "forget", "example customer (invented)");
  }
}
