package trammel.app.commands.book;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import trammel.app.book.CourseJson;
import trammel.app.book.CourseText;
import trammel.app.book.OfferDifference;
import trammel.app.documents.OfferDocument;
import trammel.app.documents.PaperDocument;
import trammel.app.files.FileSet;
import trammel.app.text.Stops;
import trammel.ledger.JobBook;
import trammel.ledger.Offer;
import trammel.planning.catalog.Shop;
import trammel.reading.quantity.UnitSystem;

/**
 * An offer as it is told: on a screen, for machines and on paper.
 *
 * @param job whose job it is
 * @param offer the offer
 * @param before the offer that it takes the place of, or is a change to
 * @param stops what the checks say stop to as the job is now
 */
record OfferPaper(JobBook.Heading job, Offer offer, Optional<Offer> before, Stops stops) {
  private boolean isChange() {
    return offer.kind() == Offer.Kind.CHANGE;
  }

  private String name() {
    return offer.name(job.number());
  }

  private Optional<OfferDifference> difference() {
    return before.map(earlier -> OfferDifference.of(earlier, offer));
  }

  /** What is other, as a paper; no files for a first quote. */
  FileSet papers(Shop shop, UnitSystem units) {
    FileSet files = new FileSet();
    if (before.isPresent()) {
      PaperDocument paper = OfferDocument.of(shop, job, difference().orElseThrow(), stops, units);
      String file = (isChange() ? "change-order-C" : "revision-") + offer.count();
      files.add(file + ".pdf", paper.pdf()).add(file + ".html", paper.html());
    }
    return files;
  }

  /**
   * On a screen.
   *
   * @param ledger where it is kept
   */
  String text(Path ledger) {
    StringBuilder text = new StringBuilder();
    text.append(isChange() ? "CHANGE ORDER " : "QUOTE ").append(name());
    text.append("  ").append(offer.total().text()).append(" with tax\n");
    if (!stops.isEmpty()) {
      text.append(stops.text().stripTrailing()).append('\n');
    }
    difference()
        .ifPresent(
            difference ->
                text.append("\nSINCE ")
                    .append(difference.before().name(job.number()))
                    .append('\n')
                    .append(CourseText.difference(difference)));
    text.append("\nKept in ").append(ledger).append(". Next: trammel book accept ");
    text.append(job.number()).append(isChange() ? " C" + offer.count() : "").append('\n');
    return text.toString();
  }

  /**
   * For machines.
   *
   * @param ledger where it is kept
   */
  Map<String, Object> json(Path ledger) {
    Map<String, Object> json = new LinkedHashMap<>();
    json.put("job", job.number());
    json.put("number", name());
    json.put("total", offer.total().amount());
    difference()
        .ifPresent(
            difference -> {
              json.put("since", difference.before().name(job.number()));
              json.put("difference", CourseJson.difference(difference));
            });
    json.put("ledger", ledger.toString());
    return json;
  }
}
