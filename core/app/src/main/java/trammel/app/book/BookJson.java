package trammel.app.book;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.ledger.JobBook;
import trammel.ledger.Ledger;
import trammel.ledger.Offer;
import trammel.ledger.PriceHistory;
import trammel.ledger.Purchases;
import trammel.ledger.Tacking;
import trammel.ledger.Written;

/** The shop's whole book, each thing with the moment at which it was written down. */
public final class BookJson {
  private static final String WRITTEN = "written";
  private static final String WHO = "who";

  private BookJson() {}

  /** A line for each job, the latest first. */
  public static List<Map<String, Object>> jobs(Ledger ledger) {
    List<Map<String, Object>> jobs = new ArrayList<>();
    for (JobBook.Heading heading : ledger.book().jobs()) {
      Course course = Course.of(ledger, heading.number()).orElseThrow();
      Map<String, Object> json = CourseJson.course(course);
      json.keySet()
          .retainAll(
              List.of("job", "customer", "vehicle", "state", "agreed", "paid", "left", "currency"));
      course.latestQuote().ifPresent(quote -> json.put("total", total(course, quote)));
      jobs.add(0, json);
    }
    return jobs;
  }

  private static BigDecimal total(Course course, Offer.Kept quote) {
    return course.agreed().orElse(quote.offer()).total().amount();
  }

  /**
   * The course of a job as {@code book show --json} says it; also what changed in each offer
   * against the one before, why promises were moved, what came of its orders, and when each was
   * written down.
   */
  public static Map<String, Object> job(Ledger ledger, Course course) {
    String number = course.job().number();
    Map<String, Object> json = CourseJson.course(course);
    json.put("offers", offers(ledger, course));
    List<Object> payments = new ArrayList<>();
    for (Written<JobBook.Paid> paid : ledger.book().writtenPayments(number)) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("on", paid.what().paidOn().toString());
      row.put("amount", paid.what().amount().amount());
      row.put("note", paid.what().note());
      row.put(WRITTEN, paid.at());
      row.put(WHO, paid.who());
      payments.add(row);
    }
    json.put("payments", payments);
    List<Object> said = new ArrayList<>();
    for (Written<JobBook.Stage> stage : ledger.book().writtenStages(number)) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("stage", stage.what().title());
      row.put("word", stage.what().word().word());
      row.put("day", stage.what().day().toString());
      row.put("why", stage.what().why());
      row.put(WRITTEN, stage.at());
      row.put(WHO, stage.who());
      said.add(row);
    }
    json.put("said", said);
    List<Object> tackings = new ArrayList<>();
    for (Written<Tacking> tacking : ledger.tackings().of(number)) {
      Map<String, Object> row = CourseJson.tacking(tacking.what());
      row.put(WRITTEN, tacking.at());
      row.put(WHO, tacking.who());
      tackings.add(row);
    }
    json.put("tackings", tackings);
    json.put("orders", orders(ledger, course.purchases()));
    return json;
  }

  private static List<Object> offers(Ledger ledger, Course course) {
    List<Object> offers = new ArrayList<>();
    List<Written<Offer.Kept>> written = ledger.book().writtenOffers(course.job().number());
    for (int i = 0; i < course.offers().size(); i++) {
      Offer.Kept kept = course.offers().get(i);
      Map<String, Object> row = CourseJson.offer(course.job().number(), kept);
      row.put(WRITTEN, written.get(i).at());
      row.put(WHO, written.get(i).who());
      before(course, i)
          .ifPresent(
              before -> {
                row.put("before", before.name(course.job().number()));
                row.put("changes", CourseJson.difference(OfferDifference.of(before, kept.offer())));
              });
      offers.add(row);
    }
    return offers;
  }

  /** A revision takes the place of the quote before; a change order changes what was agreed. */
  private static Optional<Offer> before(Course course, int index) {
    boolean quote = course.offers().get(index).offer().kind() == Offer.Kind.QUOTE;
    for (int i = index - 1; i >= 0; i--) {
      Offer.Kept one = course.offers().get(i);
      boolean fits =
          quote
              ? one.offer().kind() == Offer.Kind.QUOTE && one.droppedOn().isEmpty()
              : one.acceptedOn().isPresent();
      if (fits) {
        return Optional.of(one.offer());
      }
    }
    return Optional.empty();
  }

  /** Orders with what came of each line, and when. */
  public static List<Object> orders(Ledger ledger, List<Purchases.Purchase> purchases) {
    List<Object> orders = new ArrayList<>();
    for (Purchases.Purchase purchase : purchases) {
      Map<String, Object> json = CourseJson.purchase(purchase);
      List<Object> receipts = new ArrayList<>();
      for (Written<Purchases.Received> received : ledger.purchases().received(purchase.number())) {
        Purchases.Receipt what = received.what().what();
        Purchases.Line line = purchase.lines().get(what.line() - 1);
        Map<String, Object> row = new LinkedHashMap<>();
        row.put("line", what.line());
        row.put("title", line.title());
        row.put("quantity", what.quantity());
        row.put("unit", line.unit());
        row.put("on", received.what().receivedOn().toString());
        row.put("note", what.note());
        row.put(WRITTEN, received.at());
        row.put(WHO, received.who());
        receipts.add(row);
      }
      json.put("receipts", receipts);
      orders.add(json);
    }
    return orders;
  }

  /** A price that changed. */
  public static Map<String, Object> price(PriceHistory.Entry entry) {
    PriceHistory.Change change = entry.change();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("item", change.item());
    json.put("length_mm", change.lengthMm());
    json.put("width_mm", change.widthMm());
    json.put("price_of", change.of().word());
    json.put("from_number", change.from());
    change.was().ifPresent(was -> json.put("was", was));
    json.put("price", change.price());
    json.put("currency", change.currency());
    json.put("priced_on", change.pricedOn().toString());
    json.put("source", change.source());
    json.put(WRITTEN, entry.at());
    json.put(WHO, entry.who());
    return json;
  }
}
