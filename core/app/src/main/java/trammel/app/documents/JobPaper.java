package trammel.app.documents;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.drawings.PartNumbers;
import trammel.app.drawings.PartWords;
import trammel.app.drawings.TitleBlock;
import trammel.app.drawings.VehicleScene;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.app.text.Stops;
import trammel.engine.checks.CheckResult;
import trammel.planning.catalog.Catalog;
import trammel.planning.catalog.Shop;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.JobHeader;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;

/**
 * What the documents of one job share.
 *
 * @param estimate the job
 * @param results its checks, worst first
 * @param catalog the shop whose papers they are, and its suppliers
 * @param amounts prints values in the reader's units
 * @param scene the finished vehicle
 */
public record JobPaper(
    Estimate estimate,
    List<CheckResult> results,
    Catalog catalog,
    Amounts amounts,
    VehicleScene scene) {
  private static final int LONGEST_FOOT = 60;

  /** Copies the list. */
  public JobPaper {
    results = List.copyOf(results);
  }

  /** The shop. */
  Shop house() {
    return catalog.shop();
  }

  /** Name of the shop. */
  public String shop() {
    return house().name();
  }

  Draft draft() {
    return estimate.draft();
  }

  JobHeader header() {
    return draft().job().header();
  }

  QuantityPrinter printer() {
    return amounts.printer();
  }

  PartNumbers numbers() {
    return new PartNumbers(draft().layout());
  }

  /** Says in plain words what bars, springs and shocks are called by. */
  PartWords words() {
    return new PartWords(draft().layout());
  }

  /** A document that stays in the shop, its heading filled in. */
  DocumentModel model(String heading) {
    return model(heading, header().note());
  }

  /** A document for the customer: the shop's letterhead, and not the shop's own note. */
  DocumentModel customerModel(String heading) {
    DocumentModel model = model(heading, header().customerNote());
    model.put(house().letterhead());
    return model;
  }

  private DocumentModel model(String heading, Optional<String> note) {
    DocumentModel model = new DocumentModel();
    JobHeader header = header();
    model.put("heading", heading);
    model.put("title", heading + " " + header.number());
    model.put("foot", shortened(stops().before(heading + ", job " + header.number())));
    Map<String, Object> job = new LinkedHashMap<>();
    job.put("number", header.number());
    job.put("date", header.date().toString());
    job.put("customer", header.customer());
    job.put("vehicle", header.vehicle());
    job.put("shopLabel", "shop");
    job.put("shop", shop());
    job.put("layout", draft().linkage().title() + "; " + draft().spring().title());
    job.put("note", note.orElse(""));
    model.put("job", job);
    model.put(stops());
    model.put("cautions", DocumentModel.texts(Cautions.lines(printer().system())));
    return model;
  }

  /** The title block of one of its sheets. */
  TitleBlock block(String title, int sheet, int sheets) {
    return new TitleBlock(
        shop(),
        header().number(),
        header().vehicle(),
        title,
        header().date().toString(),
        printer().system() == UnitSystem.US ? "inches" : "millimetres",
        sheet,
        sheets);
  }

  PaperDocument document(String template, DocumentModel model) {
    return new PaperDocument(template, model, printer().system());
  }

  static String shortened(String text) {
    return text.length() <= LONGEST_FOOT ? text : text.substring(0, LONGEST_FOOT - 1) + "…";
  }

  /** What the checks say stop to. */
  public Stops stops() {
    return Stops.of(header().number(), results, amounts);
  }
}
