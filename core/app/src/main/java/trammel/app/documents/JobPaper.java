package trammel.app.documents;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.drawings.PartNumbers;
import trammel.app.text.Amounts;
import trammel.app.text.Cautions;
import trammel.engine.checks.CheckResult;
import trammel.engine.checks.CheckResult.Judged;
import trammel.engine.checks.Verdict;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.job.JobHeader;
import trammel.reading.quantity.QuantityPrinter;

/**
 * What the documents of one job share.
 *
 * @param estimate the job
 * @param results its checks, worst first
 * @param shop name of the shop
 * @param amounts prints values in the reader's units
 */
public record JobPaper(Estimate estimate, List<CheckResult> results, String shop, Amounts amounts) {
  private static final int LONGEST_FOOT = 60;

  /** Copies the list. */
  public JobPaper {
    results = List.copyOf(results);
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

  /** A document of this job with its heading filled in. */
  DocumentModel model(String heading) {
    DocumentModel model = new DocumentModel();
    JobHeader header = header();
    model.put("heading", heading);
    model.put("title", heading + " " + header.number());
    model.put("foot", shortened(heading + ", job " + header.number()));
    Map<String, Object> job = new LinkedHashMap<>();
    job.put("number", header.number());
    job.put("date", header.date().toString());
    job.put("customer", header.customer());
    job.put("vehicle", header.vehicle());
    job.put("shopLabel", "shop");
    job.put("shop", shop);
    job.put("layout", draft().linkage().title() + "; " + draft().spring().title());
    job.put("note", header.note().orElse(""));
    model.put("job", job);
    model.put("cautions", DocumentModel.texts(Cautions.lines()));
    return model;
  }

  PaperDocument document(String template, DocumentModel model) {
    return new PaperDocument(template, model, printer().system());
  }

  static String shortened(String text) {
    return text.length() <= LONGEST_FOOT ? text : text.substring(0, LONGEST_FOOT - 1) + "…";
  }

  /** The judged checks with one verdict. */
  List<Judged> judged(Verdict verdict) {
    List<Judged> found = new ArrayList<>();
    for (CheckResult result : results) {
      if (result instanceof Judged judged && judged.verdict() == verdict) {
        found.add(judged);
      }
    }
    return found;
  }

  /** A check in one sentence: the number, what it is, where, and its limit. */
  String sentence(Judged judged) {
    return amounts.value(judged.measure(), judged.value())
        + " "
        + judged.title()
        + (judged.where().isEmpty() ? "" : " (" + judged.where() + ")")
        + "; good "
        + amounts.good(judged.measure(), judged.limit());
  }

  /** The sentences of all checks with one verdict. */
  List<Map<String, Object>> sentences(Verdict verdict) {
    List<String> sentences = new ArrayList<>();
    for (Judged judged : judged(verdict)) {
      sentences.add(sentence(judged));
    }
    return DocumentModel.texts(sentences);
  }
}
