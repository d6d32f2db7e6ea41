package trammel.app.commands;

import java.util.ArrayList;
import java.util.List;
import trammel.app.commandline.Screen;
import trammel.app.desk.Workbench;
import trammel.app.documents.JobPaper;
import trammel.app.documents.QuoteOption;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.handout.QuoteHandout;
import trammel.app.text.Amounts;
import trammel.cutting.background.Background;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.SpringMount;
import trammel.planning.extension.UnworkableLayoutException;
import trammel.planning.job.JobDocument;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.tree.BadInputException;
import trammel.trade.money.Money;

/** Writes the folder that a shop hands out with a quote. */
final class QuoteFolder {
  private static final int MOST_OPTIONS = 3;

  private final Workbench bench;
  private final Screen screen;
  private final boolean quiet;

  QuoteFolder(Workbench bench, Screen screen, boolean quiet) {
    this.bench = bench;
    this.screen = screen;
    this.quiet = quiet;
  }

  void write(OutFolder folder, Estimate estimate, List<CheckResult> results) {
    Draft draft = estimate.draft();
    tell("Working out other ways to do the job ...");
    List<QuoteOption> options = options(draft, estimate.price().total());
    tell("Drawing and setting the documents ...");
    Amounts amounts = new Amounts(bench.shown(draft.job()));
    JobPaper paper = new JobPaper(estimate, results, bench.catalog().shop().name(), amounts);
    FileSet files =
        new QuoteHandout(
                paper,
                options,
                new Ordering(bench.catalog(), amounts.printer())
                    .order(List.of(OrderedJob.of(estimate))))
            .files();
    OutFolder.Written written = folder.write(files);
    CommonOptions.tellRemarks(written, screen);
    tell("Wrote " + written.files().size() + " files to " + folder.path());
  }

  private void tell(String line) {
    if (!quiet) {
      screen.err().println(line);
      screen.err().flush();
    }
  }

  private record Way(String label, JobDocument document) {}

  /** Other springs, then other choices of the linkage; what does not fit is left out. */
  private List<QuoteOption> options(Draft draft, Money quoted) {
    JobDocument document = draft.job().source();
    List<Way> ways = new ArrayList<>();
    for (SpringMount spring : bench.extensions().extensions().springs()) {
      if (!spring.id().equals(draft.spring().id())) {
        JobDocument other =
            document
                .withValue("chosen.spring", spring.id())
                .withValue("chosen.spring_options", "{}");
        ways.add(new Way(spring.title(), other));
      }
    }
    addChoices(ways, draft, document);
    List<Background<List<QuoteOption>>> tries = new ArrayList<>();
    for (Way way : ways.subList(0, Math.min(MOST_OPTIONS, ways.size()))) {
      tries.add(Background.start(() -> tried(way)));
    }
    List<QuoteOption> options = new ArrayList<>();
    for (Background<List<QuoteOption>> one : tries) {
      for (QuoteOption option : one.get()) {
        // What costs the customer the same is the shop's own choice.
        if (!option.estimate().price().total().equals(quoted)) {
          options.add(option);
        }
      }
    }
    return options;
  }

  private void addChoices(List<Way> ways, Draft draft, JobDocument document) {
    AxleLinkage linkage = draft.linkage();
    for (Field<?> field : linkage.options(bench.catalog())) {
      if (field.kind() == FieldKind.CHOICE) {
        String chosen = String.valueOf(draft.linkageSite().options().get(field));
        for (String choice : field.choices()) {
          if (!choice.equals(chosen)) {
            String path = "chosen.linkage_options." + field.key();
            ways.add(
                new Way(
                    field.key().replace('_', ' ') + ": " + choice,
                    document.withValue(path, choice)));
          }
        }
      }
    }
  }

  private List<QuoteOption> tried(Way way) {
    try {
      Draft draft = bench.draft(way.document());
      Estimate estimate = bench.estimate(draft);
      return List.of(new QuoteOption(way.label(), estimate, draft.judge().judge(draft.layout())));
    } catch (UnworkableLayoutException | BadInputException unfit) {
      return List.of();
    }
  }
}
