package trammel.app.commands;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import trammel.app.book.Course;
import trammel.app.book.CourseJson;
import trammel.app.book.CourseText;
import trammel.app.book.CustomerData;
import trammel.app.book.OfferDifference;
import trammel.app.book.Offers;
import trammel.app.book.ReceivedForm;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.documents.AccountDocument;
import trammel.app.documents.InvoiceDocument;
import trammel.app.documents.OfferDocument;
import trammel.app.documents.PaperDocument;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.files.SafeFile;
import trammel.app.json.Json;
import trammel.app.ledger.ShopLedger;
import trammel.app.text.Amounts;
import trammel.app.text.Stops;
import trammel.app.text.Table;
import trammel.engine.checks.CheckResult;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;
import trammel.ledger.Purchases;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Counts;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.JobDocument;
import trammel.planning.job.JobReader;
import trammel.reading.quantity.UnitSystem;
import trammel.reading.tree.DocumentFormat;
import trammel.reading.tree.DocumentReader;
import trammel.reading.tree.Location;
import trammel.reading.tree.TextNode;
import trammel.reading.tree.WrittenDocument;
import trammel.trade.money.Money;

/** Keeps the course of jobs in the shop's ledger: quotes, changes, payments, goods, invoices. */
public final class BookCommand extends JobCommand {
  private static final String WHAT = "WHAT";
  private static final String SHOP = "--shop";
  private static final String DATE = "--date";
  private static final String WHY = "--why";
  private static final String ALL = "--all";
  private static final String APPLY = "--apply";
  private static final String NUMBER = "--number";
  private static final String CUSTOMER = "--customer";
  private static final String VEHICLE = "--vehicle";
  private static final int MOST_WORDS = 4;

