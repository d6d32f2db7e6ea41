package trammel.app.commands;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import trammel.app.commandline.Arguments;
import trammel.app.commandline.CommandFailure;
import trammel.app.commandline.ExitCode;
import trammel.app.commandline.Screen;
import trammel.app.commandline.Syntax;
import trammel.app.desk.Workbench;
import trammel.app.files.FileLock;
import trammel.app.files.FileSet;
import trammel.app.files.OutFolder;
import trammel.app.handout.OrderFiles;
import trammel.app.json.Json;
import trammel.app.json.OrderJson;
import trammel.app.rack.RackFile;
import trammel.app.text.Amounts;
import trammel.app.text.OrderText;
import trammel.planning.order.MaterialOrder;
import trammel.planning.order.Ordering;
import trammel.reading.quantity.QuantityPrinter;

/** Makes one material order a supplier over one or many jobs. */
public final class OrderCommand extends JobCommand {
  private static final String RACK = "--rack";
  private static final String DRY_RUN = "--dry-run";
  private static final String DATE = "--date";

  @Override
  public Syntax syntax() {
    return CommonOptions.addWithOutTo(
        JobRun.addTo(
                Syntax.of(
                    "Makes one material order a supplier; several jobs are cut and bought together."
                        + " With --out it writes the order as PDF and web page, and a CSV, a JSON and a"
                        + " text a supplier."))
            .option(
                RACK,
                "FILE",
                "Use the stock on hand of this file first, and rewrite it: what is used is taken"
                    + " off, useful offcuts are put on.")
            .flag(DRY_RUN, "Show what would be taken off and put on the rack; leave its file.")
            .option(
                DATE,
                "DAY",
                "Day on which the order is placed, such as 2026-12-01; without it, the date of the"
                    + " latest job."));
  }

  @Override
  public ExitCode run(Arguments arguments, Screen screen) {
    CommonOptions options = CommonOptions.of(arguments);
    Optional<LocalDate> date = date(arguments);
    boolean dryRun = arguments.has(DRY_RUN);
    if (dryRun && arguments.value(RACK).isEmpty()) {
      throw CommandFailure.badInput(DRY_RUN + " goes with " + RACK + "; give both or neither.");
    }
    arguments.value(RACK).ifPresent(OrderCommand::requireRack);
    Optional<OutFolder> given = CommonOptions.outFolder(arguments, "order");
    Workbench bench = bench(options.units(), screen);
    JobsToOrder jobs = JobsToOrder.of(JobRun.files(arguments), bench, screen);
    QuantityPrinter printer = new Amounts(bench.shown(jobs.first())).printer();
    Ordering ordering = new Ordering(bench.catalog(), printer);
    LocalDate placed = date.orElse(jobs.latest());
    boolean writes = !dryRun && !jobs.leftOut();
    Optional<OutFolder> out =
        jobs.leftOut() ? Optional.empty() : given.map(folder -> folder.forJobs(jobs.numbers()));
    MaterialOrder order;
    if (arguments.value(RACK).isPresent()) {
      Path path = Path.of(arguments.value(RACK).get());
      try (FileLock lock = FileLock.of(path)) {
        RackFile rack = new RackFile(path, bench.catalog(), printer.system());
        order = ordering.order(jobs.ordered(), rack.read());
        write(files(jobs, order, placed, bench, printer), out, screen);
        if (writes) {
          rack.write(order.rack().rack());
          screen.err().println("Rewrote " + path);
        }
      }
    } else {
      order = ordering.order(jobs.ordered());
      write(files(jobs, order, placed, bench, printer), out, screen);
    }
    if (options.json()) {
      screen.out().println(Json.text(OrderJson.of(jobs.numbers(), order, placed)));
    } else {
      screen.out().print(OrderText.text(jobs.numbers(), order, placed));
    }
    if (jobs.leftOut()) {
      screen.err().println("A job was left out, so no file was written and no rack changed.");
      return jobs.worst();
    }
    return Verdicts.exitCode(jobs.checks());
  }

  /** Told before any job is worked out, and before a lock is put beside nothing. */
  private static void requireRack(String file) {
    if (!Files.isRegularFile(Path.of(file))) {
      throw CommandFailure.badInput(
          RACK
              + " was given "
              + file
              + ", which is no file; give the shop's rack file, or start one that holds only the"
              + " line kind,item,name,length,width,quantity.");
    }
  }

  private static OrderFiles files(
      JobsToOrder jobs,
      MaterialOrder order,
      LocalDate placed,
      Workbench bench,
      QuantityPrinter printer) {
    String shop = bench.catalog().shop().name();
    return new OrderFiles(jobs.numbers(), order, placed, shop, printer.system());
  }

  private static void write(OrderFiles order, Optional<OutFolder> out, Screen screen) {
    if (out.isPresent()) {
      FileSet files = new FileSet();
      order.addTo(files);
      CommonOptions.write(files, out.get(), screen);
    }
  }

  private static Optional<LocalDate> date(Arguments arguments) {
    Optional<String> word = arguments.value(DATE);
    if (word.isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(LocalDate.parse(word.get()));
    } catch (DateTimeParseException noDay) {
      throw CommandFailure.badInput(
          DATE + " was given '" + word.get() + "'; give a day as year-month-day: 2026-12-01.");
    }
  }
}
