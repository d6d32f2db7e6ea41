package trammel.app.commands;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import trammel.app.closing.ActualsFile;
import trammel.app.closing.FarHours;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.json.CloseJson;
import trammel.app.json.Json;
import trammel.app.text.CloseText;
import trammel.ledger.Ledger;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.FarOff;
import trammel.planning.learning.LearnedHours;
import trammel.planning.learning.QuoteRecord;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.reading.quantity.QuantityPrinter;
import trammel.reading.quantity.UnitSystem;
import trammel.trade.labour.OperationLine;

/** Closes a job with the hours and material really used, and learns from it. */
public final class CloseCommand extends JobCommand {
  private static final String AGAIN = "--again";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "Closes a job with the hours and material really used. The shop's ledger beside"
                    + " the job file (ledger.sqlite) keeps it, and the hours of later quotes learn"
                    + " from it. Without ACTUALS it writes the form to fill in, actuals.csv, to"
                    + " the folder that --out names.")
            .argument("JOB", "The job file, JSON or YAML.")
            .optionalArgument("ACTUALS", "The filled form.")
            .flag(AGAIN, "Close a job that is closed already; what is given now counts.")
            .flag(
                FarHours.AS_WRITTEN,
                "Take hours that lie far from the quote as they are written, without asking."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Workbench bench = bench(options.units(), screen);
    Draft draft = bench.draft(Path.of(arguments.argument("JOB")));
    Estimate standard = bench.standardEstimate(draft);
    Estimate quoted = bench.estimate(draft);
    QuantityPrinter printer = new QuantityPrinter(bench.shown(draft.job()));
    ActualsFile actuals =
        new ActualsFile(
            draft.job().header().number(),
            standard.hours().lines(),
            quoted.hours().lines(),
            new Ordering(bench.catalog(), printer).order(List.of(OrderedJob.of(quoted))).lines());
    Optional<String> filled = arguments.optionalArgument("ACTUALS");
    if (filled.isEmpty()) {
      writeForm(arguments, screen, draft.job().header().number(), actuals);
      return ExitCode.DONE;
    }
    ActualsFile.Actuals used = actuals.read(Path.of(filled.get()));
    for (String column : used.notRead()) {
      screen.err().println("Note: the column '" + column + "' is not read.");
    }
    if (!arguments.has(FarHours.AS_WRITTEN)) {
      ClosedJob asWritten = closed(standard, quoted, Optional.empty(), used);
      FarHours.confirm(FarOff.of(asWritten, quotedHours(quoted)), screen);
    }
    close(arguments, screen, bench, standard, quoted, used);
    return ExitCode.DONE;
  }

  private static Map<String, Double> quotedHours(Estimate quoted) {
    Map<String, Double> hours = new HashMap<>();
    for (OperationLine line : quoted.hours().lines()) {
      hours.put(line.operation().key(), line.hours().mean());
    }
    return hours;
  }

  private static void writeForm(
      Arguments arguments, Screen screen, String number, ActualsFile actuals) {
    OutFolder folder =
        CommonOptions.outFolder(arguments, "close")
            .orElseThrow(
                () ->
                    CommandFailure.badInput(
                        "ACTUALS is not given. Give the filled form, or --out DIR to have the"
                            + " empty one written."))
            .forJobs(List.of(number));
    FileSet form = new FileSet().add("actuals.csv", actuals.form());
    CommonOptions.writeAndName(form, folder, screen);
  }

  private static void close(
      Arguments arguments,
      Screen screen,
      Workbench bench,
      Estimate standard,
      Estimate quoted,
      ActualsFile.Actuals used) {
    double correlation = bench.catalog().shop().hoursCorrelation();
    UnitSystem units = standard.draft().job().header().units();
    // Made once before a ledger is: hours that cannot be leave none behind.
    closed(standard, quoted, Optional.empty(), used);
    Closing closing;
    List<ClosedJob> after;
    try (Ledger ledger = bench.shopLedger(units).open(screen::note)) {
      closing = ledger.asOne(() -> close(ledger, standard, quoted, used, arguments.has(AGAIN)));
      after = ledger.closedJobs().all();
    }
    ClosedJob job = closing.job();
    LearnedHours before = LearnedHours.from(closing.before(), correlation);
    // Kept too, so that the next quote need not learn it.
    LearnedHours now = bench.learnedAnew().orElseGet(() -> LearnedHours.from(after, correlation));
    QuoteRecord record = QuoteRecord.of(after);
    if (CommonOptions.of(arguments).json()) {
      screen.out().println(Json.text(CloseJson.of(job, before, now, record)));
    } else {
      screen
          .out()
          .print(
              CloseText.text(job, standard.hours().lines(), before, now, record, used.material()));
    }
  }

  /**
   * A job that was closed.
   *
   * @param before the jobs that were closed before it
   */
  private record Closing(ClosedJob job, List<ClosedJob> before) {}

  private static Closing close(
      Ledger ledger, Estimate standard, Estimate quoted, ActualsFile.Actuals used, boolean again) {
    List<ClosedJob> before = ledger.closedJobs().all();
    Optional<ClosedJob> earlier = ledger.closedJobs().of(standard.draft().job().header().number());
    if (earlier.isPresent() && !again) {
      throw closedAlready(earlier.get(), ledger.file());
    }
    ClosedJob job = closed(standard, quoted, earlier, used);
    ledger.closedJobs().close(job);
    return new Closing(job, before);
  }

  /** A job that is closed again keeps what it was quoted at: the quote has long been given. */
  private static ClosedJob closed(
      Estimate standard, Estimate quoted, Optional<ClosedJob> earlier, ActualsFile.Actuals used) {
    try {
      return new ClosedJob(
          standard.draft().job().header().number(),
          LocalDate.now(),
          earlier.map(ClosedJob::quotedHours).orElse(quoted.hours().meanHours()),
          earlier.map(ClosedJob::quotedEightOfTen).orElse(quoted.hours().p80Hours()),
          used.operations(),
          used.whole());
    } catch (IllegalArgumentException refused) {
      throw CommandFailure.badInput(refused.getMessage());
    }
  }

  private static CommandFailure closedAlready(ClosedJob earlier, Path ledger) {
    return CommandFailure.badInput(
        "Job "
            + earlier.number()
            + " was closed on "
            + earlier.closed()
            + " ("
            + ledger
            + "). To put other hours in its place, give "
            + AGAIN
            + ".");
  }
}