  private Arguments arguments;
  private Screen screen;
  private CommonOptions options;
  private Workbench bench;
  private List<String> words;
  private LocalDate day;
  private ShopLedger shop;
  private Path folder;

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "The course of jobs from quote to paid, kept in the shop's ledger. Without WHAT it"
                    + " shows all jobs. JOB is a job file, or a job's number.")
            .arguments(
                WHAT,
                0,
                MOST_WORDS,
                "show JOB: its course. quote JOB: keeps the quote as given, and says what changed"
                    + " since the one before. accept JOB [C1]: the customer agreed to the quote, or"
                    + " to a change order. change JOB: a change order, what the job is now against"
                    + " what was agreed. drop JOB [C1]: takes the latest back. stage JOB TITLE:"
                    + " promises it for --date. done JOB TITLE: it was done. paid JOB AMOUNT."
                    + " received ORDER [FORM]: goods that came; without a form it writes one."
                    + " unplace ORDER: an order that was not placed after all. invoice JOB. again"
                    + " JOB FILE: a new job from an old one. forget WHO: deletes a customer's data.")
            .option(
                SHOP, "DIR", "The folder of the jobs; without it, that of the job, or this one.")
            .option(DATE, "DAY", "The day on which it was, or is to be; without it, today.")
            .option(WHY, "TEXT", "Why, or for what; stands on the paper.")
            .flag(ALL, "With received: all that was ordered has come.")
            .flag(APPLY, "With forget: deletes; without it, says what would be deleted.")
            .option(NUMBER, "TEXT", "With again: the number of the new job.")
            .option(CUSTOMER, "TEXT", "With again: the customer of the new job.")
            .option(VEHICLE, "TEXT", "With again: the vehicle of the new job."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    this.arguments = arguments;
    this.screen = screen;
    options = CommonOptions.of(arguments);
    bench = bench(options.units(), screen);
    words = arguments.arguments(WHAT);
    day = Days.of(DATE, arguments.value(DATE)).orElse(LocalDate.now());
    String what = words.isEmpty() ? "show" : words.get(0);
    requireWords(what);
    return switch (what) {
      case "show" -> words.size() > 1 ? show(number()) : showAll();
      case "quote" -> offer(Offer.Kind.QUOTE);
      case "change" -> offer(Offer.Kind.CHANGE);
      case "accept" -> mark(true);
      case "drop" -> mark(false);
      case "stage" -> stage(JobBook.StageWord.PROMISED);
      case "done" -> stage(JobBook.StageWord.DONE);
      case "paid" -> paid();
      case "received" -> received();
      case "unplace" -> unplace();
      case "invoice" -> invoice();
      case "again" -> again();
      default -> forget();
    };
  }

  private static final Map<String, int[]> WORDS =
      Map.ofEntries(
          Map.entry("show", new int[] {0, 1}),
          Map.entry("quote", new int[] {1, 1}),
          Map.entry("change", new int[] {1, 1}),
          Map.entry("accept", new int[] {1, 2}),
          Map.entry("drop", new int[] {1, 2}),
          Map.entry("stage", new int[] {2, 2}),
          Map.entry("done", new int[] {2, 2}),
          Map.entry("paid", new int[] {2, 2}),
          Map.entry("received", new int[] {1, 2}),
          Map.entry("unplace", new int[] {1, 1}),
          Map.entry("invoice", new int[] {1, 1}),
          Map.entry("again", new int[] {2, 2}),
          Map.entry("forget", new int[] {1, 1}));

  private void requireWords(String what) {
    int[] count = WORDS.get(what);
    if (count == null) {
      throw CommandFailure.badInput(
          WHAT
              + " was given '"
              + what
              + "'; to see a job give show and its number; else give quote, accept, change, drop, stage, done, paid, received, unplace,"
              + " invoice, again or forget.");
    }
    int given = Math.max(0, words.size() - 1);
    if (given < count[0] || given > count[1]) {
      throw CommandFailure.badInput(
          "book " + what + " was given " + given + " words behind it; see trammel book --help.");
    }
    boolean papers = List.of("quote", "change", "received", "invoice").contains(what);
    if (CommonOptions.asksForFiles(arguments) && !papers) {
      throw CommandFailure.badInput("book " + what + " writes no papers; leave --out away.");
    }
  }

  // Which shop, which job

  /** The number of the job that is named, its file read where it is one. */
  private String number() {
    Path file = Path.of(words.get(1));
    boolean isFile =
        Files.isRegularFile(file) && DocumentFormat.ofFileName(file.toString()).isPresent();
    if (!isFile) {
      openShop(Path.of(arguments.value(SHOP).orElse("")));
      return words.get(1);
    }
    openShop(
        arguments
            .value(SHOP)
            .map(Path::of)
            .orElse(Optional.ofNullable(file.getParent()).orElse(Path.of(""))));
    return DocumentReader.read(file)
        .findObject("job")
        .flatMap(job -> job.find("number"))
        .filter(TextNode.class::isInstance)
        .map(node -> ((TextNode) node).text())
        .orElseThrow(() -> CommandFailure.badInput(file + " has no job.number; give a job file."));
  }

  private void openShop(Path given) {
    if (!Files.isDirectory(given.toAbsolutePath())) {
      throw CommandFailure.badInput(
          SHOP + " was given " + given + ", which is no folder; give the folder of the jobs.");
    }
    folder = given.toAbsolutePath().normalize();
    shop = bench.shopIn(folder, UnitSystem.US);
  }

  private Ledger open() {
    return shop.open(note -> screen.err().println("Note: " + note));
  }

  private Ledger openExisting() {
    if (!shop.hasAnything()) {
      throw CommandFailure.badInput(
          "There is no ledger yet ("
              + shop.ledgerPlace().named()
              + "): trammel book quote JOB keeps the first quote in it. If the jobs are in another"
              + " folder, name it with "
              + SHOP
              + ".");
    }
    return open();
  }

  private static Course course(Ledger ledger, String number) {
    return Course.of(ledger, number)
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    "The ledger has no quote of job "
                        + number
                        + ": trammel book quote JOB keeps one."));
  }

  private String why() {
    return arguments.value(WHY).orElse("");
  }

  /** Each paper is of its own, so that a later one takes none of the earlier away. */
  private Optional<OutFolder> out(String paper) {
    return CommonOptions.outFolder(arguments, paper);
  }

  private void print(String text, Map<String, Object> json) {
    if (options.json()) {
      screen.out().println(Json.text(json));
    } else {
      screen.out().print(text);
    }
  }

  private UnitSystem units() {
    return options.units().orElse(UnitSystem.US);
  }

  // Looking

  private ExitCode showAll() {
    openShop(Path.of(arguments.value(SHOP).orElse("")));
    try (Ledger ledger = openExisting()) {
      List<Course> courses = new ArrayList<>();
      ledger.book().jobs().forEach(job -> courses.add(course(ledger, job.number())));
      List<Object> json = new ArrayList<>();
      courses.forEach(course -> json.add(CourseJson.course(course)));
      print(CourseText.jobs(courses), Map.of("jobs", json));
      return ExitCode.DONE;
    }
  }

  private ExitCode show(String number) {
    try (Ledger ledger = openExisting()) {
      Course course = course(ledger, number);
      print(CourseText.course(course, LocalDate.now()), CourseJson.course(course));
      return ExitCode.DONE;
    }
  }

  // Offers

  private ExitCode offer(Offer.Kind kind) {
    Path file = Path.of(words.get(1));
    out("book " + kind.word());
    Draft draft = bench.draft(file);
    UnitSystem shown = bench.shown(draft.job());
    Estimate estimate = bench.estimate(draft);
    List<CheckResult> results = draft.judge().judge(draft.layout());
    Stops stops = Verdicts.stops(draft, results, new Amounts(shown));
    shop = bench.shopLedger(draft.job().header().units());
    JobBook.Heading heading = Offers.heading(estimate);
    Offer offer;
    Optional<Offer> before;
    try (Ledger ledger = open()) {
      Optional<Course> course = Course.of(ledger, heading.number());
      before = before(kind, course, heading.number());
      int count = course.map(one -> one.count(kind)).orElse(0) + 1;
      offer = Offers.of(estimate, kind, count, day, why());
      requireOther(offer, before, heading.number());
      FileSet papers = papers(heading, before, offer, stops, shown);
      ledger.asOne(
          () -> {
            ledger.book().give(heading, offer);
            out("book " + kind.word() + " " + count)
                .ifPresent(
                    into ->
                        CommonOptions.writeAndName(
                            papers, into.forJobs(List.of(heading.number())), screen));
            return null;
          });
    }
    printOffer(heading, offer, before, stops);
    return Verdicts.exitCode(results);
  }

  private static Optional<Offer> before(Offer.Kind kind, Optional<Course> course, String number) {
    if (kind == Offer.Kind.QUOTE) {
      if (course.flatMap(Course::accepted).isPresent()) {
        throw CommandFailure.badInput(
            "The quote of job "
                + number
                + " was accepted; what is other from then on is a change order: trammel book"
                + " change JOB.");
      }
      return course.flatMap(Course::latestQuote).map(Offer.Kept::offer);
    }
    Course agreed =
        course
            .filter(one -> one.accepted().isPresent())
            .orElseThrow(
                () ->
                    CommandFailure.badInput(
                        "No quote of job "
                            + number
                            + " was accepted yet, so there is nothing to change: give a new"
                            + " revision with trammel book quote JOB, or trammel book accept"
                            + " JOB."));
    agreed
        .openChange()
        .ifPresent(
            open -> {
              throw CommandFailure.badInput(
                  "Change order "
                      + open.offer().name(number)
                      + " is open: trammel book accept "
                      + number
                      + " C"
                      + open.offer().count()
                      + " when it is signed, or drop it, before the next.");
            });
    if (agreed.invoice().isPresent()) {
      throw CommandFailure.badInput(
          "Job " + number + " was invoiced; what comes after is a job of its own.");
    }
    return agreed.agreed();
  }

  private static void requireOther(Offer offer, Optional<Offer> before, String number) {
    if (before.isPresent() && OfferDifference.of(before.get(), offer).isNothing()) {
      throw CommandFailure.badInput(
          "Job "
              + number
              + " comes to the same lines and the same price as "
              + before.get().name(number)
              + ", so nothing was kept. Change the job file first.");
    }
  }

  private FileSet papers(
      JobBook.Heading heading, Optional<Offer> before, Offer offer, Stops stops, UnitSystem shown) {
    FileSet files = new FileSet();
    if (before.isPresent() && CommonOptions.asksForFiles(arguments)) {
      PaperDocument paper =
          OfferDocument.of(
              bench.catalog().shop(),
              heading,
              OfferDifference.of(before.get(), offer),
              stops,
              shown);
      String name =
          offer.kind() == Offer.Kind.CHANGE
              ? "change-order-C" + offer.count()
              : "revision-" + offer.count();
      files.add(name + ".pdf", paper.pdf()).add(name + ".html", paper.html());
    }
    return files;
  }

  private void printOffer(
      JobBook.Heading heading, Offer offer, Optional<Offer> before, Stops stops) {
    StringBuilder text = new StringBuilder();
    String name = offer.name(heading.number());
    text.append(offer.kind() == Offer.Kind.CHANGE ? "CHANGE ORDER " : "QUOTE ").append(name);
    text.append("  ").append(offer.total().text()).append(" with tax\n");
    if (!stops.isEmpty()) {
      text.append(stops.text().stripTrailing()).append('\n');
    }
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", heading.number());
    json.put("number", name);
    json.put("total", offer.total().amount());
    if (before.isPresent()) {
      OfferDifference difference = OfferDifference.of(before.get(), offer);
      text.append("\nSINCE ").append(before.get().name(heading.number())).append('\n');
      text.append(CourseText.difference(difference));
      json.put("since", before.get().name(heading.number()));
      json.put("difference", CourseJson.difference(difference));
    }
    text.append("\nKept in ")
        .append(shop.ledgerPlace().file())
        .append(". Next: trammel book accept ");
    text.append(heading.number());
    text.append(offer.kind() == Offer.Kind.CHANGE ? " C" + offer.count() : "").append('\n');
    json.put("ledger", shop.ledgerPlace().file().toString());
    print(text.toString(), json);
  }

  private ExitCode mark(boolean agreed) {
    String number = number();
    Optional<Integer> change =
        words.size() > 2 ? Optional.of(changeCount(words.get(2))) : Optional.empty();
    try (Ledger ledger = openExisting()) {
      Course course = course(ledger, number);
      Offer.Kept kept =
          change.isPresent()
              ? course.offers().stream()
                  .filter(one -> one.offer().kind() == Offer.Kind.CHANGE)
                  .filter(one -> one.offer().count() == change.get())
                  .findFirst()
                  .orElseThrow(
                      () ->
                          CommandFailure.badInput(
                              "Job " + number + " has no change order C" + change.get() + "."))
              : course
                  .latestQuote()
                  .orElseThrow(
                      () ->
                          CommandFailure.badInput(
                              "Job " + number + " has no quote that was not taken back."));
      if (!kept.isOpen()) {
        throw CommandFailure.badInput(
            kept.offer().name(number)
                + (kept.acceptedOn().isPresent()
                    ? " was agreed on " + kept.acceptedOn().get()
                    : " was taken back on " + kept.droppedOn().orElseThrow())
                + "; that stays.");
      }
      if (agreed) {
        ledger.book().accept(number, kept.offer().kind(), kept.offer().count(), day);
      } else {
        ledger.book().drop(number, kept.offer().kind(), kept.offer().count(), day);
      }
      Course now = course(ledger, number);
      print(CourseText.course(now, LocalDate.now()), CourseJson.course(now));
      return ExitCode.DONE;
    }
  }

  private static int changeCount(String word) {
    if (!word.matches("[Cc]\\d{1,4}")) {
      throw CommandFailure.badInput(
          "A change order was given as '" + word + "'; give it as C1, C2 and so on.");
    }
    return Integer.parseInt(word.substring(1));
  }

  // Stages and payments

  private ExitCode stage(JobBook.StageWord word) {
    String number = number();
    String title = words.get(2);
    if (word == JobBook.StageWord.PROMISED && arguments.value(DATE).isEmpty()) {
      throw CommandFailure.badInput("book stage needs the day that is promised: --date DAY.");
    }
    try (Ledger ledger = openExisting()) {
      course(ledger, number);
      ledger.book().say(number, new JobBook.Stage(title, word, day, why()));
      Course now = course(ledger, number);
      print(CourseText.course(now, LocalDate.now()), CourseJson.course(now));
      return ExitCode.DONE;
    }
  }

  private ExitCode paid() {
    String number = number();
    try (Ledger ledger = openExisting()) {
      Course course = course(ledger, number);
      if (course.agreed().isEmpty()) {
        throw CommandFailure.badInput(
            "No quote of job "
                + number
                + " was accepted yet, so nothing is owed: trammel book accept "
                + number
                + ".");
      }
      Money amount = amount(words.get(2), course);
      ledger.book().pay(number, new JobBook.Paid(day, amount, why()));
      Course now = course(ledger, number);
      print(CourseText.course(now, LocalDate.now()), CourseJson.course(now));
      return ExitCode.DONE;
    }
  }

  private static Money amount(String word, Course course) {
    Currency currency = course.agreed().orElseThrow().tax().currency();
    String plain = word.replace("$", "").replace(",", "").strip();
    boolean whole = plain.matches("-?\\d{1,9}(\\.\\d{1,4})?") && !word.matches(".*,\\d{1,2}$");
    Money amount = whole ? Money.of(plain, currency.getCurrencyCode()) : Money.zero(currency);
    if (amount.isZero() || amount.amount().compareTo(new BigDecimal(plain)) != 0) {
      throw CommandFailure.badInput(
          "AMOUNT was given '"
              + word
              + "'; give what was paid in "
              + currency.getCurrencyCode()
              + ", such as 9970.03; with a minus for what was given back.");
    }
    return amount;
  }

  // Goods

  private ExitCode received() {
    openShop(Path.of(arguments.value(SHOP).orElse("")));
    Optional<OutFolder> out = out("book received " + words.get(1));
    boolean all = arguments.has(ALL);
    try (Ledger ledger = openExisting()) {
      Purchases.Purchase purchase = purchase(ledger, words.get(1));
      ReceivedForm form = new ReceivedForm(purchase);
      if (words.size() < 3 && !all) {
        OutFolder into =
            out.orElseThrow(
                () ->
                    CommandFailure.badInput(
                        "book received writes the form of the order into the folder of --out DIR;"
                            + " behind the order's number it takes the filled form, and --all"
                            + " where everything has come."));
        CommonOptions.writeAndName(
            new FileSet().add(ReceivedForm.NAME, form.form()),
            into.forJobs(purchase.jobs()),
            screen);
        return ExitCode.DONE;
      }
      if (words.size() == 3 && all) {
        throw CommandFailure.badInput(ALL + " and a form say two things; give one of them.");
      }
      List<Purchases.Receipt> receipts = all ? form.rest() : form.read(Path.of(words.get(2)));
      if (receipts.isEmpty()) {
        throw CommandFailure.badInput(
            "Nothing of order " + purchase.number() + " was said to have come.");
      }
      ledger.purchases().receive(purchase.number(), day, receipts);
      Purchases.Purchase now = purchase(ledger, purchase.number());
      print(
          "ORDER "
              + now.number()
              + ", "
              + Counts.of(receipts.size(), "line")
              + " received\n"
              + CourseText.goods(now),
          CourseJson.purchase(now));
      return ExitCode.DONE;
    }
  }

  private static Purchases.Purchase purchase(Ledger ledger, String number) {
    return ledger
        .purchases()
        .of(number)
        .orElseThrow(
            () ->
                CommandFailure.badInput(
                    "The ledger has no order "
                        + number
                        + "; it has "
                        + (ledger.purchases().all().isEmpty()
                            ? "none: trammel order --placed keeps them"
                            : String.join(
                                ", ",
                                ledger.purchases().all().stream()
                                    .map(Purchases.Purchase::number)
                                    .toList()))
                        + "."));
  }

  private ExitCode unplace() {
    openShop(Path.of(arguments.value(SHOP).orElse("")));
    try (Ledger ledger = openExisting()) {
      Purchases.Purchase purchase = purchase(ledger, words.get(1));
      ledger.purchases().drop(purchase.number());
      print(
          "Order " + purchase.number() + " is taken out; what came of it stays in the ledger.\n",
          Map.of("order", purchase.number(), "taken_out", true));
      return ExitCode.DONE;
    }
  }

  // Invoice

  private ExitCode invoice() {
    String number = number();
    Optional<OutFolder> out = out("book invoice");
    try (Ledger ledger = openExisting()) {
      Course course = course(ledger, number);
      JobBook.Invoice asked = course.invoice().orElseGet(() -> made(course));
      Course now =
          ledger.asOne(
              () -> {
                if (course.invoice().isEmpty()) {
                  ledger.book().invoice(asked);
                }
                Course invoiced = course(ledger, number);
                out.ifPresent(into -> write(invoiced, into));
                return invoiced;
              });
      JobBook.Invoice invoice = now.invoice().orElseThrow();
      print(invoiceText(now, invoice), CourseJson.course(now));
      return ExitCode.DONE;
    }
  }

  private JobBook.Invoice made(Course course) {
    String number = course.job().number();
    if (course.closed().isEmpty()) {
      throw CommandFailure.badInput(
          "Job " + number + " is not closed yet: trammel close JOB ACTUALS first.");
    }
    course
        .openChange()
        .ifPresent(
            open -> {
              throw CommandFailure.badInput(
                  "Change order "
                      + open.offer().name(number)
                      + " is open: accept or drop it first.");
            });
    Offer quote =
        course
            .accepted()
            .map(Offer.Kept::offer)
            .orElseThrow(
                () ->
                    CommandFailure.badInput(
                        "No quote of job "
                            + number
                            + " was accepted, so there is nothing to invoice: trammel book accept "
                            + number
                            + "."));
    List<JobBook.InvoiceLine> lines = new ArrayList<>();
    lines.add(
        new JobBook.InvoiceLine(
            "As quoted, revision "
                + quote.count()
                + " of "
                + quote.givenOn()
                + ", agreed "
                + course.accepted().orElseThrow().acceptedOn().orElseThrow(),
            quote.subtotal(),
            quote.total()));
    for (OfferDifference change : course.changeDifferences()) {
      lines.add(
          new JobBook.InvoiceLine(
              "Change order "
                  + change.after().name(number)
                  + (change.after().why().isEmpty() ? "" : ": " + change.after().why()),
              change.subtotal(),
              change.total()));
    }
    Money paid = Money.zero(quote.tax().currency());
    for (JobBook.Paid one : course.paid()) {
      paid = one.paidOn().isAfter(day) ? paid : paid.plus(one.amount());
    }
    return new JobBook.Invoice(0, number, day, lines, course.agreed().orElseThrow().total(), paid);
  }

  private void write(Course course, OutFolder out) {
    PaperDocument invoice = InvoiceDocument.of(bench.catalog().shop(), course, units());
    PaperDocument account = AccountDocument.of(bench.catalog().shop(), course, units());
    CommonOptions.writeAndName(
        new FileSet()
            .add("invoice.pdf", invoice.pdf())
            .add("invoice.html", invoice.html())
            .add("office/account.pdf", account.pdf())
            .add("office/account.html", account.html()),
        out.forJobs(List.of(course.job().number())),
        screen);
  }

  private static String invoiceText(Course course, JobBook.Invoice invoice) {
    Table table = new Table("lr");
    invoice.lines().forEach(line -> table.row(line.title(), line.amount().text()));
    table.row("together, with tax", invoice.total().text());
    table.row("paid before", invoice.paid().text());
    table.row(
        invoice.balance().amount().signum() < 0 ? "to be given back" : "LEFT TO PAY",
        invoice.balance().text());
    return "INVOICE "
        + CourseText.number(invoice)
        + " of "
        + invoice.givenOn()
        + ", job "
        + course.job().number()
        + "\n"
        + table.text("  ");
  }

  // A new job from an old one

  private ExitCode again() {
    Path old = Path.of(words.get(1));
    Path file = Path.of(words.get(2));
    String number = needed(NUMBER);
    String customer = needed(CUSTOMER);
    if (Files.exists(file)) {
      throw CommandFailure.badInput(file + " is there already; give another name.");
    }
    JobDocument document = JobDocument.load(old);
    JobReader.read(document);
    WrittenDocument written = WrittenDocument.of(old.toString(), text(old));
    written = with(written, "job.number", number);
    written = with(written, "job.customer", customer);
    written = with(written, "job.date", day.toString());
    if (arguments.value(VEHICLE).isPresent()) {
      written = with(written, "job.vehicle", arguments.value(VEHICLE).get());
    }
    for (String gone : List.of("job.note", "job.customer_note", "terms.start")) {
      if (document.node(gone).isPresent()) {
        written = written.without(gone);
      }
    }
    String text = written.text();
    JobReader.read(JobDocument.of(file.toString(), text));
    SafeFile.write(file, text);
    print(
        "Wrote "
            + file
            + ", job "
            + number
            + ", from "
            + old
            + ". Notes and the day of the start were left out. Every measurement is that of the old"
            + " vehicle: measure again what may differ (trammel start --sheet), then trammel check "
            + file
            + ".\n",
        Map.of("job", number, "file", file.toString(), "from", old.toString()));
    return ExitCode.DONE;
  }

  private String needed(String option) {
    return arguments
        .value(option)
        .orElseThrow(
            () -> CommandFailure.badInput("book again needs " + option + " for the new job."));
  }

  private static WrittenDocument with(WrittenDocument written, String path, String text) {
    return written.with(path, new TextNode(new Location(JobDocument.VARY, 0, 0, path), text));
  }

  private static String text(Path job) {
    try {
      return Files.readString(job);
    } catch (IOException unread) {
      throw CommandFailure.couldNotRead(job, unread);
    }
  }

  // A customer's data

  private ExitCode forget() {
    openShop(Path.of(arguments.value(SHOP).orElse("")));
    String who = words.get(1);
    boolean apply = arguments.has(APPLY);
    Set<String> known = new LinkedHashSet<>();
    if (shop.hasAnything()) {
      try (Ledger ledger = open()) {
        for (JobBook.Heading job : ledger.book().jobs()) {
          if (!job.isForgotten()
              && (job.number().equals(who) || CustomerData.isSame(job.customer(), who))) {
            known.add(job.number());
          }
        }
      }
    }
    CustomerData data = CustomerData.of(folder, who, known);
    if (known.isEmpty() && data.files().isEmpty()) {
      throw CommandFailure.badInput(
          "Neither the ledger nor a job file in "
              + folder
              + " is of '"
              + who
              + "'; give a customer's name as it is written there, or a job's number.");
    }
    List<Path> left = new ArrayList<>();
    if (apply) {
      if (!known.isEmpty()) {
        try (Ledger ledger = open()) {
          ledger.asOne(
              () -> {
                known.forEach(ledger.book()::forget);
                return null;
              });
        }
      }
      left.addAll(data.delete());
    }
    print(forgetText(data, known, left, apply), forgetJson(data, known, left, apply));
    return left.isEmpty() ? ExitCode.DONE : ExitCode.FAULT;
  }

  private static String forgetText(
      CustomerData data, Set<String> known, List<Path> left, boolean apply) {
    StringBuilder text = new StringBuilder(apply ? "DELETED\n" : "WOULD BE DELETED\n");
    if (!known.isEmpty()) {
      text.append("  in the ledger: customer, vehicle, stages and every word of job ")
          .append(String.join(", ", known))
          .append("\n    numbers, days, amounts and hours stay, as the books need them\n");
    }
    data.files().forEach(file -> text.append("  ").append(file).append('\n'));
    if (!left.isEmpty()) {
      text.append("COULD NOT BE DELETED\n");
      left.forEach(file -> text.append("  ").append(file).append('\n'));
    }
    if (!data.copies().isEmpty()) {
      text.append("STILL IN, delete them yourself and make new backups:\n");
      data.copies().forEach(file -> text.append("  ").append(file).append('\n'));
    }
    text.append(
        "Invoices may have to be kept for years by law: print them before. Files elsewhere, papers"
            + " and mail are not found by this.\n");
    return text.append(apply ? "" : "Nothing is deleted yet: give --apply.\n").toString();
  }

  private static Map<String, Object> forgetJson(
      CustomerData data, Set<String> known, List<Path> left, boolean apply) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("jobs_in_ledger", List.copyOf(known));
    json.put("files", data.files().stream().map(Path::toString).toList());
    json.put("copies_of_the_ledger", data.copies().stream().map(Path::toString).toList());
    json.put("not_deleted", left.stream().map(Path::toString).toList());
    json.put("deleted", apply);
    return json;
  }
}
