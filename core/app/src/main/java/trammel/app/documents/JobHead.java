package trammel.app.documents;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import trammel.app.text.Stops;
import trammel.ledger.JobBook;
import trammel.planning.catalog.Shop;

/** The heading of a paper about a job of which the ledger tells: letterhead, job, customer. */
final class JobHead {
  private JobHead() {}

  static DocumentModel model(
      Shop shop, JobBook.Heading job, LocalDate day, String heading, Stops stops) {
    DocumentModel model = new DocumentModel();
    model.put("heading", heading);
    model.put("title", heading + ", job " + job.number());
    model.put("foot", JobPaper.shortened(stops.before(heading + ", job " + job.number())));
    model.put(shop.letterhead());
    Map<String, Object> head = new LinkedHashMap<>();
    head.put("number", job.number());
    head.put("date", day.toString());
    head.put("customer", job.customer());
    head.put("vehicle", job.vehicle());
    head.put("shopLabel", "shop");
    head.put("shop", shop.name());
    head.put("layout", "");
    head.put("note", "");
    model.put("job", head);
    model.put(stops);
    return model;
  }
}
