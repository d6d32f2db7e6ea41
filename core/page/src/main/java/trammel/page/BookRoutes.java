package trammel.page;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import trammel.app.book.BookJson;
import trammel.app.book.Course;
import trammel.app.book.Payments;
import trammel.app.files.FilledNumber;
import trammel.app.ledger.ShopLedger;
import trammel.app.prices.PriceSheet;
import trammel.ledger.Ledger;
import trammel.ledger.PriceHistory;
import trammel.ledger.Purchases;
import trammel.page.bench.Bench;
import trammel.page.folder.Plain;
import trammel.page.folder.Refused;
import trammel.page.http.Answer;
import trammel.page.http.Request;
import trammel.page.http.Routes;
import trammel.reading.quantity.QuantityFormatException;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentNode;
import trammel.reading.tree.ListNode;
import trammel.reading.tree.ObjectNode;

/** The shop's book: what was quoted, changed, promised, paid, ordered and priced, and when. */
final class BookRoutes {
  private static final int BAD_REQUEST = 400;
  private static final int CONFLICT = 409;
  private static final int UNPROCESSABLE = 422;
  private static final int NOT_FOUND = 404;
  private static final int MOST_PRICES = 300;
  private static final int LONGEST_NOTE = 200;
  private static final QuantityPrinter PRINTER = new QuantityPrinter(UnitSystem.US);

  private final Path folder;
  private final Bench bench;
  private final News news;

  BookRoutes(Path folder, Bench bench, News news) {
    this.folder = folder;
    this.bench = bench;
    this.news = news;
  }

  void addTo(Routes routes) {
    routes
        .on("GET", "/api/book", request -> Answer.json(read(this::whole).orElse(nothing())))
        .on("GET", "/api/book/prices", this::prices)
        .on("GET", "/api/book/job", this::job)
        .on("POST", "/api/book/paid", this::paid)
        .on("POST", "/api/book/received", this::received);
  }

  private ShopLedger kept() {
    return bench.with(workbench -> workbench.shopIn(folder, UnitSystem.US));
  }

  /** Reads the ledger; empty if there is none yet, and none is made. */
  private <T> Optional<T> read(Function<Ledger, T> asked) {
    ShopLedger kept = kept();
    if (!kept.ledgerPlace().exists()) {
      return Optional.empty();
    }
    try (Ledger ledger = Ledger.openExisting(kept.ledgerPlace().file())) {
      return Optional.of(asked.apply(ledger));
    }
  }

  // Looking

  private static Map<String, Object> nothing() {
    return Map.of("jobs", List.of(), "orders", List.of(), "prices", 0);
  }

