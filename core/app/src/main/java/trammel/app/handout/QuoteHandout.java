package trammel.app.handout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import trammel.app.documents.CostDocument;
import trammel.app.documents.CutDocument;
import trammel.app.documents.FloorDocument;
import trammel.app.documents.HandoverDocument;
import trammel.app.documents.JobPaper;
import trammel.app.documents.MeasuringDocument;
import trammel.app.documents.OrderDocument;
import trammel.app.documents.PaperDocument;
import trammel.app.documents.QuoteDocument;
import trammel.app.documents.QuoteOption;
import trammel.app.documents.RecordDocument;
import trammel.app.documents.TrueScale;
import trammel.app.drawings.ArrangementSheet;
import trammel.app.drawings.ChartSheet;
import trammel.app.drawings.Drawing;
import trammel.app.drawings.LayoutView;
import trammel.app.drawings.ViewKey;
import trammel.app.files.FileSet;
import trammel.app.fitup.FitUpForm;
import trammel.app.paper.PdfSheets;
import trammel.app.paper.Png;
import trammel.app.travel.TravelPlot;
import trammel.app.travel.TravelStudy;
import trammel.cutting.background.Background;
import trammel.planning.estimate.Estimate;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.job.JobHeader;
import trammel.planning.order.MaterialOrder;
import trammel.reading.quantity.UnitSystem;

/** Everything a job hands out: to the customer, to the office, to the floor and to the machines. */
public final class QuoteHandout {
  private final JobPaper paper;
  private final List<QuoteOption> options;
  private final MaterialOrder order;
  private final UnitSystem units;

  /**
   * @param paper the job
   * @param options other ways to do it
   * @param order its material order
   */
  public QuoteHandout(JobPaper paper, List<QuoteOption> options, MaterialOrder order) {
    this.paper = paper;
    this.options = List.copyOf(options);
    this.order = order;
    units = paper.amounts().printer().system();
  }

  /** All files; the documents are set on both cores. */
  public FileSet files() {
    FitUpSheet sheet = FitUpSheet.of(paper.estimate().draft());
    Map<String, PaperDocument> documents = documents(sheet);
    List<String> names = new ArrayList<>(documents.keySet());
    Background<Map<String, byte[]>> others = Background.start(() -> set(documents, names, 1));
    Map<String, byte[]> set = set(documents, names, 0);
    FileSet files = new FileSet();
    addDrawings(files);
    set.putAll(others.get());
    for (String name : names) {
      files.add(name + ".pdf", set.get(name + ".pdf"));
      files.add(name + ".html", set.get(name + ".html"));
    }
    String number = paper.estimate().draft().job().header().number();
    files.add("floor/fitup.csv", FitUpForm.csv(number, sheet, paper.amounts().printer()));
    new CutFiles(paper.estimate(), paper.stops(), units).addTo(files);
    return files;
  }

  private Map<String, PaperDocument> documents(FitUpSheet sheet) {
    Map<String, PaperDocument> documents = new LinkedHashMap<>();
    documents.put("customer/quote", new QuoteDocument(paper, options, order).document());
    documents.put("floor/floor-packet", new FloorDocument(paper, sheet).document());
    documents.put("office/cost-sheet", new CostDocument(paper).document());
    documents.put("floor/cut-lists", new CutDocument(paper).document());
    JobHeader header = paper.estimate().draft().job().header();
    documents.put(
        "office/material-order",
        OrderDocument.of(
            List.of(header.number()), order, header.date(), paper.catalog(), units, paper.stops()));
    documents.put("floor/as-built-record", new RecordDocument(paper, sheet).document());
    documents.put("customer/handover", new HandoverDocument(paper).document());
    documents.put("floor/measuring-sheet", MeasuringDocument.of(paper.shop(), units));
    return documents;
  }

  private static Map<String, byte[]> set(
      Map<String, PaperDocument> documents, List<String> names, int first) {
    Map<String, byte[]> set = new LinkedHashMap<>();
    for (int i = first; i < names.size(); i += 2) {
      PaperDocument document = documents.get(names.get(i));
      set.put(names.get(i) + ".pdf", document.pdf());
      set.put(names.get(i) + ".html", document.html());
    }
    return set;
  }

  private void addDrawings(FileSet files) {
    List<LayoutView> views = FloorDocument.views(paper);
    ViewKey key = FloorDocument.viewKey(paper);
    for (LayoutView view : views) {
      String name =
          "drawings/" + view.viewpoint().name().toLowerCase(java.util.Locale.ROOT) + "-view";
      Drawing keyed = key.under(view);
      files.add(name + ".svg", keyed.svg());
      files.add(name + ".png", Png.of(keyed));
    }
    List<Drawing> onPaper = new ArrayList<>(views);
    onPaper.add(key);
    files.add(
        "drawings/views.pdf",
        PdfSheets.onPaper(onPaper, TrueScale.paperWidthMm(units), TrueScale.paperHeightMm(units)));
    ArrangementSheet arrangement = FloorDocument.arrangement(paper);
    files.add("drawings/arrangement.svg", arrangement.svg());
    files.add("drawings/arrangement.pdf", PdfSheets.of(List.of(arrangement)));
    files.add("floor/shop-drawings.pdf", PdfSheets.of(FloorDocument.shopDrawings(paper)));
    Estimate estimate = paper.estimate();
    TravelStudy study = TravelStudy.of(estimate.draft().layout(), units);
    ChartSheet curves =
        new TravelPlot(study, units)
            .sheet(
                "Job " + estimate.draft().job().header().number() + ", through the travel",
                estimate.draft().job().header().vehicle(),
                paper.stops().line());
    files.add("drawings/travel.svg", curves.svg());
    files.add("drawings/travel.pdf", PdfSheets.of(List.of(curves)));
    files.add("floor/true-scale.pdf", PdfSheets.of(TrueScale.of(estimate, units, paper.stops())));
  }
}
