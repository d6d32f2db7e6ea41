package trammel.app.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import trammel.app.text.Amounts;
import trammel.app.text.Table;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.ledger.Purchases;
import trammel.ledger.Tacking;
import trammel.ledger.Tackings;
import trammel.planning.estimate.Counts;
import trammel.trade.money.Money;

/** The course of jobs on a screen. */
public final class CourseText {
  private CourseText() {}

  /** All jobs, a line each. */
  public static String jobs(List<Course> courses) {
    if (courses.isEmpty()) {
      return "No job was quoted yet: trammel book quote JOB keeps the quote of a job.\n";
    }
    Table table = new Table("lllrrr");
    table.row("job", "customer", "", "comes to", "paid", "left");
    for (Course course : courses) {
      table.row(
          course.job().number(),
          customer(course.job()),
          course.state(),
          course
              .agreed()
              .map(offer -> offer.total().text())
              .orElse(course.latestQuote().map(one -> one.offer().total().text()).orElse("")),
          course.agreed().isPresent() ? course.paidTogether().map(Money::text).orElse("") : "",
          course.left().map(Money::text).orElse(""));
    }
    return "JOBS\n" + table.text("  ");
  }

  private static String customer(JobBook.Heading job) {
    return job.isForgotten() ? "(data deleted)" : job.customer();
  }

  /** One job. */
  public static String course(Course course, LocalDate today) {
    StringBuilder text = new StringBuilder("JOB ").append(course.job().number());
    text.append("  ").append(customer(course.job()));
    if (!course.job().vehicle().isEmpty()) {
      text.append(", ").append(course.job().vehicle());
    }
    text.append("\n\nOFFERED\n").append(offers(course));
    if (!course.stages().isEmpty()) {
      text.append("\nSTAGES\n").append(stages(course, today));
    }
    if (!course.tackings().isEmpty()) {
      text.append("\nTACKED\n").append(tackings(course.tackings()));
    }
    if (!course.purchases().isEmpty()) {
      text.append("\nGOODS\n");
      course.purchases().forEach(purchase -> text.append(goods(purchase)));
    }
    if (course.agreed().isPresent()) {
      text.append("\nMONEY\n").append(money(course));
    }
    course
        .closed()
        .ifPresent(
            closed ->
                text.append("\nCLOSED ")
                    .append(closed.closed())
                    .append("  ")
                    .append(
                        closed.wholeHours().isPresent()
                            ? Amounts.fixed(closed.wholeHours().getAsDouble(), 1) + " h used, "
                            : "hours in parts, ")
                    .append(Amounts.fixed(closed.quotedHours(), 1))
                    .append(" h quoted\n"));
    return text.toString();
  }

  private static String offers(Course course) {
    Table table = new Table("lllrl");
    List<OfferDifference> differences = course.changeDifferences();
    int change = 0;
    for (Offer.Kept kept : course.offers()) {
      Offer offer = kept.offer();
      String amount = offer.total().text();
      if (offer.kind() == Offer.Kind.CHANGE && kept.acceptedOn().isPresent()) {
        amount = differences.get(change++).total().signedText();
      } else if (offer.kind() == Offer.Kind.CHANGE && kept.isOpen()) {
        amount = offer.total().minus(course.agreed().orElseThrow().total()).signedText();
      }
      table.row(
          offer.kind() == Offer.Kind.QUOTE
              ? "revision " + offer.count()
              : "change " + offer.name(course.job().number()),
          offer.givenOn().toString(),
          kept.acceptedOn()
              .map(day -> "agreed " + day)
              .orElse(
                  kept.droppedOn()
                      .map(day -> "taken back " + day)
                      .orElse(isReplaced(course, offer) ? "replaced" : "open")),
          amount,
          offer.why());
    }
    return table.text("  ");
  }

  private static boolean isReplaced(Course course, Offer offer) {
    return offer.kind() == Offer.Kind.QUOTE
        && course
            .latestQuote()
            .filter(latest -> latest.offer().count() > offer.count())
            .isPresent();
  }

  private static String stages(Course course, LocalDate today) {
    Table table = new Table("lll");
    for (Course.StageState stage : course.stages()) {
      long late = stage.daysLate(today);
      String done = stage.done().map(day -> "done " + day).orElse("");
      String lateWords = late > 0 ? Counts.of((int) late, "day") + " late" : "";
      table.row(
          stage.title(),
          stage.promised().map(day -> "promised " + day).orElse("no day promised")
              + (stage.moved() > 0 ? ", moved " + Counts.of(stage.moved(), "time") : ""),
          done + (done.isEmpty() || lateWords.isEmpty() ? "" : ", ") + lateWords);
    }
    return table.text("  ");
  }

