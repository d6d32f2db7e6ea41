package trammel.app.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.ledger.Purchases;
import trammel.ledger.Tacking;

/** The course of jobs for machines. */
public final class CourseJson {
  private CourseJson() {}

  /** One job. */
  public static Map<String, Object> course(Course course) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", course.job().number());
    json.put("customer", course.job().customer());
    json.put("vehicle", course.job().vehicle());
    json.put("state", course.state());
    List<Object> offers = new ArrayList<>();
    course.offers().forEach(kept -> offers.add(offer(course.job().number(), kept)));
    json.put("offers", offers);
    course.agreed().ifPresent(offer -> json.put("agreed", offer.total().amount()));
    course.paidTogether().ifPresent(paid -> json.put("paid", paid.amount()));
    course.left().ifPresent(left -> json.put("left", left.amount()));
    course
        .latestQuote()
        .ifPresent(quote -> json.put("currency", quote.offer().tax().currency().getCurrencyCode()));
    course.next().ifPresent(next -> json.put("next_payment", payment(next)));
    List<Object> payments = new ArrayList<>();
    for (JobBook.Paid paid : course.paid()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("on", paid.paidOn().toString());
      row.put("amount", paid.amount().amount());
      row.put("note", paid.note());
      payments.add(row);
    }
    json.put("payments", payments);
    List<Object> stages = new ArrayList<>();
    for (Course.StageState stage : course.stages()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("stage", stage.title());
      stage.promised().ifPresent(day -> row.put("promised", day.toString()));
      row.put("moved", Math.max(0, stage.moved()));
      stage.done().ifPresent(day -> row.put("done", day.toString()));
      stages.add(row);
    }
    json.put("stages", stages);
    List<Object> tackings = new ArrayList<>();
    course.tackings().forEach(tacking -> tackings.add(tacking(tacking)));
    json.put("tackings", tackings);
    List<Object> orders = new ArrayList<>();
    course.purchases().forEach(purchase -> orders.add(purchase(purchase)));
    json.put("orders", orders);
    course
        .closed()
        .ifPresent(
            closed -> {
              json.put("closed", closed.closed().toString());
              json.put("quoted_hours", closed.quotedHours());
              closed.wholeHours().ifPresent(hours -> json.put("used_hours", hours));
            });
    course.invoice().ifPresent(invoice -> json.put("invoice", invoice(invoice)));
    return json;
  }

  /** What was read after tacking at one time, and what it told the shop to do. */
  public static Map<String, Object> tacking(Tacking tacking) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", tacking.job());
    json.put("entry", tacking.count());
    json.put("on", tacking.tackedOn().toString());
    json.put("form", tacking.form());
    json.put("answer", tacking.answer().words());
    json.put("said", tacking.said());
    List<Object> readings = new ArrayList<>();
    for (Tacking.Reading reading : tacking.readings()) {
      boolean angle = reading.kind() == Tacking.Kind.ANGLE;
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("target", reading.target());
      row.put("unit", angle ? "deg" : "mm");
      row.put("set_to", angle ? Math.toDegrees(reading.planned()) : reading.planned());
      row.put("within", angle ? Math.toDegrees(reading.within()) : reading.within());
      row.put(
          "read",
          angle ? reading.values().stream().map(Math::toDegrees).toList() : reading.values());
      readings.add(row);
    }
    json.put("readings", readings);
    return json;
  }

  static Map<String, Object> offer(String job, Offer.Kept kept) {
    Offer offer = kept.offer();
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("kind", offer.kind().word());
    json.put("number", offer.name(job));
    json.put("given", offer.givenOn().toString());
    json.put("why", offer.why());
    kept.acceptedOn().ifPresent(day -> json.put("agreed", day.toString()));
    kept.droppedOn().ifPresent(day -> json.put("taken_back", day.toString()));
    json.put("subtotal", offer.subtotal().amount());
    json.put("tax", offer.tax().amount());
    json.put("rounding", offer.rounding().amount());
    json.put("total", offer.total().amount());
    json.put("mean_h", offer.meanHours());
    List<Object> payments = new ArrayList<>();
    offer.payments().forEach(payment -> payments.add(payment(payment)));
    json.put("payments", payments);
    return json;
  }

  private static Map<String, Object> payment(Offer.Payment payment) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("at", payment.at());
    json.put("amount", payment.amount().amount());
    return json;
  }

  /** What changed between two offers. */
  public static Map<String, Object> difference(OfferDifference difference) {
    Map<String, Object> json = new LinkedHashMap<>();
    List<Object> lines = new ArrayList<>();
    for (OfferDifference.Row row : difference.rows()) {
      Map<String, Object> line = new LinkedHashMap<>();
      line.put("line", row.key());
      line.put("title", row.title());
      line.put("class", row.costClass());
      row.before()
          .ifPresent(
              before -> {
                line.put("quantity_before", before.quantity());
                line.put("price_before", before.price().amount());
              });
      row.after()
          .ifPresent(
              after -> {
                line.put("quantity", after.quantity());
                line.put("price", after.price().amount());
              });
      line.put("difference", row.difference().amount());
      lines.add(line);
    }
    json.put("lines", lines);
    json.put("subtotal", difference.subtotal().amount());
    json.put("tax", difference.tax().amount());
    json.put("rounding", difference.rounding().amount());
    json.put("total", difference.total().amount());
    json.put("hours", difference.hours());
    return json;
  }

  /** An order with what came of it. */
  public static Map<String, Object> purchase(Purchases.Purchase purchase) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("order", purchase.number());
    json.put("supplier", purchase.supplier());
    json.put("placed", purchase.placedOn().toString());
    json.put("due", purchase.dueOn().toString());
    json.put("jobs", purchase.jobs());
    List<Object> lines = new ArrayList<>();
    for (Purchases.Line line : purchase.lines()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("item", line.item());
      row.put("title", line.title());
      row.put("unit", line.unit());
      row.put("ordered", line.quantity());
      row.put("received", line.received());
      row.put("to_come", line.outstanding());
      lines.add(row);
    }
    json.put("lines", lines);
    json.put("all_there", !purchase.isOpen());
    return json;
  }

  /** An invoice. */
  public static Map<String, Object> invoice(JobBook.Invoice invoice) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("number", CourseText.number(invoice));
    json.put("job", invoice.job());
    json.put("date", invoice.givenOn().toString());
    List<Object> lines = new ArrayList<>();
    for (JobBook.InvoiceLine line : invoice.lines()) {
      Map<String, Object> row = new LinkedHashMap<>();
      row.put("title", line.title());
      row.put("before_tax", line.before().amount());
      row.put("amount", line.amount().amount());
      lines.add(row);
    }
    json.put("lines", lines);
    json.put("total", invoice.total().amount());
    json.put("paid", invoice.paid().amount());
    json.put("balance", invoice.balance().amount());
    return json;
  }
}
