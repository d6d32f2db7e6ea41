package trammel.app.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import trammel.app.desk.Alternatives;
import trammel.app.desk.Workbench;
import trammel.app.documents.JobPaper;
import trammel.app.documents.QuoteOption;
import trammel.app.drawings.VehicleScene;
import trammel.app.files.FileSet;
import trammel.app.text.Amounts;
import trammel.cutting.background.Background;
import trammel.engine.checks.CheckResult;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.extension.AxleLinkage;
import trammel.planning.extension.PluginFaultException;
import trammel.planning.extension.SpringMount;
import trammel.planning.job.JobDocument;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.planning.vehicle.FinishedVehicle;
import trammel.reading.fields.Field;
import trammel.reading.fields.FieldKind;
import trammel.reading.tree.BadInputException;
import trammel.trade.money.Money;

/** Makes what a shop hands out with a quote, other ways to do the job among it. */
public final class QuoteFiles {
  private static final int MOST_OPTIONS = 3;

  private final Workbench bench;
  private final Consumer<String> progress;
  private final Consumer<String> leftOut;

  /**
   * @param bench where other ways are worked out
   * @param progress is told what is being done
   * @param leftOut is told which other way was left out for a plugin's fault
   */
  public QuoteFiles(Workbench bench, Consumer<String> progress, Consumer<String> leftOut) {
    this.bench = bench;
    this.progress = progress;
    this.leftOut = leftOut;
  }

  /**
   * All files.
   *
   * @param estimate the job
   * @param results its checks
   */
  public FileSet of(Estimate estimate, List<CheckResult> results) {
    Draft draft = estimate.draft();
    progress.accept("Working out other ways to do the job ...");
    List<QuoteOption> options = options(draft, estimate.price().total());
    progress.accept("Drawing and setting the documents ...");
    Amounts amounts = new Amounts(bench.shown(draft.job()));
    VehicleScene scene =
        new VehicleScene(FinishedVehicle.of(draft.layout(), bench.catalog(), estimate.plan()));
    JobPaper paper = new JobPaper(estimate, results, bench.catalog(), amounts, scene);
    return new QuoteHandout(
            paper,
            options,
            new Ordering(bench.catalog(), amounts.printer())
                .order(List.of(OrderedJob.of(estimate))))
        .files();
  }

  /** Another way: other springs, which are called by their title, or another choice. */
  private record Way(String name, boolean springs, JobDocument document) {
    String label(Estimate estimate) {
      return springs ? estimate.draft().spring().title() : name;
    }
  }

  /** What came of a way; empty and at fault if a plugin that the job does not name failed at it. */
  private record Tried(Optional<QuoteOption> option, String fault) {}

  /**
   * Other springs, then other choices of the linkage; what does not fit is left out. A way at which
   * a plugin fails is left out with a remark, and the next takes its place, so that the others are
   * what they would be without that plugin.
   */
  private List<QuoteOption> options(Draft draft, Money quoted) {
    JobDocument document = draft.job().source();
    List<Way> ways = new ArrayList<>();
    for (SpringMount spring : bench.extensions().extensions().springs()) {
      if (!spring.id().equals(draft.spring().id())) {
        JobDocument other =
            document
                .withValue("chosen.spring", spring.id())
                .withValue("chosen.spring_options", "{}");
        ways.add(new Way(spring.id(), true, other));
      }
    }
    addChoices(ways, draft, document);
    List<QuoteOption> options = new ArrayList<>();
    Alternatives alternatives = new Alternatives(bench, draft.job().chosen());
    int sound = 0;
    int next = 0;
    while (sound < MOST_OPTIONS && next < ways.size()) {
      int end = Math.min(next + MOST_OPTIONS - sound, ways.size());
      List<Background<Tried>> tries = new ArrayList<>();
      for (Way way : ways.subList(next, end)) {
        tries.add(Background.start(() -> tried(way, alternatives)));
      }
      for (int i = 0; i < tries.size(); i++) {
        Tried tried = tries.get(i).get();
        if (!tried.fault().isEmpty()) {
          leftOut.accept("Left out: " + ways.get(next + i).name() + ". " + tried.fault());
          continue;
        }
        sound++;
        // What costs the customer the same is the shop's own choice.
        if (tried.option().isPresent()
            && !tried.option().get().estimate().price().total().equals(quoted)) {
          options.add(tried.option().get());
        }
      }
      next = end;
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
                    ChoiceWords.of(field, choice, bench.catalog()),
                    false,
                    document.withValue(path, choice)));
          }
        }
      }
    }
  }

  private Tried tried(Way way, Alternatives alternatives) {
    try {
      Alternatives.Way worked = alternatives.of(way.document());
      return worked.estimate().isPresent()
          ? named(way, worked.estimate().get(), worked.checks())
          : new Tried(Optional.empty(), worked.faulty() ? worked.reason() : "");
    } catch (BadInputException unfit) {
      return new Tried(Optional.empty(), "");
    }
  }

  private static Tried named(Way way, Estimate estimate, List<CheckResult> checks) {
    try {
      return new Tried(Optional.of(new QuoteOption(way.label(estimate), estimate, checks)), "");
    } catch (PluginFaultException fault) {
      return new Tried(Optional.empty(), fault.getMessage());
    }
  }
}
