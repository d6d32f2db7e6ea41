package trammel.app.commands;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Screen;
import trammel.app.desk.Workbench;
import trammel.app.documents.JobDocuments;
import trammel.app.documents.QuoteOption;
import trammel.app.files.FileSet;
import trammel.app.fitup.FitUpForm;
import trammel.app.handout.CutFiles;
import trammel.engine.checks.LayoutAnalysis;
import trammel.planning.document.BadInputException;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.extension.UnworkableLayoutException;
import trammel.planning.fitup.FitUpSheet;
import trammel.planning.job.JobDocument;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.planning.quantity.QuantityPrinter;
import trammel.planning.quantity.UnitSystem;

/** The folder of a quote: documents, orders, and what the floor, saw and cutting table need. */
final class HandOut {
  private static final String MOUNTING = "chosen.linkage_options.mounting";

  private HandOut() {}

  static void write(Path folder, Workbench bench, Estimate estimate, Screen screen) {
    Draft draft = estimate.draft();
    UnitSystem units = bench.shown(draft.job());
    QuantityPrinter printer = new QuantityPrinter(units);
    MaterialOrder order =
        new Ordering(bench.catalog(), printer).order(List.of(OrderedJob.of(estimate)));
    LayoutAnalysis analysis = new LayoutAnalysis(draft.layout(), bench.catalog().analysis());
    FileSet files = new FileSet();
    new JobDocuments(estimate, analysis, bench.catalog().shop().name(), units)
        .addTo(files, order, options(bench, draft, estimate));
    files.add("fitup.csv", FitUpForm.csv(FitUpSheet.of(draft), printer));
    FileSet cutting = new FileSet();
    new CutFiles(estimate).addTo(cutting);
    files.add("cutting", cutting);
    List<Path> written = files.write(folder);
    screen.err().println("Wrote " + written.size() + " files to " + folder);
  }

  /** The same job with the bars on the other side of the rails, where that fits. */
  private static List<QuoteOption> options(Workbench bench, Draft draft, Estimate estimate) {
    List<QuoteOption> options = new ArrayList<>();
    JobDocument document = draft.job().source();
    for (String mounting : List.of("inboard", "outboard")) {
      try {
        Estimate other = bench.estimate(bench.draft(document.withValue(MOUNTING, mounting)));
        if (!other.price().total().equals(estimate.price().total())) {
          options.add(
              new QuoteOption(
                  "bars " + mounting + " of the rails",
                  other.price().total(),
                  other.hours().meanHours()));
        }
      } catch (UnworkableLayoutException | BadInputException doesNotFit) {
        // What does not fit this vehicle or this linkage is no option to offer.
        continue;
      }
    }
    return options;
  }
}