  private Map<String, Object> whole(Ledger ledger) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs", BookJson.jobs(ledger));
    json.put("orders", BookJson.orders(ledger, ledger.purchases().all()));
    json.put("prices", ledger.prices().count());
    return json;
  }

  private Answer job(Request request) {
    String number = request.asked("number").orElse("");
    return Answer.json(
        read(ledger -> Course.of(ledger, number).map(course -> BookJson.job(ledger, course)))
            .flatMap(Function.identity())
            .orElseThrow(() -> unknown(number)));
  }

  private static Refused unknown(String job) {
    return new Refused(NOT_FOUND, "The ledger has no quote of job " + job + ".");
  }

  /** What prices were, the latest first, as far as they have what is sought. */
  private Answer prices(Request request) {
    String sought = request.asked("find").orElse("").strip().toLowerCase(Locale.ROOT);
    Map<String, String> titles = titles();
    List<Map<String, Object>> found = new ArrayList<>();
    for (PriceHistory.Entry entry : read(ledger -> ledger.prices().all()).orElse(List.of())) {
      PriceHistory.Change change = entry.change();
      String id = PriceSheet.id(change.item(), change.lengthMm(), change.widthMm(), PRINTER);
      String title = titles.getOrDefault(id, id);
      String words =
          String.join(" ", id, title, change.source(), change.pricedOn().toString())
              .toLowerCase(Locale.ROOT);
      if (words.contains(sought)) {
        Map<String, Object> json = BookJson.price(entry);
        json.put("title", title);
        found.add(0, json);
      }
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("found", found.size());
    json.put("prices", found.stream().limit(MOST_PRICES).toList());
    return Answer.json(json);
  }

  /** What the catalog calls what has a price now. */
  private Map<String, String> titles() {
    Map<String, String> titles = new LinkedHashMap<>();
    for (PriceSheet.Line line : new PriceSheet(bench.catalog(), PRINTER).lines()) {
      titles.put(line.id(), line.title());
    }
    return titles;
  }

  // Writing

  /** A payment; who has not seen the payments so far is asked to look first. */
  private Answer paid(Request request) {
    ObjectNode json = request.json();
    String number = Plain.text(json, "job");
    LocalDate day = day(json);
    String note = note(json, "note");
    Map<String, Object> now =
        write(
            ledger -> {
              Course course = Course.of(ledger, number).orElseThrow(() -> unknown(number));
              if (course.paid().size() != count(json, "seen")) {
                throw new Refused(
                    CONFLICT,
                    "Another payment of job "
                        + number
                        + " was written down meanwhile. Look at it before you enter yours.");
              }
              Payments.pay(ledger, course, Plain.text(json, "amount"), day, note);
              return BookJson.job(ledger, Course.of(ledger, number).orElseThrow());
            });
    return Answer.json(now);
  }

  /** Goods that came; of each line is told how many were there before, as its user saw it. */
  private Answer received(Request request) {
    ObjectNode json = request.json();
    String number = Plain.text(json, "order");
    LocalDate day = day(json);
    Map<String, Object> now =
        write(
            ledger -> {
              Purchases.Purchase order =
                  ledger
                      .purchases()
                      .of(number)
                      .orElseThrow(
                          () -> new Refused(NOT_FOUND, "The ledger has no order " + number + "."));
              ledger.purchases().receive(number, day, receipts(json, order));
              return Map.of(
                  "orders",
                  BookJson.orders(ledger, List.of(ledger.purchases().of(number).orElseThrow())));
            });
    return Answer.json(now);
  }

  private static List<Purchases.Receipt> receipts(ObjectNode json, Purchases.Purchase order) {
    List<Purchases.Receipt> receipts = new ArrayList<>();
    if (json.find("lines").orElse(null) instanceof ListNode list) {
      for (DocumentNode node : list.entries()) {
        if (node instanceof ObjectNode entry) {
          receipts.add(receipt(entry, order));
        }
      }
    }
    if (receipts.isEmpty()) {
      throw new Refused(
          BAD_REQUEST, "Nothing of order " + order.number() + " was said to have come.");
    }
    return receipts;
  }

  private static Purchases.Receipt receipt(ObjectNode entry, Purchases.Purchase order) {
    int number = count(entry, "line");
    if (number < 1 || number > order.lines().size()) {
      throw new Refused(BAD_REQUEST, "Order " + order.number() + " has no line " + number + ".");
    }
    Purchases.Line line = order.lines().get(number - 1);
    if (number(entry, "seen").compareTo(line.received()) != 0) {
      throw new Refused(
          CONFLICT,
          "More of "
              + line.title()
              + " was written down meanwhile. Look at it before you enter yours.");
    }
    try {
      double came = FilledNumber.count(Plain.text(entry, "quantity"), line.unit(), false);
      if (came <= 0) {
        throw new Refused(UNPROCESSABLE, "Count how many of " + line.title() + " came: above 0.");
      }
      return new Purchases.Receipt(
          number, BigDecimal.valueOf(came).stripTrailingZeros(), note(entry, "note"));
    } catch (QuantityFormatException refused) {
      throw new Refused(
          UNPROCESSABLE,
          line.title()
              + ": given "
              + refused.given()
              + "; allowed: "
              + refused.allowed()
              + ". "
              + refused.remedy());
    }
  }

  /** All of it counts or nothing, and the page of every screen is told. */
  private <T> T write(Function<Ledger, T> work) {
    T done =
        read(ledger -> ledger.asOne(() -> work.apply(ledger)))
            .orElseThrow(
                () -> new Refused(NOT_FOUND, "There is no ledger yet: quote a job first."));
    bench.readAnew();
    news.changed();
    return done;
  }

  private static LocalDate day(ObjectNode json) {
    try {
      return LocalDate.parse(Plain.text(json, "on"));
    } catch (DateTimeParseException none) {
      throw new Refused(
          UNPROCESSABLE,
          "The day was given '"
              + Plain.text(json, "on")
              + "'; give it as year-month-day: 2026-12-01.");
    }
  }

  private static String note(ObjectNode json, String key) {
    String note = Plain.text(json, key).strip();
    if (note.length() > LONGEST_NOTE || note.chars().anyMatch(Character::isISOControl)) {
      throw new Refused(
          UNPROCESSABLE, "A note is one line of at most " + LONGEST_NOTE + " characters.");
    }
    return note;
  }

  private static int count(ObjectNode json, String key) {
    try {
      return number(json, key).intValueExact();
    } catch (ArithmeticException broken) {
      throw new Refused(BAD_REQUEST, key + " is a whole number.");
    }
  }

  private static BigDecimal number(ObjectNode json, String key) {
    try {
      return new BigDecimal(json.find(key).map(Plain::of).map(Object::toString).orElse("nothing"));
    } catch (NumberFormatException none) {
      throw new Refused(BAD_REQUEST, key + " is a number.");
    }
  }
}
