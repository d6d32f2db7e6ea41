package trammel.app.documents;

import java.util.ArrayList;
import java.util.List;
import trammel.app.book.OfferDifference;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.Stops;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.planning.catalog.Shop;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.money.Money;

/** A change order to be signed, or what is other in a revision of a quote. */
public final class OfferDocument {
  /** Less is not worth a word (h). */
  private static final double LEAST_HOURS = 0.05;

  private final Shop shop;
  private final JobBook.Heading job;
  private final OfferDifference difference;

  private OfferDocument(Shop shop, JobBook.Heading job, OfferDifference difference) {
    this.shop = shop;
    this.job = job;
    this.difference = difference;
  }

  /**
   * The document.
   *
   * @param shop whose paper it is
   * @param job whose job it is
   * @param difference what is other
   * @param stops what the checks say stop to as the job is now
   * @param units which paper to print it on
   */
  public static PaperDocument of(
      Shop shop, JobBook.Heading job, OfferDifference difference, Stops stops, UnitSystem units) {
    return new OfferDocument(shop, job, difference).document(stops, units);
  }

  private boolean isChange() {
    return difference.after().kind() == Offer.Kind.CHANGE;
  }

  private PaperDocument document(Stops stops, UnitSystem units) {
    Offer offer = difference.after();
    String heading =
        isChange()
            ? "Change order " + offer.name(job.number())
            : "Quote, revision " + offer.count() + ": what changed";
    DocumentModel model = JobHead.model(shop, job, offer.givenOn(), heading, stops);
    model.put("amount", difference.total().signedText());
    model.put(
        "amountWords",
        isChange()
            ? "with tax, on top of what was agreed so far"
            : "with tax, against revision " + difference.before().count());
    model.put("why", offer.why());
    model.put("changes", changes());
    model.put("prices", prices());
    model.put("terms", DocumentModel.texts(terms()));
    model.put("sign", isChange());
    model.put("cautions", DocumentModel.texts(Cautions.lines(units)));
    return new PaperDocument("offer", model, units);
  }

  private Grid changes() {
    Grid grid = new Grid("lll", new int[] {52, 24, 24}, "part or work", "before", "now");
    for (OfferDifference.Row row : difference.rows()) {
      if (!row.isFollowing()) {
        grid.row(
            row.title(),
            row.before().map(Offer.Line::quantity).orElse("none"),
            row.after().map(Offer.Line::quantity).orElse("none"));
      }
    }
    return grid;
  }

  private Grid prices() {
    Offer before = difference.before();
    Offer after = difference.after();
    Grid grid =
        new Grid(
            "lrrr",
            new int[] {40, 20, 20, 20},
            "",
            "before",
            "now",
            isChange() ? "this order" : "difference");
    for (String title : CustomerClasses.of(before, after)) {
      row(grid, title, CustomerClasses.sum(before, title), CustomerClasses.sum(after, title));
    }
    row(grid, "before tax", before.subtotal(), after.subtotal());
    row(grid, after.taxName(), before.tax(), after.tax());
    if (!difference.rounding().isZero()) {
      row(grid, "rounding", before.rounding(), after.rounding());
    }
    grid.total(
        "with tax", before.total().text(), after.total().text(), difference.total().signedText());
    return grid;
  }

  private static void row(Grid grid, String title, Money before, Money after) {
    grid.row(title, before.text(), after.text(), after.minus(before).signedText());
  }

  private List<String> terms() {
    List<String> terms = new ArrayList<>();
    double hours = difference.hours();
    if (isChange()) {
      terms.add("The change is done after both have signed, and not before.");
      if (Math.abs(hours) >= LEAST_HOURS) {
        terms.add(
            "It takes about "
                + Amounts.fixed(Math.abs(hours), 1)
                + " h "
                + (hours < 0 ? "less." : "more."));
      }
      terms.add("It is paid, or taken off, with the balance unless agreed otherwise.");
      terms.add("Everything else stays as it was agreed.");
    } else {
      terms.add("This takes the place of revision " + difference.before().count() + ".");
      difference
          .after()
          .payments()
          .forEach(payment -> terms.add(payment.amount().text() + ": " + payment.at() + "."));
    }
    return terms;
  }
}
