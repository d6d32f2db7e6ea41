package trammel.app.commands;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import trammel.app.closing.ActualsFile;
import trammel.app.closing.HistoryFile;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.files.FileLock;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.json.CloseJson;
import trammel.app.json.Json;
import trammel.app.text.CloseText;
import trammel.planning.draft.Draft;
import trammel.planning.estimate.Estimate;
import trammel.planning.learning.ClosedJob;
import trammel.planning.learning.LearnedHours;
import trammel.planning.learning.QuoteRecord;
import trammel.planning.order.OrderedJob;
import trammel.planning.order.Ordering;
import trammel.reading.quantity.QuantityPrinter;

/** Closes a job with the hours and material really used, and learns from it. */
public final class CloseCommand extends JobCommand {
  private static final String AGAIN = "--again";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        Syntax.of(
                "Closes a job with the hours and material really used. The shop's history beside"
                    + " the job file (history.csv) keeps it, and the hours of later quotes learn"
                    + " from it. Without ACTUALS it writes the form to fill in, actuals.csv, to"
                    + " the folder that --out names.")
            .argument("JOB", "The job file, JSON or YAML.")
            .optionalArgument("ACTUALS", "The filled form.")
            .flag(AGAIN, "Close a job that is closed already; what is given now counts."));
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
            standard.hours().lines(),
            quoted.hours().lines(),
            new Ordering(bench.catalog(), printer).order(List.of(OrderedJob.of(quoted))));
    Optional<String> filled = arguments.optionalArgument("ACTUALS");
    if (filled.isEmpty()) {
      writeForm(arguments, screen, draft.job().header().number(), actuals);
      return ExitCode.DONE;
    }
    close(arguments, screen, bench, standard, quoted, actuals.read(Path.of(filled.get())));
    return ExitCode.DONE;
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
    HistoryFile history = bench.history();
    double correlation = bench.catalog().shop().hoursCorrelation();
    ClosedJob job;
    LearnedHours before;
    HistoryFile.Content after;
    try (FileLock lock = FileLock.of(history.file())) {
      HistoryFile.Content content = history.read();
      if (content.torn()) {
        screen.err().println("Note: a torn last line of " + history.file() + " is cut off.");
      }
      before = LearnedHours.from(content.jobs(), correlation);
      Optional<ClosedJob> earlier = earlier(standard, content);
      if (earlier.isPresent() && !arguments.has(AGAIN)) {
        throw closedAlready(earlier.get(), history);
      }
      job = closed(standard, quoted, earlier, used);
      history.add(job);
      after = history.read();
    }
    LearnedHours now = LearnedHours.from(after.jobs(), correlation);
    QuoteRecord record = QuoteRecord.of(after.jobs());
    if (CommonOptions.of(arguments).json()) {
      screen.out().println(Json.text(CloseJson.of(job, before, now, record)));
    } else {
      screen
          .out()
          .print(
              CloseText.text(job, standard.hours().lines(), before, now, record, used.material()));
    }
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

  private static Optional<ClosedJob> earlier(Estimate job, HistoryFile.Content content) {
    for (ClosedJob other : content.jobs()) {
      if (other.number().equals(job.draft().job().header().number())) {
        return Optional.of(other);
      }
    }
    return Optional.empty();
  }

  private static CommandFailure closedAlready(ClosedJob earlier, HistoryFile history) {
    return CommandFailure.badInput(
        "Job "
            + earlier.number()
            + " was closed on "
            + earlier.closed()
            + " ("
            + history.file()
            + "). To put other hours in its place, give "
            + AGAIN
            + ".");
  }
}