  /** How often the answer became another, and what it says now. */
  private static String tackings(List<Tacking> tackings) {
    Table table = new Table("lrl");
    for (int i = 0; i < tackings.size(); i++) {
      Tacking one = tackings.get(i);
      boolean told = i + 1 == tackings.size() || tackings.get(i + 1).answer() != one.answer();
      if (told) {
        int targets = Tackings.standing(tackings.subList(0, i + 1)).size();
        table.row(
            one.tackedOn().toString(),
            Counts.of(targets, "target") + " read",
            one.answer().words());
      }
    }
    return table.text("  ");
  }

  /** An order and what of it is to come. */
  public static String goods(Purchases.Purchase purchase) {
    StringBuilder text =
        new StringBuilder("  ")
            .append(purchase.number())
            .append("  ")
            .append(purchase.supplier())
            .append(", placed ")
            .append(purchase.placedOn());
    if (!purchase.isOpen()) {
      return text.append(": all there\n").toString();
    }
    text.append(", due ").append(purchase.dueOn()).append("; to come:\n");
    Table table = new Table("rll");
    for (Purchases.Line line : purchase.lines()) {
      if (line.outstanding().signum() > 0) {
        table.row(
            plain(line.outstanding()),
            line.unit(),
            line.title()
                + (line.received().signum() > 0
                    ? " (" + plain(line.received()) + " of " + plain(line.quantity()) + " there)"
                    : ""));
      }
    }
    return text.append(table.text("    ")).toString();
  }

  static String plain(BigDecimal quantity) {
    return quantity.stripTrailingZeros().toPlainString();
  }

  private static String money(Course course) {
    Table table = new Table("lrl");
    table.row("agreed", course.agreed().orElseThrow().total().text(), "with tax");
    for (JobBook.Paid paid : course.paid()) {
      table.row(
          paid.amount().amount().signum() < 0 ? "given back" : "paid",
          paid.amount().text(),
          paid.paidOn() + (paid.note().isEmpty() ? "" : ", " + paid.note()));
    }
    Money left = course.left().orElseThrow();
    table.row("left", left.text(), left.amount().signum() < 0 ? "to be given back" : "");
    Optional<Offer.Payment> next = course.next();
    next.ifPresent(payment -> table.row("next", payment.amount().text(), payment.at()));
    course
        .invoice()
        .ifPresent(
            invoice ->
                table.row(
                    "invoice " + number(invoice),
                    invoice.total().text(),
                    "of " + invoice.givenOn()));
    return table.text("  ");
  }

  /** The invoice of a job that has one. */
  public static String invoice(Course course) {
    JobBook.Invoice invoice = course.invoice().orElseThrow();
    Table table = new Table("lr");
    invoice.lines().forEach(line -> table.row(line.title(), line.amount().text()));
    table.row("together, with tax", invoice.total().text());
    table.row("paid before", invoice.paid().text());
    table.row(
        invoice.balance().amount().signum() < 0 ? "to be given back" : "LEFT TO PAY",
        invoice.balance().text());
    return "INVOICE "
        + number(invoice)
        + " of "
        + invoice.givenOn()
        + ", job "
        + course.job().number()
        + "\n"
        + table.text("  ");
  }

  /** The number of an invoice as it stands on it. */
  public static String number(JobBook.Invoice invoice) {
    return String.format(Locale.ROOT, "%04d", invoice.number());
  }

  /** What changed between two offers. */
  public static String difference(OfferDifference difference) {
    if (difference.isNothing()) {
      return "  nothing of price or lines is other\n";
    }
    Offer before = difference.before();
    Offer after = difference.after();
    Table table = new Table("lrrr");
    table.row("", "before", "now", "difference");
    difference.rows().stream().filter(CourseText::isTold).forEach(row -> row(table, row));
    row(table, after.taxName(), before.tax(), after.tax());
    row(table, "rounding", before.rounding(), after.rounding());
    table.row(
        "TOTAL with tax",
        before.total().text(),
        after.total().text(),
        difference.total().signedText());
    return table.text("  ");
  }

  /** A line that would say twice the same says nothing. */
  private static boolean isTold(OfferDifference.Row row) {
    return !row.difference().isZero() || !row.isFollowing();
  }

  private static void row(Table table, OfferDifference.Row row) {
    table.row(
        row.isFollowing() ? row.title() : row.title() + ", " + quantities(row),
        row.before().map(line -> line.price().text()).orElse(""),
        row.after().map(line -> line.price().text()).orElse(""),
        row.difference().signedText());
  }

  private static void row(Table table, String title, Money before, Money after) {
    Money difference = after.minus(before);
    if (!difference.isZero()) {
      table.row(title, before.text(), after.text(), difference.signedText());
    }
  }

  static String quantities(OfferDifference.Row row) {
    String before = row.before().map(Offer.Line::quantity).orElse("none");
    String after = row.after().map(Offer.Line::quantity).orElse("none");
    return before.equals(after) ? after : before + " to " + after;
  }
}
